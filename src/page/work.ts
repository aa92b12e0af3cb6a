import type { Words } from '../compose/dry-fit-words.js'
import type { Measured } from './measured.js'

/** What the page asks of its worker, which makes files beside the page, so that the page never stands still. */
export type Ask =
  /** Lays every drawing of an order on paper. */
  | { readonly ask: 'lay'; readonly text: string }
  /** One finished file of the order that was laid last. */
  | { readonly ask: 'file'; readonly path: string }
  /** All of them and the order, in one archive. */
  | { readonly ask: 'archive' }
  /** The drawing of a star's dry fit as PDF. */
  | { readonly ask: 'dry-fit'; readonly text: string; readonly star: string; readonly measured: Measured }

export type Answer =
  | { readonly answer: 'doing'; readonly what: string }
  | { readonly answer: 'laid'; readonly text: string; readonly laid: Laid }
  | { readonly answer: 'file'; readonly path: string; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly answer: 'refused'; readonly problems: readonly string[] }

/** The drawings of an order on their pages, and the files there are. */
export interface Laid {
  readonly drawings: readonly LaidDrawing[]
  /** All pages of all patterns. */
  readonly sheets: number
  /** The cheapest boards; absent where the order has none. */
  readonly boards?: LaidBoards
  readonly stars: readonly LaidStar[]
  /** Files of the whole order. */
  readonly files: readonly string[]
}

/** Boards to take, what they come to, and how they are cut. */
export interface LaidBoards {
  readonly words: readonly string[]
  /** The cutting list as SVG; absent where the boards do not do. */
  readonly sheet?: string
  /** Paths of the cutting list's files; none where no proof was found at once. */
  readonly files: readonly string[]
}

/** What becomes of one star in use: with the seasons, and of its batch at the last joint. */
export interface LaidStar {
  readonly name: string
  readonly wood: string
  readonly seasons: Table
  readonly movement: readonly Words[]
  readonly advice: readonly string[]
  readonly chances: Table
  readonly risk: readonly Words[]
  /** How the gaps spread, as SVG. */
  readonly gaps: string
}

/** Rows of cells, the first of them headings. */
export type Table = readonly (readonly string[])[]

export interface LaidDrawing {
  readonly star: string
  readonly title: string
  readonly sheets: number
  /** The drawing over the grid of its pages, as SVG. */
  readonly map: string
  /** Paths of its files. */
  readonly files: readonly string[]
}
