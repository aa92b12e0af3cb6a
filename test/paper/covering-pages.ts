/** Cells with ink, and which of them each page shows: page = row · columns + column, rows counted from below. */
export interface Grid {
  readonly columns: number
  readonly rows: number
  /** For every inked cell the pages that show it. */
  readonly shownBy: readonly (readonly number[])[]
}

/**
 * The fewest pages that together show every inked cell and of which no two meet at a corner alone, found by trying
 * every set of pages, the small sets first. The sets of an empty figure are left out: a page is always printed for ink.
 */
export const fewestByTrying = ({ columns, rows, shownBy }: Grid): number => {
  const pages = columns * rows
  let fewest = Infinity
  for (let set = 0; set < 1 << pages; set++) {
    const count = ones(set)
    if (count >= fewest) continue
    const has = (page: number): boolean => (set & (1 << page)) !== 0
    if (!shownBy.every((group) => group.some(has))) continue
    if (meetsAtCornerAlone(columns, rows, has)) continue
    fewest = count
  }
  return fewest
}

const ones = (set: number): number => (set === 0 ? 0 : (set & 1) + ones(set >>> 1))

const meetsAtCornerAlone = (columns: number, rows: number, has: (page: number) => boolean): boolean => {
  for (let row = 0; row + 1 < rows; row++) {
    for (let column = 0; column + 1 < columns; column++) {
      const [low, right, above, across] = [0, 1, columns, columns + 1].map((step) =>
        has(row * columns + column + step),
      )
      if ((low && across && !right && !above) || (right && above && !low && !across)) return true
    }
  }
  return false
}
