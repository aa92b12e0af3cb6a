import { randomFrom } from '../nest/random.js'
import { SAME_POINT } from '../units/tolerance.js'
import { worthsOf } from './best-filling.js'
import { boardFiller, type LeastRates, type Left, type Taste } from './board-filler.js'
import { blanksOf, type CutSupply, type CuttingProblem, costOf, single } from './cutting-problem.js'
import { byFalling } from './first-fit.js'
import { type BoardPrices, type Deadline, lossOf } from './price-boards.js'
import { roomChoices } from './room-choices.js'

/** Boards given up at a time. */
const [FEWEST, MOST] = [3, 9]
/** How much dearer than the best a cutting may be to go on from, in parts of the cost. */
const STRAY = 0.005
/** How far the blanks' worth and the boards' cost are varied. */
const VARIED = 0.02
/** A blank that costs nothing more must be laid all the same: its worth over its length. */
const LEAST_WORTH = 1e-6

/**
 * Gives up some boards of a cutting, fills boards with their blanks anew in an order left to chance, and keeps what is
 * cheaper, as long as there is time. (Ruin and recreate: Schrimpf and others, Journal of Computational Physics 159, 2000,
 * 139-171.) Chance is the same in every run.
 *
 * @param enough is the cutting good enough?
 * @param patience rounds without a gain after which it stops
 */
export const improved = (
  problem: CuttingProblem,
  prices: BoardPrices,
  known: readonly CutSupply[],
  enough: (cuts: readonly CutSupply[]) => boolean,
  deadline: Deadline,
  patience: number,
): readonly CutSupply[] => {
  const random = randomFrom(1)
  const fill = boardFiller(problem, prices.cuts, leastRates(problem, prices.values))
  let best = single(known)
  let at = best
  let idle = 0
  while (idle < patience && deadline.now() < deadline.until && !enough(best)) {
    idle += 1
    const count = FEWEST + Math.floor(random() * (MOST - FEWEST + 1))
    const { given, kept } = parted(at, prices, problem, random, count)
    const anew = single(fill(leftBy(kept, problem), chanceTaste(problem, prices.values, random)))
    const cost = costOf(at, problem) + costOf(anew, problem) - costOf(given, problem)
    const bestCost = costOf(best, problem)
    if (cost > bestCost * (1 + STRAY)) continue
    at = [...kept, ...anew]
    if (cost < bestCost - SAME_POINT) {
      best = at
      idle = 0
    }
  }
  return best
}

const leftBy = (kept: readonly CutSupply[], problem: CuttingProblem): Left => {
  const held = blanksOf(kept, problem)
  const limits = problem.supplies.map(({ limit }) => limit)
  for (const { supply } of kept) limits[supply] = (limits[supply] ?? 0) - 1
  return {
    counts: problem.demands.map(({ count }, blank) => Math.max(0, count - (held[blank] ?? 0))),
    limits,
  }
}

/** The order that is left when some boards are cut, and the boards that are left for it. */
export const problemLeft = (kept: readonly CutSupply[], problem: CuttingProblem): CuttingProblem => {
  const { counts, limits } = leftBy(kept, problem)
  return {
    demands: problem.demands.map(({ length }, blank) => ({ length, count: counts[blank] ?? 0 })),
    supplies: problem.supplies.map((supply, index) => ({ ...supply, limit: limits[index] ?? 0 })),
  }
}

/** Boards that lose much at the prices are given up more often. */
const parted = (
  cuts: readonly CutSupply[],
  { values }: BoardPrices,
  { supplies }: CuttingProblem,
  random: () => number,
  count: number,
): { given: CutSupply[]; kept: CutSupply[] } => {
  const losses = cuts.map((cut) => Math.max(0, lossOf(cut, values, supplies)))
  const mean = losses.reduce((sum, loss) => sum + loss, 0) / cuts.length
  const drawn = byFalling(losses.map((loss) => random() * (loss + mean + SAME_POINT))).slice(0, count)
  const chosen = new Set(drawn)
  return {
    given: cuts.filter((_, index) => chosen.has(index)),
    kept: cuts.filter((_, index) => !chosen.has(index)),
  }
}

/** What a blank is worth before it is varied. */
const baseWorths = ({ demands }: CuttingProblem, values: readonly number[]): number[] =>
  demands.map(({ length }, blank) => (values[blank] ?? 0) + LEAST_WORTH * length)

const leastRates = (problem: CuttingProblem, values: readonly number[]): LeastRates => {
  const { supplies } = problem
  const worths = baseWorths(problem, values)
  const { atMost } = worthsOf(problem, roomChoices(problem), worths)
  const most = supplies.map(({ rooms }) => rooms.map(atMost))
  const rate = (supply: number, worth: number): number =>
    worth > 0 ? ((supplies[supply]?.cost ?? 0) * (1 - VARIED)) / (worth * (1 + VARIED)) : Infinity
  return {
    ofWay: (supply, way) =>
      rate(
        supply,
        (supplies[supply]?.ways[way] ?? []).reduce((sum, room) => sum + (most[supply]?.[room] ?? 0), 0),
      ),
    ofCut: ({ supply, fillings }) =>
      rate(
        supply,
        fillings.reduce(
          (sum, filling) =>
            sum + filling.reduce((inner, count, blank) => inner + count * (worths[blank] ?? 0), 0),
          0,
        ),
      ),
  }
}

/** Worth, cost and order left to chance within bounds. */
const chanceTaste = (problem: CuttingProblem, values: readonly number[], random: () => number): Taste => {
  const { demands, supplies } = problem
  const varied = (value: number): number => value * (1 + VARIED * (2 * random() - 1))
  const dearness = supplies.map(() => varied(1))
  return {
    order: byFalling(demands.map(({ length }) => length * (0.5 + random()))),
    worth: baseWorths(problem, values).map(varied),
    dearness: (supply) => dearness[supply] ?? 1,
  }
}
