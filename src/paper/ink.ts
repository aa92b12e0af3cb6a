import type { Shape } from '../drawing/model.js'
import { shapeSides } from '../drawing/sides.js'
import type { Extents } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import type { Degrees } from '../units/brand.js'
import { toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'

/** Straight pieces of everything drawn, lettering as its box: four numbers each, x and y of both ends in mm. */
export type Ink = Float64Array

export const inkOf = (shapes: readonly Shape[]): Ink =>
  Float64Array.from(shapes.flatMap((shape) => shapeSides(shape).flatMap(([a, b]) => [a.x, a.y, b.x, b.y])))

/** The ink turned counter-clockwise about the origin. */
export const turnedInk = (ink: Ink, angle: Degrees): Ink => {
  if (angle === 0) return ink
  const [cos, sin] = [maths.cos(toRadians(angle)), maths.sin(toRadians(angle))]
  const turned = new Float64Array(ink.length)
  for (let index = 0; index < ink.length; index += 2) {
    const [x, y] = [ink[index] ?? 0, ink[index + 1] ?? 0]
    turned[index] = x * cos - y * sin
    turned[index + 1] = x * sin + y * cos
  }
  return turned
}

export const inkExtents = (ink: Ink): Extents => {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity]
  for (let index = 0; index < ink.length; index += 2) {
    const [x, y] = [ink[index] ?? 0, ink[index + 1] ?? 0]
    left = Math.min(left, x)
    right = Math.max(right, x)
    bottom = Math.min(bottom, y)
    top = Math.max(top, y)
  }
  return { min: point(left, bottom), max: point(right, top) }
}

/** Side of a cell of the raster, in mm. */
export const CELL = 2

/**
 * Where there is ink: square cells from the extents' lower left corner on, as sums over all cells to the left and
 * below, so that any box of cells is counted with four look-ups. A cell that ink only touches counts.
 */
export interface InkRaster {
  readonly origin: { readonly x: number; readonly y: number }
  readonly columns: number
  readonly rows: number
  /** (columns + 1) x (rows + 1), row after row. */
  readonly sums: Int32Array
}

export const inkRaster = (ink: Ink, { min, max }: Extents): InkRaster => {
  const columns = Math.floor((max.x - min.x) / CELL) + 1
  const rows = Math.floor((max.y - min.y) / CELL) + 1
  const width = columns + 1
  const sums = new Int32Array(width * (rows + 1))
  for (let index = 0; index < ink.length; index += 4) {
    markStroke(
      sums,
      width,
      ((ink[index] ?? 0) - min.x) / CELL,
      ((ink[index + 1] ?? 0) - min.y) / CELL,
      ((ink[index + 2] ?? 0) - min.x) / CELL,
      ((ink[index + 3] ?? 0) - min.y) / CELL,
    )
  }
  for (let row = 1; row <= rows; row++) {
    let inRow = 0
    for (let column = 1; column <= columns; column++) {
      const at = row * width + column
      inRow += sums[at] ?? 0
      sums[at] = inRow + (sums[at - width] ?? 0)
    }
  }
  return { origin: min, columns, rows, sums }
}

/** Marks every cell a stroke passes, column by column; the ends are given in cells. */
const markStroke = (
  sums: Int32Array,
  width: number,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
): void => {
  if (x0 > x1) {
    markStroke(sums, width, x1, y1, x0, y0)
    return
  }
  const slope = x1 > x0 ? (y1 - y0) / (x1 - x0) : 0
  const [first, last] = [Math.floor(x0), Math.floor(x1)]
  for (let column = first; column <= last; column++) {
    const enter = first === last ? y0 : y0 + slope * (Math.max(x0, column) - x0)
    const leave = first === last ? y1 : y0 + slope * (Math.min(x1, column + 1) - x0)
    const top = Math.floor(Math.max(enter, leave))
    for (let row = Math.floor(Math.min(enter, leave)); row <= top; row++) {
      const at = (row + 1) * width + column + 1
      if (row >= 0 && at < sums.length) sums[at] = 1
    }
  }
}

/** Inked cells in a box of cells, from `left`, `bottom` up to but not including `right`, `top`; all within the raster. */
export const inkedCells = (
  { columns, sums }: InkRaster,
  left: number,
  bottom: number,
  right: number,
  top: number,
): number => {
  if (left >= right || bottom >= top) return 0
  const low = bottom * (columns + 1)
  const high = top * (columns + 1)
  return (
    (sums[high + right] as number) -
    (sums[low + right] as number) -
    (sums[high + left] as number) +
    (sums[low + left] as number)
  )
}

/** Is there no ink in a box, in the ink's own coordinates? */
export const isBare = (raster: InkRaster, { min, max }: Extents): boolean =>
  inkedCells(
    raster,
    within(Math.floor((min.x - raster.origin.x) / CELL), raster.columns),
    within(Math.floor((min.y - raster.origin.y) / CELL), raster.rows),
    within(Math.ceil((max.x - raster.origin.x) / CELL), raster.columns),
    within(Math.ceil((max.y - raster.origin.y) / CELL), raster.rows),
  ) === 0

/** A cell's number from 0 to the raster's last bound. */
export const within = (cell: number, cells: number): number => Math.min(cells, Math.max(0, cell))
