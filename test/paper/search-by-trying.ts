import type { Point } from '../../src/geometry/point.js'
import type { Paper } from '../../src/order/order.js'
import { PADDING } from '../../src/paper/padding.js'
import { sheetOfSize, windowSize } from '../../src/paper/sheet.js'
import type { PaperSize } from '../../src/tables/paper.js'
import { fewestByTrying } from './covering-pages.js'

/** Grids of more pages are not tried: the small figures of the tests never need them. */
const MOST_PAGES = 12

/** Closely spaced points of what is drawn, each with room of its own around it. */
export interface Spots {
  readonly points: readonly Point[]
  /** A page shows a point when it lies this far, or more, inside its window; less than 0 lets it lie outside. */
  readonly inside: number
}

/**
 * The fewest sheets for a figure, found by trying every turn of 2 degrees, both ways of laying the sheet, and the
 * grid's offset in steps of 5 mm and evenly around the figure: each way by plain comparison of points with windows.
 */
export const searchByTrying = ({ points, inside }: Spots, paper: Paper, size: PaperSize): number => {
  let fewest = Infinity
  for (let angle = 0; angle < 180; angle += 2) {
    const turned = points.map((spot) => turn(spot, (angle * Math.PI) / 180))
    for (const onItsSide of [false, true]) {
      const { across, along } = windowSize(sheetOfSize(paper, size, onItsSide))
      const ways = {
        x: offsets(
          turned.map(({ x }) => x),
          across,
          paper.overlap,
          inside,
        ),
        y: offsets(
          turned.map(({ y }) => y),
          along,
          paper.overlap,
          inside,
        ),
      }
      for (const x of ways.x) {
        for (const y of ways.y) {
          if (x.count * y.count > MOST_PAGES) continue
          fewest = Math.min(fewest, fewestAt(x, y, fewest))
        }
      }
    }
  }
  return fewest
}

const turn = ({ x, y }: Point, angle: number): Point => ({
  x: x * Math.cos(angle) - y * Math.sin(angle),
  y: x * Math.sin(angle) + y * Math.cos(angle),
})

interface Way {
  readonly count: number
  /** For every point the pages of the row that show it, one bit each. */
  readonly shownBy: Uint16Array
}

/** The ways of laying a row of windows over values, which begin PADDING inside the first one at the latest. */
const offsets = (values: readonly number[], window: number, overlap: number, inside: number): Way[] => {
  const least = Math.min(...values)
  const length = Math.max(...values) - least
  const [usable, pitch] = [window - 2 * PADDING, window - overlap]
  const needed = (start: number): number =>
    Math.max(1, Math.ceil((length - start - usable) / pitch - 1e-9) + 1)
  const starts = [-((needed(0) - 1) * pitch + usable - length) / 2]
  if (needed(0) > 1) for (let start = 0; start > -pitch; start -= 5) starts.push(start)
  return starts.map((start) => {
    const count = needed(start)
    const shownBy = new Uint16Array(values.length)
    for (let page = 0; page < count; page++) {
      const from = least + start + page * pitch + inside - 1e-9
      const to = least + start + page * pitch + usable - inside + 1e-9
      for (const [index, value] of values.entries()) {
        if (value >= from && value <= to) shownBy[index] = (shownBy[index] ?? 0) | (1 << page)
      }
    }
    return { count, shownBy }
  })
}

/** Infinity where it takes as many as `fewest`, or where a point lies in no window. */
const fewestAt = (x: Way, y: Way, fewest: number): number => {
  // Pages that hang together and reach over c columns and r rows are at least c + r - 1.
  if (x.count + y.count - 1 >= fewest) return Infinity
  const groups = new Set<number>()
  let alone = 0
  for (let index = 0; index < x.shownBy.length; index++) {
    const columns = x.shownBy[index] as number
    const rows = y.shownBy[index] as number
    if (columns === 0 || rows === 0) return Infinity
    let pages = 0
    for (let row = 0; row < y.count; row++) if (rows & (1 << row)) pages |= columns << (row * x.count)
    if (groups.has(pages)) continue
    groups.add(pages)
    if ((pages & (pages - 1)) === 0 && ++alone >= fewest) return Infinity
  }
  const shownBy = [...groups].map((pages) =>
    Array.from({ length: x.count * y.count }, (_, page) => page).filter((page) => pages & (1 << page)),
  )
  return fewestByTrying({ columns: x.count, rows: y.count, shownBy })
}
