import { SAME_POINT } from '../units/tolerance.js'
import {
  type CutSupply,
  type CuttingProblem,
  costOf,
  type Filling,
  fits,
  type Room,
  type Supply,
} from './cutting-problem.js'

/**
 * A good way to cut everything, found at once: board after board is filled, longest blanks first, as first-fit
 * decreasing fills it, and the board is taken that costs least for the length it holds. Once more for each supply with
 * that one taken first, and the cheapest of all is kept.
 */
export const firstFit = (problem: CuttingProblem): CutSupply[] => {
  const favourites = [undefined, ...problem.supplies.map((_, index) => index)].slice(0, MOST_TRIED)
  const tried = favourites.map((favourite) => fillBoards(problem, favourite))
  return tried.reduce((best, cuts) =>
    costOf(cuts, problem) < costOf(best, problem) - SAME_POINT ? cuts : best,
  )
}

/** Trying more supplies first seldom helps. */
const MOST_TRIED = 12

interface Filled {
  readonly supply: number
  readonly way: number
  readonly fillings: readonly Filling[]
  /** Sum of the blanks' lengths. */
  readonly length: number
  readonly cost: number
  /** Does it hold everything that is left? */
  readonly all: boolean
}

const fillBoards = (problem: CuttingProblem, favourite: number | undefined): CutSupply[] => {
  const { demands, supplies } = problem
  const order = demands
    .map((_, blank) => blank)
    .sort((a, b) => (demands[b]?.length ?? 0) - (demands[a]?.length ?? 0))
  const left = demands.map(({ count }) => count)
  const free = supplies.map(({ limit }) => limit)
  const cuts: CutSupply[] = []
  while (left.some((count) => count > 0)) {
    const candidates = supplies.flatMap((supply, index) =>
      (free[index] ?? 0) > 0
        ? supply.ways.map((_, way) => fillWay(supply, index, way, left, order, problem))
        : [],
    )
    const best = cheapest(candidates, favourite)
    if (!best) throw new Error('every blank has a board that holds it')
    const { supply, way, fillings } = best
    const held = demands.map((_, blank) => fillings.reduce((sum, filling) => sum + (filling[blank] ?? 0), 0))
    const repeats = held.map((count, blank) => (count === 0 ? Infinity : (left[blank] ?? 0) / count))
    const times = Math.max(1, Math.min(Math.floor(Math.min(...repeats)), free[supply] ?? 0))
    held.forEach((count, blank) => {
      left[blank] = Math.max(0, (left[blank] ?? 0) - times * count)
    })
    free[supply] = (free[supply] ?? 0) - times
    cuts.push({ supply, way, fillings, times })
  }
  return cuts
}

const cheapest = (candidates: readonly Filled[], favourite: number | undefined): Filled | undefined => {
  const useful = candidates.filter(({ length }) => length > 0)
  const last = useful.filter(({ all }) => all).sort((a, b) => a.cost - b.cost)[0]
  const [best] = useful.sort(
    (a, b) =>
      Number(b.supply === favourite) - Number(a.supply === favourite) ||
      a.cost / a.length - b.cost / b.length ||
      b.length - a.length,
  )
  return last && best && (best.all || last.cost <= best.cost) ? last : best
}

const fillWay = (
  supply: Supply,
  index: number,
  way: number,
  left: readonly number[],
  order: readonly number[],
  problem: CuttingProblem,
): Filled => {
  const remaining = [...left]
  let length = 0
  const fillings = (supply.ways[way] ?? []).map((number) => {
    const room = supply.rooms[number]
    const filling = room ? fillRoom(room, remaining, order, problem) : []
    filling.forEach((count, blank) => {
      remaining[blank] = (remaining[blank] ?? 0) - count
      length += count * (problem.demands[blank]?.length ?? 0)
    })
    return filling
  })
  return {
    supply: index,
    way,
    fillings,
    length,
    cost: supply.cost,
    all: remaining.every((count) => count === 0),
  }
}

const fillRoom = (
  room: Room,
  left: readonly number[],
  order: readonly number[],
  { demands }: CuttingProblem,
): Filling => {
  const filling = demands.map(() => 0)
  const held = new Set(room.placings.map(({ blank }) => blank))
  for (const blank of order) {
    if (!held.has(blank)) continue
    let count = Math.min(left[blank] ?? 0, Math.ceil((2 * room.length) / (demands[blank]?.length ?? 1)))
    for (; count > 0; count--) {
      filling[blank] = count
      if (fits(filling, room, demands)) break
    }
    filling[blank] = count
  }
  return filling
}
