import { SAME_POINT } from '../units/tolerance.js'
import { type CutSupply, type CuttingProblem, costOf } from './cutting-problem.js'
import { firstFit } from './first-fit.js'
import type { Solver } from './highs.js'
import { parted, problemLeft, single } from './improve.js'
import { type BoardPrices, type Deadline, priceBoards } from './price-boards.js'
import { randomNumbers } from './random-numbers.js'
import { offeredBy, wholeBoards } from './whole-boards.js'

/** So many boards are given up at a time: few enough for the solver to do well at once. */
const GIVEN_UP = 7
/** Seconds for the choice. */
const LONGEST_CHOICE = 0.6

/**
 * Gives up some boards of a cutting and has the solver choose boards for their blanks anew, from ways of cutting that
 * are priced for just these, as long as there is time.
 *
 * @param enough is the cutting good enough?
 */
export const chosenAnew = (
  problem: CuttingProblem,
  prices: BoardPrices,
  known: readonly CutSupply[],
  solver: Solver,
  enough: (cuts: readonly CutSupply[]) => boolean,
  deadline: Deadline,
): readonly CutSupply[] => {
  const random = randomNumbers(2)
  let best: readonly CutSupply[] = single(known)
  while (deadline.now() < deadline.until && !enough(best)) {
    const { given, kept } = parted(best, prices, problem, random, GIVEN_UP)
    const left = problemLeft(kept, problem)
    const next = priceBoards(
      left,
      [...prices.cuts, ...given, ...firstFit(left)],
      solver,
      () => false,
      deadline,
    )
    const seconds = Math.min(LONGEST_CHOICE, (deadline.until - deadline.now()) / 1000)
    if (seconds <= 0) return best
    const chosen = wholeBoards(left, offeredBy(next.cuts, left), given, solver, seconds)
    if (chosen && costOf(chosen.cuts, problem) < costOf(given, problem) - SAME_POINT)
      best = [...kept, ...chosen.cuts]
  }
  return best
}
