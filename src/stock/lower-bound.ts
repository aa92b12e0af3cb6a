import { worthsOf } from './best-filling.js'
import { type CuttingProblem, costStep, nextCost, type Supply } from './cutting-problem.js'

/**
 * A cost that no way of cutting undercuts, found without a solver. Give each blank a value; a board cannot hold more
 * than its rooms are worth, and the boards together must hold the worth of all blanks. The blanks' lengths are tried as
 * values, and where there are few kinds each kind by itself.
 */
export const lowerBound = (problem: CuttingProblem): number => {
  const { demands } = problem
  const lengths = demands.map(({ length }) => length)
  const alone = demands.map((_, blank) => demands.map((_, each) => (each === blank ? 1 : 0)))
  const tried = [lengths, ...(demands.length <= FEW_KINDS ? alone : [])]
  return Math.max(0, ...tried.map((values) => coverBound(problem, values)))
}

/** Of many kinds no single one decides the cost. */
const FEW_KINDS = 6

const coverBound = (problem: CuttingProblem, values: readonly number[]): number => {
  const worths = worthsOf(problem, values)
  const need = problem.demands.reduce((sum, { count }, blank) => sum + count * (values[blank] ?? 0), 0)
  const covers = problem.supplies
    .map(
      (supply): Cover => ({ cost: supply.cost, limit: supply.limit, worth: worthOfSupply(supply, worths) }),
    )
    .filter(({ worth }) => worth > 0)
    .sort((a, b) => a.cost / a.worth - b.cost / b.worth)
  return leastCover(covers, need, costStep(problem))
}

interface Cover {
  readonly cost: number
  readonly limit: number
  readonly worth: number
}

/** The most a board can be worth, over its ways of ripping. */
export const worthOfSupply = (
  { rooms, ways }: Supply,
  { atMost }: Pick<ReturnType<typeof worthsOf>, 'atMost'>,
): number => {
  const worth = rooms.map(atMost)
  return Math.max(0, ...ways.map((way) => way.reduce((sum, room) => sum + (worth[room] ?? 0), 0)))
}

const LONGEST_SEARCH = 20_000
const NOISE = 1e-9

/** The least cost of whole boards that are worth as much as needed; of parts of boards when that takes too long. */
const leastCover = (covers: readonly Cover[], need: number, step: number): number => {
  const inParts = (from: number, left: number): number => {
    let [cost, missing] = [0, left]
    for (let index = from; index < covers.length && missing > NOISE * need; index++) {
      const { cost: each, limit, worth } = covers[index] as Cover
      const count = Math.min(limit, missing / worth)
      cost += count * each
      missing -= count * worth
    }
    return missing > NOISE * need ? Infinity : cost
  }
  let [best, steps] = [Infinity, 0]
  const from = (index: number, left: number, cost: number): void => {
    if (++steps > LONGEST_SEARCH) return
    if (left <= NOISE * need) {
      best = Math.min(best, cost)
      return
    }
    const cover = covers[index]
    if (!cover || nextCost(cost + inParts(index, left), step) >= best - NOISE) return
    const most = Math.min(cover.limit, Math.ceil(left / cover.worth - NOISE))
    for (let count = most; count >= 0; count--) {
      from(index + 1, left - count * cover.worth, cost + count * cover.cost)
    }
  }
  const relaxed = nextCost(inParts(0, need), step)
  from(0, need, 0)
  return steps > LONGEST_SEARCH || best === Infinity ? relaxed : best
}
