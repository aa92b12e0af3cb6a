import { type Point, point } from '../geometry/point.js'
import { isPrinted, type Layout, type Place, placeName, windowCorner } from './layout.js'
import type { SeamLine } from './seams.js'
import { windowSize } from './sheet.js'

/**
 * An edge of a page without a neighbour, to be trimmed all the same: its white margin would lie on lines that an
 * earlier page shows, which it meets only at a corner.
 */
export interface CornerEdge {
  readonly line: SeamLine
  /** The earlier pages that its margin would cover. */
  readonly on: readonly string[]
}

/** Corner edges of a page; earlier pages it meets at a corner are the two diagonally above it. */
export const cornerEdges = (layout: Layout, place: Place): CornerEdge[] => {
  const beside = (rows: number, columns: number): Place => ({
    row: place.row + rows,
    column: place.column + columns,
  })
  const [left, above, right] = [beside(0, -1), beside(-1, 0), beside(0, 1)]
  const [aboveLeft, aboveRight] = [beside(-1, -1), beside(-1, 1)]
  const { min, max } = shownBy(layout, place)
  const upright = { upright: true, from: min.y, to: max.y }
  const edges = [
    { free: left, under: [aboveLeft], line: { ...upright, edge: min.x, inner: min.x + layout.overlap } },
    {
      free: above,
      under: [aboveLeft, aboveRight],
      line: { upright: false, from: min.x, to: max.x, edge: max.y, inner: max.y - layout.overlap },
    },
    { free: right, under: [aboveRight], line: { ...upright, edge: max.x, inner: max.x - layout.overlap } },
  ]
  return edges.flatMap(({ free, under, line }): CornerEdge[] => {
    const covered = isPrinted(layout, free) ? [] : under.filter((each) => isPrinted(layout, each))
    return covered.length > 0 ? [{ line, on: covered.map((each) => placeName(layout, each)) }] : []
  })
}

const shownBy = (layout: Layout, place: Place): { min: Point; max: Point } => {
  const min = windowCorner(layout, place)
  const { across, along } = windowSize(layout.sheet)
  return { min, max: point(min.x + across, min.y + along) }
}
