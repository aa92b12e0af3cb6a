import { type Point, point } from '../geometry/point.js'
import type { Degrees } from '../units/brand.js'
import { pageName } from './page-name.js'
import { type Sheet, windowSize } from './sheet.js'

/** A figure laid over a grid of equal sheets that overlap. */
export interface Layout {
  readonly sheet: Sheet
  /** The figure is turned by it, counter-clockwise; all places below are those of the turned figure. */
  readonly angle: Degrees
  readonly columns: number
  readonly rows: number
  /** Row after row from the top. */
  readonly printed: readonly boolean[]
  /** Lower left corner of the window of the lowest page on the left. */
  readonly origin: Point
  readonly overlap: number
  /** So many rows of pages the names count before it: those of parts that stand apart. */
  readonly firstRow: number
}

/** A page's place in the grid; rows are counted from the top. */
export interface Place {
  readonly row: number
  readonly column: number
}

export const isPrinted = ({ columns, rows, printed }: Layout, { row, column }: Place): boolean =>
  row >= 0 && row < rows && column >= 0 && column < columns && printed[row * columns + column] === true

/** A page's name: row number and column letter. */
export const placeName = ({ firstRow }: Layout, { row, column }: Place): string =>
  pageName(firstRow + row, column)

/** The printed pages, row after row from the top. */
export const printedPlaces = (layout: Layout): Place[] =>
  layout.printed.flatMap((printed, index) =>
    printed ? [{ row: Math.floor(index / layout.columns), column: index % layout.columns }] : [],
  )

/** Lower left corner of a page's window. */
export const windowCorner = (layout: Layout, { row, column }: Place): Point => {
  const { across, along } = windowSize(layout.sheet)
  return point(
    layout.origin.x + column * (across - layout.overlap),
    layout.origin.y + (layout.rows - 1 - row) * (along - layout.overlap),
  )
}
