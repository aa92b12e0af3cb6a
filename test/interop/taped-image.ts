import type { Point } from '../../src/geometry/point.js'
import { back, type Motion, moveBy } from '../paper/motion.js'
import type { TapedPage } from '../paper/taped.js'
import type { GreyImage } from './read-pgm.js'

/** How dark a place is, from 0 to 1; between the middles of four dots it runs evenly (bilinear). */
export type Darkness = (at: Point) => number

/** A rendered page, by its own mm from the lower left corner. */
export const darknessOf = ({ across, down, at }: GreyImage, dotsPerMm: number): Darkness => {
  const dark = (x: number, y: number): number =>
    x < 0 || y < 0 || x >= across || y >= down ? 0 : 1 - at(x, y) / 255
  return (point) => {
    const [x, y] = [point.x * dotsPerMm - 0.5, down - point.y * dotsPerMm - 0.5]
    const [left, top] = [Math.floor(x), Math.floor(y)]
    const [right, low] = [x - left, y - top]
    return (
      (1 - low) * ((1 - right) * dark(left, top) + right * dark(left + 1, top)) +
      low * ((1 - right) * dark(left, top + 1) + right * dark(left + 1, top + 1))
    )
  }
}

/** Which page is uppermost at a place of the table: it shows what its trimmed paper holds there. */
export const uppermost = (pages: readonly TapedPage[]) => {
  const layers = pages.map(({ page, onTable }, index) => ({
    index,
    paper: page.paper,
    toPage: back(onTable),
  }))
  layers.reverse()
  return (at: Point): { readonly index: number; readonly onPage: Point } | undefined => {
    for (const { index, paper, toPage } of layers) {
      const onPage = moveBy(toPage, at)
      const { x, y } = onPage
      if (x >= paper.min.x && x <= paper.max.x && y >= paper.min.y && y <= paper.max.y)
        return { index, onPage }
    }
    return undefined
  }
}

/** What is seen on the table. */
export const tapedDarkness = (pages: readonly TapedPage[], images: readonly Darkness[]): Darkness => {
  const top = uppermost(pages)
  return (at) => {
    const seen = top(at)
    return seen ? (images[seen.index]?.(seen.onPage) ?? 0) : 0
  }
}

/** The same picture where a motion has brought it. */
export const movedDarkness = (image: Darkness, motion: Motion): Darkness => {
  const there = back(motion)
  return (at) => image(moveBy(there, at))
}

/** Places of the table that are left out of a comparison. */
export interface Mask {
  readonly hide: (at: Point, around: number) => void
  readonly hides: (at: Point) => boolean
}

/** Cells of a mask, in mm. */
const CELL = 0.25

export const emptyMask = (): Mask => {
  const hidden = new Set<number>()
  const key = (column: number, row: number): number => (row + 50_000) * 100_000 + column + 50_000
  return {
    hide: ({ x, y }, around) => {
      for (let column = Math.floor((x - around) / CELL); column <= (x + around) / CELL; column++) {
        for (let row = Math.floor((y - around) / CELL); row <= (y + around) / CELL; row++) {
          hidden.add(key(column, row))
        }
      }
    },
    hides: ({ x, y }) => hidden.has(key(Math.floor(x / CELL), Math.floor(y / CELL))),
  }
}

/** Points along a chain, at most `step` apart, each with the direction across it. */
export function* along(points: readonly Point[], step: number): Generator<{ at: Point; across: Point }> {
  for (const [index, from] of points.slice(0, -1).entries()) {
    const to = points[index + 1] ?? from
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    const count = Math.ceil(length / step)
    const across = { x: -(to.y - from.y) / length, y: (to.x - from.x) / length }
    for (let place = 0; place < count; place++) {
      const t = (place + 0.5) / count
      yield { at: { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t }, across }
    }
  }
}
