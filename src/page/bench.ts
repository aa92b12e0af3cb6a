import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import type { OrderDocument, OrderPlace, OrderValue } from '../order/edit-text.js'
import type { Plan } from '../plan/plan.js'
import type { Beside } from './beside.js'
import type { Job } from './job.js'

/** One change of the order: a place, and its value, or undefined to take it out. */
export type Change = readonly [place: OrderPlace, value: OrderValue | undefined]

/** What every part of the page works on. */
export interface Bench {
  readonly job: Job
  /** The plan of the order, or of what it was before the mistakes it has now, told in the units it is written in. */
  readonly plan: Plan
  /** The order as it is written. */
  readonly document: OrderDocument
  /** Makes changes as one step that can be undone. */
  readonly change: (...changes: readonly Change[]) => void
  /** Makes them as the star is pulled, where it must keep up with the finger; `on` goes on with the last step. */
  readonly pull: (on: boolean, ...changes: readonly Change[]) => void
  /** How what the worker works out stands to the plan. */
  readonly beside: Beside
  /** Saves a finished file of the order; absent while there is none of the order as it is written. */
  readonly save?: (path: string) => void
  /** The star that is shown, counted from 0. */
  readonly starIndex: number
}

/** How many orders were taken in place of another so far. */
export const TakenContext = createContext(0)

export const BenchContext = createContext<Bench | undefined>(undefined)

export const useBench = (): Bench => {
  const bench = useContext(BenchContext)
  if (!bench) throw new Error('a part of the page stands outside it')
  return bench
}
