import type { Words } from '../compose/dry-fit-words.js'
import type { DrawingKind } from '../drawing-content.js'
import type { SawSet } from '../fit/closure-law.js'
import { FURNITURE_NAMES, type FurnitureTexts } from '../furniture/furniture-names.js'
import type { Measured } from './measured.js'

/** What the maker gave: the order's text, and pieces of sheet furniture in place of ours. */
export interface Given {
  readonly text: string
  readonly furniture: FurnitureTexts
}

export const isSameGiven = (one: Given, other: Given): boolean =>
  one.text === other.text && FURNITURE_NAMES.every((name) => one.furniture[name] === other.furniture[name])

/** What the page asks of its worker, which makes files beside the page, so that the page never stands still. */
export type Ask =
  /** Lays every drawing of an order on paper, and its backings on panels. */
  | { readonly ask: 'lay'; readonly given: Given }
  /** One finished file. */
  | { readonly ask: 'file'; readonly given: Given; readonly path: string }
  /** All of them and the order, in one archive. */
  | { readonly ask: 'archive'; readonly given: Given }
  /** The drawing of a star's dry fit as PDF. */
  | { readonly ask: 'dry-fit'; readonly given: Given; readonly star: string; readonly measured: Measured }
  /** How the gaps of a star spread, as a file. */
  | {
      readonly ask: 'gaps-file'
      readonly given: Given
      readonly star: string
      readonly set: SawSet
      readonly kind: DrawingKind
    }
  /** Can the sheet furniture serve? */
  | { readonly ask: 'furnish'; readonly given: Given }
  /** Stars that this shop can make, two of them compared where they are named. */
  | { readonly ask: 'choose'; readonly given: Given; readonly wish: WrittenWish }
  /** The list as a file, or the comparison where two are named. */
  | {
      readonly ask: 'choice-file'
      readonly given: Given
      readonly wish: WrittenWish
      readonly kind: DrawingKind
    }

/** Said to the worker while it searches: end with the best so far. */
export const ENOUGH = 'enough'

/** What stars are wanted, as it is typed: the flags of the command line that tell it; empty ones are left out. */
export interface WrittenWish {
  readonly points?: string
  readonly quantity?: string
  readonly most?: string
  readonly rank?: string
  /** Numbers in the list, names, or shapes as the command line takes them. */
  readonly compare?: readonly [string, string] | undefined
}

export type Answer =
  /** @param keeps the worker hears {@link ENOUGH} now */
  | { readonly answer: 'doing'; readonly what: string; readonly keeps: boolean }
  | { readonly answer: 'laid'; readonly given: Given; readonly laid: Laid }
  | { readonly answer: 'file'; readonly path: string; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly answer: 'furnished' }
  | { readonly answer: 'chosen'; readonly chosen: ChosenStars }
  | { readonly answer: 'refused'; readonly problems: readonly string[] }

/** The drawings of an order on their pages, and the files there are. */
export interface Laid {
  readonly drawings: readonly LaidDrawing[]
  /** All pages of all patterns. */
  readonly sheets: number
  /** The cheapest boards; absent where the order has none. */
  readonly boards?: LaidBoards
  /** The backings on panels; absent where the order has no panels or no backings. */
  readonly panels?: LaidPanels
  readonly stars: readonly LaidStar[]
  /** Jigs that have no drawing, and why. */
  readonly leftOut: readonly string[]
  /** Files of the whole order. */
  readonly files: readonly string[]
}

/** Boards to take, what they come to, and how they are cut. */
export interface LaidBoards {
  readonly words: readonly string[]
  /** The cutting list as SVG; absent where the boards do not do. */
  readonly sheet?: string
  /** Paths of the cutting list's files; none where the boards do not do. */
  readonly files: readonly string[]
}

/** Panels to buy, what they are worth, and where each plate lies. */
export interface LaidPanels {
  readonly words: readonly string[]
  readonly drawings: readonly LaidPanel[]
  /** The file that shows all of them. */
  readonly files: readonly string[]
  /** The search was ended before its last step. */
  readonly stopped: boolean
}

/** A panel, or several that are cut alike. */
export interface LaidPanel {
  readonly title: string
  /** Which plates it holds, and what that is worth. */
  readonly holds: string
  /** As the cutter gets it, as SVG. */
  readonly drawn: string
  readonly files: readonly string[]
}

/** What becomes of one star in use: with the seasons, and of its batch at the last joint. */
export interface LaidStar {
  readonly name: string
  readonly wood: string
  readonly seasons: Table
  readonly movement: readonly Words[]
  readonly advice: readonly string[]
  readonly chances: Readonly<Record<SawSet, LaidChances>>
}

/** What may happen at the last joint, the saw set one way. */
export interface LaidChances {
  readonly table: Table
  readonly words: readonly Words[]
  /** How the gaps spread, as SVG. */
  readonly gaps: string
}

/** Rows of cells, the first of them headings. */
export type Table = readonly (readonly string[])[]

export interface LaidDrawing {
  readonly star: string
  readonly title: string
  readonly sheets: number
  /** How many of them hold notes alone, and so are not on the map. */
  readonly notesOnly: number
  /** The drawing over the grid of its pages, as SVG. */
  readonly map: string
  /** Paths of its files. */
  readonly files: readonly string[]
}

/** Stars that this shop can make, the best first. */
export interface ChosenStars {
  /** How many there are besides those listed. */
  readonly more: number
  readonly foot: string
  readonly listed: readonly ListedStar[]
  readonly compared?: { readonly title: string; readonly rows: Table; readonly drawn: string }
}

export interface ListedStar {
  readonly label: string
  readonly words: readonly string[]
  /** Corners of the star as SVG has them, with a radius of 1. */
  readonly corners: string
  /** What a star of the order is given to become this one; absent where it is one of the order. */
  readonly keys?: Readonly<Record<string, string | number | boolean>>
}
