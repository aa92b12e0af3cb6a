import type { Shape } from '../drawing/model.js'
import { cross, ring } from '../drawing/shapes.js'
import { add, type Point, point } from '../geometry/point.js'
import type { Grid } from './grid.js'

/** Where along a seam its marks stand, as shares of the window. */
const SHARES = [0.2, 0.8]

/**
 * Crosses in the strips a page shares with its neighbours, at the same points of the drawing on both pages: pages lie
 * true when cross lies on cross.
 *
 * @param shift from the drawing's to the page's coordinates
 */
export const registerMarks = (grid: Grid, row: number, column: number, shift: Point): Shape[] => {
  const { windowAcross, windowAlong, overlap, origin, rows, columns } = grid
  const left = origin.x + column * (windowAcross - overlap)
  const bottom = origin.y + (rows - 1 - row) * (windowAlong - overlap)
  const upright = (x: number): Point[] => SHARES.map((share) => point(x, bottom + share * windowAlong))
  const level = (y: number): Point[] => SHARES.map((share) => point(left + share * windowAcross, y))
  const marks = [
    ...(column > 0 ? upright(left + overlap / 2) : []),
    ...(column < columns - 1 ? upright(left + windowAcross - overlap / 2) : []),
    ...(row < rows - 1 ? level(bottom + overlap / 2) : []),
    ...(row > 0 ? level(bottom + windowAlong - overlap / 2) : []),
  ]
  const size = Math.min(4, overlap / 2 - 0.5)
  return marks.flatMap((mark) => {
    const at = add(mark, shift)
    return [...cross('NOTE', at, size), ring('NOTE', at, size / 2)]
  })
}
