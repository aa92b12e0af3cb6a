import { SAME_POINT } from '../units/tolerance.js'
import { boardFiller } from './board-filler.js'
import { type CutSupply, type CuttingProblem, costOf } from './cutting-problem.js'

/**
 * A good way to cut everything, found at once: board after board is filled, longest blanks first, as first-fit
 * decreasing fills it, and the board is taken that costs least for the length it holds. Once more for each supply with
 * that one taken first, and the cheapest of all is kept.
 */
export const firstFit = (problem: CuttingProblem): CutSupply[] => {
  const { demands, supplies } = problem
  const fill = boardFiller(problem)
  const left = { counts: demands.map(({ count }) => count), limits: supplies.map(({ limit }) => limit) }
  const worth = demands.map(({ length }) => length)
  const order = byFalling(worth)
  const favourites = [undefined, ...supplies.map((_, index) => index)].slice(0, MOST_TRIED)
  const tried = favourites.map((favourite) =>
    fill(left, { order, worth, dearness: (supply) => (supply === favourite ? 0 : 1) }),
  )
  return tried.reduce((best, cuts) =>
    costOf(cuts, problem) < costOf(best, problem) - SAME_POINT ? cuts : best,
  )
}

/** The places of a list, from its largest value down. */
export const byFalling = (values: readonly number[]): number[] =>
  values.map((_, index) => index).sort((a, b) => (values[b] ?? 0) - (values[a] ?? 0))

/** Trying more supplies first seldom helps. */
const MOST_TRIED = 12
