import type { Path, Shape } from '../drawing/model.js'
import type { Furniture } from '../furniture/furniture-set.js'
import type { Extents } from '../geometry/outline.js'
import { type Point, point, scale, subtract } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import { cornerEdges } from './corner-edges.js'
import { type Layout, type Place, placeName, windowCorner } from './layout.js'
import type { Page, PlacedArtwork } from './page.js'
import { pageMap } from './page-map.js'
import {
  cornerFurniture,
  type SeamFurniture,
  seamFurniture,
  shapesNear,
  WORDS_REACH,
} from './seam-furniture.js'
import type { Seam, SeamLine } from './seams.js'
import type { Sheet } from './sheet.js'
import { among, type SheetTitle, strip } from './strip.js'
import { MAP_WIDTH } from './strip-room.js'

/** A laid-out figure with all that its pages have in common. */
export interface LaidFigure {
  readonly layout: Layout
  readonly seams: readonly Seam[]
  /** Turned as it is laid, notes that stand on its pages included. */
  readonly shapes: readonly Shape[]
  /** How far each shape reaches. */
  readonly reach: ReadonlyMap<Shape, Extents>
  /** What a page map shows of it. */
  readonly outlines: readonly Path[]
}

/** One page of a laid-out figure. */
export const pageOf = (
  figure: LaidFigure,
  place: Place,
  title: SheetTitle,
  order: Order,
  furniture: Furniture,
): Page => {
  const { sheet } = figure.layout
  const shift = subtract(sheet.window.min, windowCorner(figure.layout, place))
  return {
    name: title.sheet,
    sheet,
    among: (sheets, others) => pageOf(figure, place, among(title, sheets, others), order, furniture),
    views: [{ shapes: figure.shapes, reach: figure.reach, window: sheet.window, shift }],
    furniture: () => {
      const below = strip(sheet, title, order, furniture)
      const { layout } = figure
      const joined = joinedEdges(figure, place, shift)
      const map =
        layout.columns * layout.rows > 1 ? pageMap(layout, figure.outlines, place, below.map, MAP_WIDTH) : []
      return {
        shapes: [...below.shapes, ...joined.flatMap(({ words, shapes }) => [words, ...shapes]), ...map],
        edges: joined.flatMap(({ edges }) => edges),
        artwork: [
          ...below.artwork,
          ...joined.flatMap(({ marks }) => marks.map((at) => registerMark(at, sheet, furniture))),
        ],
      }
    },
  }
}

/** Words of one edge keep clear of those of the others. */
const joinedEdges = (figure: LaidFigure, place: Place, shift: Point): SeamFurniture[] => {
  const joined: SeamFurniture[] = []
  const shown = (line: SeamLine): Shape[] => [
    ...nearby(figure, line, shift),
    ...joined.map(({ words }) => words),
  ]
  for (const seam of figure.seams) {
    const trimmed = isSame(seam.later, place)
    if (trimmed || isSame(seam.earlier, place)) {
      const name = placeName(figure.layout, trimmed ? seam.earlier : seam.later)
      joined.push(seamFurniture(seam, trimmed, name, shift, shown(seam)))
    }
  }
  for (const edge of cornerEdges(figure.layout, place)) {
    joined.push(cornerFurniture(edge, shift, shown(edge.line)))
  }
  return joined
}

/** The mark with its middle on the register point; what of it lies outside the window is cut off with the edge. */
const registerMark = (at: Point, { window }: Sheet, furniture: Furniture): PlacedArtwork => {
  const artwork = furniture.registerMark
  return { artwork, at: subtract(at, scale(point(artwork.across, artwork.height), 0.5)), window }
}

const isSame = (a: Place, b: Place): boolean => a.row === b.row && a.column === b.column

/** Shapes beside the edge of a seam, on the page. */
const nearby = ({ reach }: LaidFigure, seam: SeamLine, shift: Point): Shape[] => {
  const inward = Math.sign(seam.inner - seam.edge) * WORDS_REACH
  const across = [seam.edge, seam.inner, seam.edge + inward]
  const [low, high] = [Math.min(...across), Math.max(...across)]
  const box = seam.upright
    ? { min: point(low, seam.from), max: point(high, seam.to) }
    : { min: point(seam.from, low), max: point(seam.to, high) }
  return shapesNear(reach, box, shift)
}

/** The drawing's outlines of wood and panel. */
export const outlinesOf = (shapes: readonly Shape[]): Path[] =>
  shapes.filter((shape): shape is Path => shape.kind === 'path' && OUTLINES.has(shape.layer))

const OUTLINES: ReadonlySet<string> = new Set(['PATTERN', 'CUT-OUTSIDE', 'CUT-INSIDE'])
