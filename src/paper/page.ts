import type { Artwork } from '../drawing/artwork.js'
import type { Drawing, Shape } from '../drawing/model.js'
import type { Extents } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import type { Sheet } from './sheet.js'

/**
 * One sheet of paper. Page coordinates: mm from the sheet's lower left corner, y up; they are true lengths, what a
 * rule measures on the print.
 */
export interface Page {
  /** Row number and column letter, `2B`; `Notes` for notes on a sheet of their own. */
  readonly name: string
  readonly sheet: Sheet
  readonly views: readonly View[]
  /** What is printed around and over the views; made when it is needed, for a large drawing has hundreds of pages. */
  readonly furniture: () => PageFurniture
  /** The same page among as many of its drawing, the rest of which stands on other sheets: `S1`. */
  readonly among?: (sheets: number, others: readonly string[]) => Page
}

export interface PageFurniture {
  readonly shapes: readonly Shape[]
  /** Lines to cut along; drawn over the shapes, for they lie on the window's frame. */
  readonly edges?: readonly Shape[]
  readonly artwork: readonly PlacedArtwork[]
}

/** Shapes shown on a page, cut off at the window. */
export interface View {
  readonly shapes: readonly Shape[]
  /** How far each shape reaches, where the window may show only some of them. */
  readonly reach?: ReadonlyMap<Shape, Extents>
  readonly window: Extents
  /** Added to a shape's point, gives its place on the page. */
  readonly shift: Point
}

export interface PlacedArtwork {
  readonly artwork: Artwork
  /** Where its lower left corner lies. */
  readonly at: Point
  /** Cut off there. */
  readonly window?: Extents
}

/** The name of a page that holds nothing but notes. */
export const NOTES_PAGE = 'Notes'

/** A drawing laid out on paper at 1:1. */
export interface PrintedDrawing {
  readonly drawing: Drawing
  readonly pages: readonly Page[]
  /** Those that no other page is taped to, so that they may share a sheet. */
  readonly loose: readonly Page[]
}

/** Pages to print as one file. */
export interface PrintedBook {
  readonly title: string
  readonly pages: readonly Page[]
  readonly bookmarks: readonly Bookmark[]
}

/** Leads to a page, counted from 0; its children stand below it. */
export interface Bookmark {
  readonly title: string
  readonly page: number
  readonly children: readonly Bookmark[]
}
