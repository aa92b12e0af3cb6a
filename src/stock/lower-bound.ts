import { type Worths, worthsOf } from './best-filling.js'
import { type CuttingProblem, costStep, nextCost, type Supply } from './cutting-problem.js'
import { roomChoices } from './room-choices.js'

/**
 * A cost that no way of cutting undercuts, found without a solver. Give each blank a value: a board cannot hold more
 * than its rooms are worth, and the boards together must hold the worth of all blanks. Whole boards are chosen that do
 * so for several values at once: the lengths of all blanks, of the widest kinds alone, and each kind by itself.
 */
export const lowerBound = (problem: CuttingProblem): number => {
  const { demands, supplies } = problem
  const lengths = demands.map(({ length }) => length)
  const few = demands.length <= FEW_KINDS
  // Demands come widest first, so these are the kinds that narrower boards cannot hold.
  const widest = few
    ? demands.map((_, last) => lengths.map((length, each) => (each <= last ? length : 0)))
    : []
  const alone = few ? demands.map((_, blank) => lengths.map((_, each) => (each === blank ? 1 : 0))) : []
  const choices = roomChoices(problem)
  const tried = [lengths, ...widest, ...alone].map((values) => ({
    values,
    worths: worthsOf(problem, choices, values),
  }))
  const needs = tried.map(({ values }) =>
    demands.reduce((sum, { count }, blank) => sum + count * (values[blank] ?? 0), 0),
  )
  const covers = supplies.map(
    (supply): Cover => ({
      cost: supply.cost,
      limit: supply.limit,
      // In parts of the need, so that all of it is 1 in every row.
      parts: tried.map(({ worths }, row) => worthOfSupply(supply, worths) / (needs[row] ?? 1)),
    }),
  )
  return leastCover(covers, needs.length, costStep(problem))
}

/** Of many kinds no single one decides the cost. */
const FEW_KINDS = 6

/** A board: what part of each need it can be worth. */
interface Cover {
  readonly cost: number
  readonly limit: number
  readonly parts: readonly number[]
}

/** The most a board can be worth, over its ways of ripping. */
export const worthOfSupply = ({ rooms, ways }: Supply, { atMost }: Pick<Worths, 'atMost'>): number => {
  const worth = rooms.map(atMost)
  return Math.max(0, ...ways.map((way) => way.reduce((sum, room) => sum + (worth[room] ?? 0), 0)))
}

const LONGEST_SEARCH = 20_000
const NOISE = 1e-9

/** The least cost of whole boards that are worth all needs; of parts of boards, need by need, when that takes too long. */
const leastCover = (covers: readonly Cover[], needs: number, step: number): number => {
  const rows = Array.from({ length: needs }, (_, row) => row)
  const byRate = rows.map((row) =>
    covers
      .map((cover, index) => ({ index, rate: cover.cost / (cover.parts[row] ?? 0) }))
      .filter(({ rate }) => rate < Infinity)
      .sort((a, b) => a.rate - b.rate),
  )
  /** Boards from the given one on, in parts. */
  const inParts = (from: number, left: readonly number[]): number =>
    Math.max(
      0,
      ...rows.map((row) => {
        let [cost, missing] = [0, left[row] ?? 0]
        for (const { index } of byRate[row] ?? []) {
          if (missing <= NOISE) break
          const cover = covers[index]
          if (!cover || index < from) continue
          const part = cover.parts[row] ?? 0
          const count = Math.min(cover.limit, missing / part)
          cost += count * cover.cost
          missing -= count * part
        }
        return missing > NOISE ? Infinity : cost
      }),
    )
  let [best, steps] = [Infinity, 0]
  const from = (index: number, left: readonly number[], cost: number): void => {
    if (++steps > LONGEST_SEARCH) return
    if (left.every((each) => each <= NOISE)) {
      best = Math.min(best, cost)
      return
    }
    const cover = covers[index]
    if (!cover || nextCost(cost + inParts(index, left), step) >= best - NOISE) return
    const wanted = Math.max(0, ...left.map((each, row) => each / (cover.parts[row] || Infinity)))
    const most = Math.min(cover.limit, Math.ceil(wanted - NOISE))
    for (let count = most; count >= 0; count--) {
      const rest = left.map((each, row) => each - count * (cover.parts[row] ?? 0))
      from(index + 1, rest, cost + count * cover.cost)
    }
  }
  const all = rows.map(() => 1)
  const relaxed = nextCost(inParts(0, all), step)
  from(0, all, 0)
  return steps > LONGEST_SEARCH || best === Infinity ? relaxed : best
}
