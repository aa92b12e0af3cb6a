/** The order's text now, what it was before and what was undone, the nearest last in `past` and first in `future`. */
export interface OrderHistory {
  readonly past: readonly string[]
  readonly now: string
  readonly future: readonly string[]
}

/** More steps back than anyone goes. */
const MOST_STEPS = 200

export const historyOf = (text: string): OrderHistory => ({ past: [], now: text, future: [] })

/** A change that can be undone. */
export const changed = (history: OrderHistory, text: string): OrderHistory =>
  text === history.now
    ? history
    : { past: [...history.past, history.now].slice(-MOST_STEPS), now: text, future: [] }

/** A change that goes on with the last one, as while a tip is pulled. */
export const changedOn = (history: OrderHistory, text: string): OrderHistory => ({ ...history, now: text })

export const undone = (history: OrderHistory): OrderHistory => {
  const before = history.past.at(-1)
  return before === undefined
    ? history
    : { past: history.past.slice(0, -1), now: before, future: [history.now, ...history.future] }
}

export const redone = (history: OrderHistory): OrderHistory => {
  const [next, ...future] = history.future
  return next === undefined ? history : { past: [...history.past, history.now], now: next, future }
}
