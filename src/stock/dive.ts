import type { CutSupply, CuttingProblem } from './cutting-problem.js'
import { firstFit } from './first-fit.js'
import { problemLeft } from './improve.js'
import { type BoardPrices, type Deadline, priceBoards } from './price-boards.js'
import type { Solver } from './solver.js'
import { offeredBy, wholeBoards } from './whole-boards.js'

/** Parts of a board above this are rounded up at once. */
const NEARLY_WHOLE = 0.7
const NOISE = 1e-6
/** So many are chosen together. */
const FEW_BOARDS = 8

/**
 * Whole boards from parts of boards: what the linear program takes nearly whole is taken, the rest of the order is
 * priced anew, and so on until nothing is left.
 *
 * @returns undefined when the time runs out
 */
export const dive = (
  problem: CuttingProblem,
  prices: BoardPrices,
  solver: Solver,
  deadline: Deadline,
): readonly CutSupply[] | undefined => {
  const taken: CutSupply[] = []
  let [left, found, quantities] = [problem, prices.cuts, prices.quantities]
  for (;;) {
    const fixed = fixedParts(found, quantities)
    if (fixed.length === 0) return undefined
    for (const cut of fixed) {
      if ((left.supplies[cut.supply]?.limit ?? 0) < 1 || isIdle(cut, left)) continue
      taken.push(cut)
      left = problemLeft([cut], left)
    }
    if (left.demands.every(({ count }) => count === 0)) return taken
    if (deadline.now() > deadline.until) return undefined
    const rest = firstFit(left)
    const next = priceBoards(left, [...found, ...rest], solver, () => false, deadline)
    const boards = next.quantities.reduce((sum, quantity) => sum + quantity, 0)
    if (boards <= FEW_BOARDS) {
      const seconds = Math.max(0.1, (deadline.until - deadline.now()) / 1000)
      const last = wholeBoards(left, offeredBy(next.cuts, left), rest, solver, seconds)
      return [...taken, ...(last?.cuts ?? rest)]
    }
    ;[found, quantities] = [next.cuts, next.quantities]
  }
}

/** Whole numbers of boards as they are; of the rest those that are nearly whole, or the largest part. */
const fixedParts = (cuts: readonly CutSupply[], quantities: readonly number[]): CutSupply[] => {
  const parts = cuts.map((cut, index) => ({ cut, quantity: quantities[index] ?? 0 }))
  const whole = parts.flatMap(({ cut, quantity }) =>
    Array.from({ length: Math.floor(quantity + 1 - NEARLY_WHOLE) }, () => cut),
  )
  if (whole.length > 0) return whole
  const largest = parts.reduce(
    (most, part) => (part.quantity > (most?.quantity ?? NOISE) ? part : most),
    undefined as (typeof parts)[number] | undefined,
  )
  return largest ? [largest.cut] : []
}

/** Does it hold nothing that is still wanted? */
const isIdle = ({ fillings }: CutSupply, { demands }: CuttingProblem): boolean =>
  demands.every(({ count }, blank) => count === 0 || fillings.every((filling) => (filling[blank] ?? 0) === 0))
