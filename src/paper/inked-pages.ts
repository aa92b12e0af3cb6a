import type { Bands } from './bands.js'
import { type InkRaster, inkedCells } from './ink.js'
import { joiningPages } from './join-groups.js'

/** Which pages of a grid are printed: row after row from the lowest, 1 for printed. */
export interface InkedPages {
  readonly printed: readonly number[]
  readonly count: number
}

/**
 * The fewest pages that together show all ink and hang together by whole edges, so that they can be taped; undefined
 * when that takes more than `most`.
 *
 * A page is needed when it alone shows some ink. Ink that only lies in strips which neighbours share needs one of them;
 * the choice is searched through. A cell on the edge of such a strip counts for the page beside it. Groups of pages that
 * stand apart are joined by the fewest pages between them.
 */
export const inkedPages = (raster: InkRaster, x: Bands, y: Bands, most: number): InkedPages | undefined => {
  const columns = x.pages
  const count = pagesAlone(raster, x, y, most)
  if (count > most) return undefined
  const printed: number[] = new Array(columns * y.pages).fill(0)
  for (let page = 0; page < printed.length; page++) {
    if (hasInk(raster, x, y, 2 * (page % columns), 2 * Math.floor(page / columns))) printed[page] = 1
  }
  const added = fewestAdded(printed, sharedByUnprinted(raster, x, y, printed), columns, most - count)
  if (added === undefined) return undefined
  for (const page of added) printed[page] = 1
  return { printed, count: count + added.length }
}

const hasInk = (raster: InkRaster, x: Bands, y: Bands, bandX: number, bandY: number): boolean =>
  inkedCells(
    raster,
    x.bounds[bandX] as number,
    y.bounds[bandY] as number,
    x.bounds[bandX + 1] as number,
    y.bounds[bandY + 1] as number,
  ) > 0

/** How many pages show ink that no other page shows; more than `most` are not counted on. */
const pagesAlone = (raster: InkRaster, x: Bands, y: Bands, most: number): number => {
  let count = 0
  for (let bandY = 0; bandY < 2 * y.pages; bandY += 2) {
    for (let bandX = 0; bandX < 2 * x.pages; bandX += 2) {
      if (hasInk(raster, x, y, bandX, bandY) && ++count > most) return count
    }
  }
  return count
}

/** For each inked strip that only unprinted pages show: the two or four pages that show it. */
const sharedByUnprinted = (
  raster: InkRaster,
  x: Bands,
  y: Bands,
  printed: readonly number[],
): readonly (readonly number[])[] => {
  const open: number[][] = []
  for (let bandY = 0; bandY < 2 * y.pages - 1; bandY++) {
    const low = (bandY >> 1) * x.pages
    const high = ((bandY + 1) >> 1) * x.pages
    for (let bandX = 1 - (bandY % 2); bandX < 2 * x.pages - 1; bandX += 2 - (bandY % 2)) {
      const left = bandX >> 1
      const right = (bandX + 1) >> 1
      if (printed[low + left] || printed[low + right] || printed[high + left] || printed[high + right])
        continue
      if (hasInk(raster, x, y, bandX, bandY))
        open.push([...new Set([low + left, low + right, high + left, high + right])])
    }
  }
  return open
}

/**
 * The fewest pages to print besides those that are, so that of every strip one page is printed and all pages hang
 * together; at most `most`, or undefined.
 */
const fewestAdded = (
  printed: number[],
  strips: readonly (readonly number[])[],
  columns: number,
  most: number,
): readonly number[] | undefined => {
  const open = strips.filter((pages) => !pages.some((page) => printed[page] === 1))
  const [first] = open
  if (!first) return joiningPages(printed, columns, most)
  if (apartGroups(open) > most) return undefined
  let best: readonly number[] | undefined
  for (const page of first) {
    printed[page] = 1
    const rest = fewestAdded(printed, open, columns, (best?.length ?? most + 1) - 2)
    printed[page] = 0
    if (rest) best = [page, ...rest]
  }
  return best
}

/** How many groups, taken as they come, have no page in common: each of them needs a page of its own. */
const apartGroups = (groups: readonly (readonly number[])[]): number => {
  const taken = new Set<number>()
  let apart = 0
  for (const group of groups) {
    if (group.some((page) => taken.has(page))) continue
    apart++
    for (const page of group) taken.add(page)
  }
  return apart
}
