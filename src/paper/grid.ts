import type { Point } from '../geometry/point.js'
import type { Mm } from '../units/brand.js'

/** Sheets of one size that carry a drawing, side by side with an overlap. */
export interface Grid {
  readonly across: Mm
  readonly along: Mm
  readonly columns: number
  readonly rows: number
  /** The part of a sheet that shows the drawing. */
  readonly windowAcross: number
  readonly windowAlong: number
  readonly margin: number
  readonly overlap: number
  /** Lower left corner of the whole grid, in the drawing's coordinates. */
  readonly origin: Point
  /** Are the drawing's words on it, on a sheet apart, or is it that sheet? */
  readonly words: 'with' | 'apart' | 'only'
}

/** What a page of the grid is called. */
export const nameIn = ({ words }: Grid, row: number, column: number): string =>
  words === 'only' ? 'Words' : pageName(row, column)

/** Row number from the top and column letter from the left: `2B`. I and O are left out (ISO 5457), for 1 and 0. */
export const pageName = (row: number, column: number): string => `${row + 1}${columnLetters(column)}`

const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ'

const columnLetters = (column: number): string =>
  (column < LETTERS.length ? '' : columnLetters(Math.floor(column / LETTERS.length) - 1)) +
  LETTERS.charAt(column % LETTERS.length)
