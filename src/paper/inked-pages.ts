import type { Bands } from './bands.js'
import { type InkRaster, inkedCells } from './ink.js'

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
 * the choice is searched through. A cell on the edge of such a strip counts for the page beside it. Pages that
 * still stand apart are joined afterwards, group by group, the shortest way, which may take a page more than the best.
 */
export const inkedPages = (raster: InkRaster, x: Bands, y: Bands, most: number): InkedPages | undefined => {
  const columns = x.pages
  const count = pagesAlone(raster, x, y, most)
  if (count > most) return undefined
  const printed: number[] = new Array(columns * y.pages).fill(0)
  for (let page = 0; page < printed.length; page++) {
    if (hasInk(raster, x, y, 2 * (page % columns), 2 * Math.floor(page / columns))) printed[page] = 1
  }
  const open = sharedByUnprinted(raster, x, y, printed)
  const chosen = open.length > 0 ? fewestChosen(open, most - count) : []
  if (chosen === undefined) return undefined
  for (const page of chosen) printed[page] = 1
  const all = count + chosen.length + joinGroups(printed, columns)
  return all > most ? undefined : { printed, count: all }
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

/** The fewest pages of which every group holds one, at most `most`; undefined when that is not enough. */
const fewestChosen = (groups: readonly (readonly number[])[], most: number): number[] | undefined => {
  const [first] = groups
  if (!first) return []
  if (apartGroups(groups) > most) return undefined
  let best: number[] | undefined
  for (const page of first) {
    const left = groups.filter((group) => !group.includes(page))
    const rest = fewestChosen(left, (best?.length ?? most + 1) - 2)
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

/** Prints pages between groups of printed pages that share no edge, the shortest way; gives how many were added. */
const joinGroups = (printed: number[], columns: number): number => {
  const way = wayBetweenGroups(printed, columns)
  if (!way) return 0
  for (const page of way) printed[page] = 1
  return way.length + joinGroups(printed, columns)
}

/** The unprinted pages between the first printed page's group and the nearest other; undefined when all hang together. */
const wayBetweenGroups = (printed: readonly number[], columns: number): readonly number[] | undefined => {
  const first = printed.indexOf(1)
  const cameFrom = new Map([[first, first]])
  const group = [first]
  for (const page of group) {
    for (const next of pagesBeside(page, columns, printed.length)) {
      if (printed[next] !== 1 || cameFrom.has(next)) continue
      cameFrom.set(next, next)
      group.push(next)
    }
  }
  if (printed.every((isPrinted, page) => isPrinted !== 1 || cameFrom.has(page))) return undefined
  const reached = [...group]
  for (const page of reached) {
    for (const next of pagesBeside(page, columns, printed.length)) {
      if (cameFrom.has(next)) continue
      cameFrom.set(next, page)
      if (printed[next] === 1) return wayBack(cameFrom, page)
      reached.push(next)
    }
  }
  throw new RangeError('a grid hangs together')
}

const wayBack = (cameFrom: ReadonlyMap<number, number>, page: number): readonly number[] => {
  const before = cameFrom.get(page) ?? page
  return before === page ? [] : [page, ...wayBack(cameFrom, before)]
}

const pagesBeside = (page: number, columns: number, count: number): readonly number[] => [
  ...(page % columns > 0 ? [page - 1] : []),
  ...(page % columns < columns - 1 ? [page + 1] : []),
  ...(page >= columns ? [page - columns] : []),
  ...(page + columns < count ? [page + columns] : []),
]
