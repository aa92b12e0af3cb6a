import type { Extents } from '../geometry/outline.js'
import { type Point, point } from '../geometry/point.js'
import { type InkRaster, isBare } from './ink.js'
import { isPrinted, type Layout, type Place, printedPlaces, windowCorner } from './layout.js'
import { windowSize } from './sheet.js'

/**
 * Where two printed pages are joined: the later page, right or below, is trimmed at the edge of its window and laid on
 * the strip that the earlier page shows too. Places are those of the turned figure.
 */
export interface Seam extends SeamLine {
  readonly earlier: Place
  readonly later: Place
  /** Register points, on the trimmed edge. */
  readonly marks: readonly Point[]
}

/** An edge to trim, and the strip inside it. */
export interface SeamLine {
  /** Does it run up the sheet (pages side by side), or across it? */
  readonly upright: boolean
  /** The trimmed edge: its x when upright, its y when not. */
  readonly edge: number
  /** Where the strip ends on the other side, within the later page. */
  readonly inner: number
  readonly from: number
  readonly to: number
}

/** Every seam of a layout, in reading order of the later page. */
export const seamsOf = (layout: Layout, raster: InkRaster): Seam[] =>
  printedPlaces(layout).flatMap((later) => {
    const [left, above] = [
      { row: later.row, column: later.column - 1 },
      { row: later.row - 1, column: later.column },
    ]
    return [
      ...(isPrinted(layout, left) ? [uprightSeam(layout, left, later, raster)] : []),
      ...(isPrinted(layout, above) ? [levelSeam(layout, above, later, raster)] : []),
    ]
  })

const uprightSeam = (layout: Layout, earlier: Place, later: Place, raster: InkRaster): Seam => {
  const corner = windowCorner(layout, later)
  const { along } = windowSize(layout.sheet)
  const [from, to] = [corner.y, corner.y + along]
  const marks = registerPoints(from, to, raster, (at) => point(corner.x, at))
  return { earlier, later, upright: true, edge: corner.x, inner: corner.x + layout.overlap, from, to, marks }
}

const levelSeam = (layout: Layout, earlier: Place, later: Place, raster: InkRaster): Seam => {
  const corner = windowCorner(layout, later)
  const { across, along } = windowSize(layout.sheet)
  const edge = corner.y + along
  const [from, to] = [corner.x, corner.x + across]
  const marks = registerPoints(from, to, raster, (at) => point(at, edge))
  return { earlier, later, upright: false, edge, inner: edge - layout.overlap, from, to, marks }
}

/** One register point in either half of the seam: far apart, where the drawing leaves room if there is such a place. */
const registerPoints = (from: number, to: number, raster: InkRaster, place: (at: number) => Point): Point[] =>
  [SHARES, SHARES.map((share) => 1 - share)].map((shares) => {
    const points = shares.map((share) => place(from + share * (to - from)))
    return points.find((at) => isBare(raster, boxAround(at))) ?? points[0] ?? place(from)
  })

/** How far along a seam a mark may stand, the preferred place first. */
const SHARES = [0.15, 0.18, 0.21, 0.24, 0.27, 0.12, 0.3, 0.33, 0.36, 0.39]

/** Half the side of a register mark, and a little white. */
const MARK_ROOM = 5

const boxAround = ({ x, y }: Point) => ({
  min: point(x - MARK_ROOM, y - MARK_ROOM),
  max: point(x + MARK_ROOM, y + MARK_ROOM),
})

/** Kept for the words along a joined edge. */
const WORDS_ROOM = 6

/** The part of a page's window that no neighbour shows too and no seam's words need, in the figure's coordinates. */
export const roomBetweenSeams = (layout: Layout, { row, column }: Place): Extents => {
  const { x, y } = windowCorner(layout, { row, column })
  const { across, along } = windowSize(layout.sheet)
  const taken = Math.max(layout.overlap, WORDS_ROOM)
  const beside = (rows: number, columns: number): number =>
    isPrinted(layout, { row: row + rows, column: column + columns }) ? taken : 0
  return {
    min: point(x + beside(0, -1), y + beside(1, 0)),
    max: point(x + across - beside(0, 1), y + along - beside(-1, 0)),
  }
}
