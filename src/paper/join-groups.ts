/** More groups than these are joined one after the other, each to the nearest. */
const SEARCHED = 6

/**
 * The fewest unprinted pages that make groups of printed ones hang together by whole edges; undefined when that takes
 * more than `most`.
 *
 * Up to {@link SEARCHED} groups it is exact: the least tree through all of them, built up from the least trees through
 * some of them that end at each page (Dreyfus and Wagner, 1971, with the cost at the pages; from memory).
 *
 * @param printed row after row, 1 for printed
 */
export const joiningPages = (
  printed: readonly number[],
  columns: number,
  most: number,
): readonly number[] | undefined => {
  const groups = groupsOf(printed, columns)
  // A page has four edges: it joins four groups at most.
  if (Math.ceil((groups.length - 1) / 3) > most) return undefined
  const pages =
    groups.length > SEARCHED ? nearestFirst(printed, columns) : leastTree(groups, printed, columns)
  return pages.length > most ? undefined : pages
}

/** Pages that hang together, group by group. */
const groupsOf = (printed: readonly number[], columns: number): number[][] => {
  const left = new Set(printed.flatMap((isPrinted, page) => (isPrinted === 1 ? [page] : [])))
  const groups: number[][] = []
  for (const first of left) {
    const group = [first]
    left.delete(first)
    for (const page of group) {
      for (const next of pagesBeside(page, columns, printed.length)) if (left.delete(next)) group.push(next)
    }
    groups.push(group)
  }
  return groups
}

/** How a tree that ends at a page is made: of two trees that end there, or of one that ends at a page beside it. */
type Made = { readonly part: number } | { readonly beside: number }

/** The least trees through some groups, for each page at which they end: unprinted pages, the last included. */
interface Trees {
  readonly cost: number[]
  readonly made: (Made | undefined)[]
}

const leastTree = (
  groups: readonly (readonly number[])[],
  printed: readonly number[],
  columns: number,
): readonly number[] => {
  const all = 2 ** groups.length - 1
  const trees: Trees[] = []
  for (let through = 1; through <= all; through++)
    trees[through] = treesThrough(through, trees, groups, printed, columns)
  const found = new Set<number>()
  const collect = (through: number, page: number): void => {
    if (printed[page] !== 1) found.add(page)
    const made = trees[through]?.made[page]
    if (made && 'beside' in made) collect(through, made.beside)
    else if (made) {
      collect(made.part, page)
      collect(through - made.part, page)
    }
  }
  const cost = trees[all]?.cost ?? []
  if (all > 0) collect(all, cost.indexOf(Math.min(...cost)))
  return [...found]
}

/** @param through the groups, a bit each */
const treesThrough = (
  through: number,
  smaller: readonly Trees[],
  groups: readonly (readonly number[])[],
  printed: readonly number[],
  columns: number,
): Trees => {
  const cost: number[] = printed.map(() => Infinity)
  const made: (Made | undefined)[] = printed.map(() => undefined)
  const only = groups.findIndex((_, group) => 2 ** group === through)
  for (const page of groups[only] ?? []) cost[page] = 0
  for (let part = (through - 1) & through; part > through - part; part = (part - 1) & through) {
    const [one, other] = [smaller[part], smaller[through - part]]
    for (let page = 0; page < printed.length; page++) {
      const both = (one?.cost[page] ?? 0) + (other?.cost[page] ?? 0) - own(printed, page)
      if (both >= (cost[page] ?? 0)) continue
      cost[page] = both
      made[page] = { part }
    }
  }
  spread(cost, made, printed, columns)
  return { cost, made }
}

/** Lengthens trees page by page as long as one gets cheaper so. */
const spread = (
  cost: number[],
  made: (Made | undefined)[],
  printed: readonly number[],
  columns: number,
): void => {
  const open = cost.flatMap((each, page) => (each < Infinity ? [page] : []))
  for (const page of open) {
    for (const next of pagesBeside(page, columns, printed.length)) {
      const longer = (cost[page] ?? 0) + own(printed, next)
      if (longer >= (cost[next] ?? 0)) continue
      cost[next] = longer
      made[next] = { beside: page }
      open.push(next)
    }
  }
}

const own = (printed: readonly number[], page: number): number => (printed[page] === 1 ? 0 : 1)

/** Always the first group to the nearest other, the shortest way. */
const nearestFirst = (printed: readonly number[], columns: number): readonly number[] => {
  const [group, ...others] = groupsOf(printed, columns)
  if (!group || others.length === 0) return []
  const way = shortestWay(group, printed, columns)
  const joined = [...printed]
  for (const page of way) joined[page] = 1
  return [...way, ...nearestFirst(joined, columns)]
}

/** The unprinted pages between a group and the nearest other. */
const shortestWay = (
  group: readonly number[],
  printed: readonly number[],
  columns: number,
): readonly number[] => {
  const cameFrom = new Map(group.map((page) => [page, page]))
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
