import type { Side } from '../../src/drawing/sides.js'
import { type Point, point } from '../../src/geometry/point.js'

/** Equal windows in columns and rows, the lowest on the left first; lengths in mm. */
export interface Grid {
  readonly corner: Point
  readonly columns: number
  readonly rows: number
  readonly window: Point
  readonly pitch: Point
  /** Left out of every window at an edge that a neighbour may join. */
  readonly trimmed?: number
}

/**
 * Pages of a grid that show all of some straight strokes and hang together by whole edges: the fewest, found by trying
 * every set of pages, smaller sets first. It shares nothing with the search but the grid.
 *
 * @returns Infinity when more than `most` are needed
 */
export const leastPages = (strokes: readonly Side[], grid: Grid, most: number): number => {
  const pages = grid.columns * grid.rows
  const spans = strokes.map((stroke) => Array.from({ length: pages }, (_, page) => seen(stroke, grid, page)))
  for (let size = 1; size <= Math.min(most, pages); size++) {
    if (
      setsOf(pages, size).some((set) => spans.every((each) => covers(each, set)) && hangs(set, grid.columns))
    )
      return size
  }
  return Infinity
}

/** The share of a stroke that a window shows, as two numbers from 0 to 1; a stroke is cut by four half-planes. */
const seen = ([a, b]: Side, grid: Grid, page: number): readonly [number, number] => {
  const { corner, columns, rows, window, pitch, trimmed = 0 } = grid
  const [column, row] = [page % columns, Math.floor(page / columns)]
  const low = point(corner.x + column * pitch.x, corner.y + row * pitch.y)
  const trim = (joined: boolean): number => (joined ? trimmed : 0)
  let [from, to] = [0, 1]
  const keepPositive = (atA: number, atB: number): void => {
    if (atA < 0 && atB < 0) to = -1
    else if (atA < 0) from = Math.max(from, atA / (atA - atB))
    else if (atB < 0) to = Math.min(to, atA / (atA - atB))
  }
  const [left, bottom] = [low.x + trim(column > 0), low.y + trim(row > 0)]
  const right = low.x + window.x - trim(column < columns - 1)
  const top = low.y + window.y - trim(row < rows - 1)
  keepPositive(a.x - left + ROUNDING, b.x - left + ROUNDING)
  keepPositive(right - a.x + ROUNDING, right - b.x + ROUNDING)
  keepPositive(a.y - bottom + ROUNDING, b.y - bottom + ROUNDING)
  keepPositive(top - a.y + ROUNDING, top - b.y + ROUNDING)
  return [from, to]
}

const ROUNDING = 1e-7

const covers = (spans: readonly (readonly [number, number])[], set: readonly number[]): boolean => {
  const sorted = set
    .map((page) => spans[page] ?? [0, -1])
    .filter(([from, to]) => to >= from)
    .sort(([a], [b]) => a - b)
  let reached = 0
  for (const [from, to] of sorted) {
    if (from > reached + ROUNDING) return false
    reached = Math.max(reached, to)
  }
  return sorted.length > 0 && reached >= 1 - ROUNDING
}

/** Can one go from every page to every other over shared edges? */
export const hangs = (set: readonly number[], columns: number): boolean => {
  const [first, ...rest] = set
  const found = first === undefined ? [] : [first]
  let left = rest
  for (const page of found) {
    const beside = (other: number): boolean =>
      Math.abs(other - page) === columns ||
      (Math.abs(other - page) === 1 && Math.floor(other / columns) === Math.floor(page / columns))
    found.push(...left.filter(beside))
    left = left.filter((other) => !beside(other))
  }
  return left.length === 0
}

const known = new Map<string, readonly (readonly number[])[]>()

/** Every set of `size` of the numbers below `count`. */
const setsOf = (count: number, size: number): readonly (readonly number[])[] => {
  const key = `${count} ${size}`
  const found = known.get(key)
  if (found) return found
  const sets =
    size === 0
      ? [[]]
      : Array.from({ length: count }, (_, last) => setsOf(last, size - 1).map((set) => [...set, last])).flat()
  known.set(key, sets)
  return sets
}
