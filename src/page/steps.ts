import { FURNITURE_NAMES } from '../furniture/furniture-names.js'
import type { Kept } from './address.js'

/** What the page keeps now, what it was before and what was undone, the nearest last in `past` and first in `future`. */
export interface Steps {
  readonly past: readonly Kept[]
  readonly now: Kept
  readonly future: readonly Kept[]
}

/** More steps back than anyone goes. */
const MOST_STEPS = 200

/** Undo brings back what the order was before its mistakes. */
export const stepsFrom = ({ before, ...now }: Kept): Steps =>
  before === undefined
    ? { past: [], now, future: [] }
    : { past: [{ ...now, order: before.order }], now: { ...now, before }, future: [] }

/** A change that can be undone. */
export const changed = (steps: Steps, change: Partial<Kept>): Steps => {
  const next = { ...steps.now, ...change }
  return isSameKept(next, steps.now)
    ? steps
    : { past: [...steps.past, steps.now].slice(-MOST_STEPS), now: next, future: [] }
}

/** A change that goes on with the last one, as while a tip is pulled. */
export const changedOn = (steps: Steps, change: Partial<Kept>): Steps => ({
  ...steps,
  now: { ...steps.now, ...change },
})

export const undone = (steps: Steps): Steps => {
  const before = steps.past.at(-1)
  return before === undefined
    ? steps
    : { past: steps.past.slice(0, -1), now: before, future: [steps.now, ...steps.future] }
}

export const redone = (steps: Steps): Steps => {
  const [next, ...future] = steps.future
  return next === undefined ? steps : { past: [...steps.past, steps.now], now: next, future }
}

const isSameKept = (one: Kept, other: Kept): boolean =>
  one.order === other.order &&
  one.wall === other.wall &&
  FURNITURE_NAMES.every((name) => one.furniture[name] === other.furniture[name]) &&
  JSON.stringify(one.measured) === JSON.stringify(other.measured)
