import type { Deadline } from '../../src/stock/price-boards.js'

/** A clock that moves on a millisecond with every look, so that a search ends wherever it runs. */
export const counted = (milliseconds: number): Deadline => {
  let looks = 0
  return { until: milliseconds, now: () => looks++ }
}
