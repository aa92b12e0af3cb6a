/** What the page asks of its worker, which makes files beside the page, so that the page never stands still. */
export type Ask =
  /** Lays every drawing of an order on paper. */
  | { readonly ask: 'lay'; readonly text: string }
  /** One finished file of the order that was laid last. */
  | { readonly ask: 'file'; readonly path: string }
  /** All of them and the order, in one archive. */
  | { readonly ask: 'archive' }

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
  /** Files of the whole order. */
  readonly files: readonly string[]
}

export interface LaidDrawing {
  readonly star: string
  readonly title: string
  readonly sheets: number
  /** The drawing over the grid of its pages, as SVG. */
  readonly map: string
  /** Paths of its files. */
  readonly files: readonly string[]
}
