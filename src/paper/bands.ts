import { CELL, within } from './ink.js'

/**
 * One way of laying pages along x or y: page k shows `window` mm from `start + k * pitch` on, and neighbours share
 * what `window` is longer than `pitch`. Lengths are measured from where the ink begins.
 */
export interface Bands {
  /** Where the first page begins: 0 or less. */
  readonly start: number
  readonly pages: number
  /**
   * Cells of the ink raster by who shows them: bounds of 2 * pages - 1 bands, of which the even ones are shown by one
   * page only and the odd ones by two neighbours.
   */
  readonly bounds: readonly number[]
}

export interface Row {
  /** What a page can show, without the white kept at its edges. */
  readonly window: number
  readonly pitch: number
}

/** How many pages cover a length from `start` on. */
export const pagesOver = (length: number, start: number, { window, pitch }: Row): number =>
  Math.max(1, Math.ceil((length - start - window) / pitch - NOISE) + 1)

/** In pitches: rounding noise must not ask for one more page. */
const NOISE = 1e-9

export const bandsFrom = (start: number, length: number, cells: number, row: Row): Bands => {
  const pages = pagesOver(length, start, row)
  const bounds = new Array<number>(2 * pages).fill(0)
  for (let page = 1; page < pages; page++) {
    const begins = start + page * row.pitch
    const before = begins - row.pitch + row.window
    bounds[2 * page - 1] = within(Math.ceil(begins / CELL), cells)
    bounds[2 * page] = within(Math.floor(before / CELL), cells)
  }
  bounds[2 * pages - 1] = cells
  return { start, pages, bounds }
}

/** Beginnings `step` apart over one pitch, and the one that leaves as much white before the ink as after it. */
export const bandChoices = (length: number, cells: number, row: Row, step: number): Bands[] => {
  const fewest = pagesOver(length, 0, row)
  const white = (fewest - 1) * row.pitch + row.window - length
  const centred = bandsFrom(-white / 2, length, cells, row)
  if (fewest === 1) return [centred]
  const shifts = Array.from({ length: Math.ceil(row.pitch / step) }, (_, index) =>
    bandsFrom(-index * step, length, cells, row),
  )
  return [centred, ...shifts]
}
