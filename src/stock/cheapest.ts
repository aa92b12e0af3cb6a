import { SAME_POINT } from '../units/tolerance.js'
import { branchNumbers } from './branch-numbers.js'
import {
  blanksOf,
  type CutSupply,
  type CuttingProblem,
  costOf,
  costStep,
  type Filling,
  nextCost,
} from './cutting-problem.js'
import { dive } from './dive.js'
import { firstFit } from './first-fit.js'
import { improved } from './improve.js'
import { lightSolver } from './light-solver.js'
import { lowerBound } from './lower-bound.js'
import { anyNumber, type BoardPrices, type Deadline, withPricer } from './price-boards.js'
import type { Solver } from './solver.js'
import { allWithin, joined, offeredBy, wholeBoards } from './whole-boards.js'

/** A way of cutting that gives every blank. */
export interface Cutting {
  readonly cuts: readonly CutSupply[]
  readonly cost: number
  /** No way of cutting costs less; equal to the cost when this one is proved cheapest. */
  readonly bound: number
  readonly proved: boolean
}

/** What first-fit decreasing finds, against the bound that needs no solver. */
export const quickCutting = (problem: CuttingProblem): Cutting =>
  judged(firstFit(problem), lowerBound(problem), problem)

/** The same search as {@link cheapestCutting}, with a small solver and so much work as one does not wait for. */
export const briefCutting = (problem: CuttingProblem): Cutting => {
  const quick = quickCutting(problem)
  return quick.proved ? quick : search(problem, quick, lightSolver, counted(briefLooks(problem)))
}

/** Looks at the clock that a brief search may take: some tenths of a second, with many boards about one. */
const briefLooks = ({ demands, supplies }: CuttingProblem): number =>
  Math.ceil(MOST_LOOKS / (1 + (demands.length * supplies.length) / MANY_PAIRS))

const MOST_LOOKS = 1800
/** Kinds times boards from which a look takes twice the time. */
const MANY_PAIRS = 100

/** Time that passes by being looked at, so that a search ends at the same place on every machine. */
const counted = (until: number): Deadline => {
  let looks = 0
  return { until, now: () => looks++ }
}

/**
 * The cheapest way of cutting. First-fit decreasing and a bound come first and settle most orders; then the blanks are
 * priced by column generation, and whole boards are taken in a dive; at last whole boards are chosen from every filling
 * that could still be cheaper, which is exact. That is done with a small solver first, and again with a large one where
 * a gap is left. When the time runs out it is the best found, with its bound.
 *
 * @param solver loads the large solver, when it is needed
 */
export const cheapestCutting = async (
  problem: CuttingProblem,
  solver: () => Promise<Solver>,
  deadline: Deadline,
): Promise<Cutting> => {
  const brief = briefCutting(problem)
  return brief.proved ? brief : search(problem, brief, await solver(), deadline)
}

/** @param known a cutting to begin with */
const search = (problem: CuttingProblem, known: Cutting, solver: Solver, deadline: Deadline): Cutting => {
  const { until, now } = deadline
  const begun = now()
  const share = (part: number): Deadline => ({ until: Math.min(until, begun + part * (until - begun)), now })
  let best = known
  const better = (cuts: readonly CutSupply[], bound: number): boolean => {
    const next = judged(cuts, Math.max(best.bound, bound), problem)
    best = next.cost < best.cost - SAME_POINT ? next : { ...judged(best.cuts, next.bound, problem) }
    return best.proved
  }
  const isProof = (bound: number): boolean => judged(best.cuts, bound, problem).proved

  return withPricer(problem, known.cuts, solver, (price) => {
    const root = price(anyNumber(problem), isProof, share(0.5))
    if (better(known.cuts, root.bound)) return best
    const dived = dive(problem, root, solver, share(0.15))
    if (dived && better(dived, 0)) return best
    const settled = (cuts: readonly CutSupply[]): boolean => judged(cuts, best.bound, problem).proved
    if (better(improved(problem, root, best.cuts, settled, deadline, SHORT_PATIENCE), 0)) return best
    const branched = branchNumbers(problem, root, price, isProof, share(0.4))
    if (better(best.cuts, branched.bound)) return best
    const every = everyFilling(problem, root, best.cost)
    if (every) {
      const offered = joined(every, offeredBy(best.cuts, problem))
      const exact = wholeBoards(problem, offered, best.cuts, solver, secondsLeft(deadline))
      if (exact) better(exact.cuts, Math.min(exact.bound, best.cost))
    } else better(improved(problem, root, best.cuts, settled, deadline, Infinity), 0)
    return best
  })
}

/** Rounds without a gain before the exact choice is tried. */
const SHORT_PATIENCE = 200

const secondsLeft = ({ until, now }: Deadline): number => Math.max(0.1, (until - now()) / 1000)

const everyFilling = (problem: CuttingProblem, prices: BoardPrices, cost: number) =>
  prices.values.length === 0 ? undefined : allWithin(problem, prices, cost - prices.bound)

const judged = (cuts: readonly CutSupply[], bound: number, problem: CuttingProblem): Cutting => {
  const trimmed = withoutSurplus(cuts, problem)
  const cost = costOf(trimmed, problem)
  const next = Math.min(cost, nextCost(bound, costStep(problem)))
  const proved = next >= cost - SAME_POINT
  return { cuts: trimmed, cost, bound: proved ? cost : next, proved }
}

/** Leaves out blanks that nobody asked for, and boards that then hold none; boards that are cut alike stand together. */
const withoutSurplus = (cuts: readonly CutSupply[], problem: CuttingProblem): CutSupply[] => {
  const surplus = blanksOf(cuts, problem).map((count, blank) => count - (problem.demands[blank]?.count ?? 0))
  const single = cuts.flatMap((cut) => Array.from({ length: cut.times }, () => cut))
  // The emptiest boards lose theirs first, and may be saved altogether.
  const held = ({ fillings }: CutSupply): number =>
    fillings.reduce((sum, filling) => sum + filling.reduce((inner, count) => inner + count, 0), 0)
  const kept = single
    .sort((a, b) => held(a) - held(b))
    .map((cut) => ({ ...cut, times: 1, fillings: cut.fillings.map((filling) => trimmed(filling, surplus)) }))
    .filter((cut) => held(cut) > 0)
  return alikeTogether(kept)
}

const trimmed = (filling: Filling, surplus: number[]): Filling =>
  filling.map((count, blank) => {
    const less = Math.min(count, Math.max(0, surplus[blank] ?? 0))
    surplus[blank] = (surplus[blank] ?? 0) - less
    return count - less
  })

/** Boards that are cut alike as one, in the order of the supplies. */
export const alikeTogether = (cuts: readonly CutSupply[]): CutSupply[] => {
  const found = new Map<string, CutSupply>()
  for (const cut of cuts) {
    const key = `${cut.supply} ${cut.way} ${cut.fillings.map((filling) => filling.join()).join(' ')}`
    const alike = found.get(key)
    found.set(key, alike ? { ...alike, times: alike.times + 1 } : cut)
  }
  return [...found.values()].sort((a, b) => a.supply - b.supply || b.times - a.times)
}
