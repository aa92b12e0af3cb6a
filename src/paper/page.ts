import type { Drawing, Shape } from '../drawing/model.js'
import type { Extents } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import type { Mm } from '../units/brand.js'

/** One sheet of a printed drawing. Page coordinates: mm from the sheet's lower left corner, y up. */
export interface Page {
  /** Row number and column letter, `2B`, or `Words` for the words on a sheet of their own. */
  readonly name: string
  /** What of the drawing this page shows. */
  readonly shapes: readonly Shape[]
  readonly across: Mm
  readonly along: Mm
  /** Where the drawing shows; the rest of it is cut off there. */
  readonly window: Extents
  /** Added to a drawing's point, gives its place on the page. */
  readonly shift: Point
  /** What is printed around the drawing, in page coordinates. */
  readonly furniture: readonly Shape[]
}

/** A drawing laid out on paper at 1:1. */
export interface PrintedDrawing {
  readonly drawing: Drawing
  readonly pages: readonly Page[]
}
