import { type BestFilling, type Worths, worthsOf } from './best-filling.js'
import type { CutSupply, CuttingProblem, Room } from './cutting-problem.js'
import { worthOfSupply } from './lower-bound.js'
import { type RoomChoices, roomChoices } from './room-choices.js'
import type { Column, LinearAnswer, Row, Solver } from './solver.js'

/** What each kind of blank is worth, and what each supply's limit is, when the boards are as dear as they are. */
export interface Prices {
  /** At this worth of the blanks no board holds more than it costs, its scarcity counted. */
  readonly values: readonly number[]
  /** What one more of each supply would save. */
  readonly scarcity: readonly number[]
  /** No way of cutting costs less. */
  readonly bound: number
}

export interface BoardPrices extends Prices {
  /** Every way of cutting that was found good. */
  readonly cuts: readonly CutSupply[]
  /** How many boards are cut in each of these ways when parts of boards may be bought too. */
  readonly quantities: readonly number[]
}

/**
 * Prices of blanks by column generation (Gilmore and Gomory, Operations Research 9, 1961, 849-859): the linear program
 * over the ways of cutting found so far gives a price to each blank, the best filling at these prices is added, until
 * none is worth more than its board.
 *
 * @param known ways of cutting that give every blank, to begin with
 * @param enough a bound that proves them best
 */
export const priceBoards = (
  problem: CuttingProblem,
  known: readonly CutSupply[],
  solver: Solver,
  enough: (bound: number) => boolean,
  deadline: Deadline,
): BoardPrices => withPricer(problem, known, solver, (price) => price(anyNumber(problem), enough, deadline))

/** How many boards of each supply are taken at least and at most. */
export interface Numbers {
  readonly least: readonly number[]
  readonly most: readonly number[]
}

export const anyNumber = ({ supplies }: CuttingProblem): Numbers => ({
  least: supplies.map(() => 0),
  most: supplies.map(({ limit }) => limit),
})

/** Prices for some numbers of boards; the ways of cutting found for others before are known to it. */
export type Pricer = (numbers: Numbers, enough: (bound: number) => boolean, deadline: Deadline) => BoardPrices

/** @param known ways of cutting that give every blank, to begin with */
export const withPricer = <Value>(
  problem: CuttingProblem,
  known: readonly CutSupply[],
  solver: Solver,
  use: (price: Pricer) => Value,
): Value =>
  solver.growing(rowsOf(problem), (program) => {
    const choices = roomChoices(problem)
    const cuts: CutSupply[] = known.map((cut) => ({ ...cut, times: 1 }))
    const without = goneWithout(problem)
    program.add([...without, ...cuts.map((cut) => columnOf(cut, problem))])
    return use((numbers, enough, { until, now }) => {
      problem.supplies.forEach((_, supply) => {
        program.bound(problem.demands.length + supply, {
          lower: numbers.least[supply] ?? 0,
          upper: numbers.most[supply] ?? 0,
        })
      })
      let best: BoardPrices = { values: [], scarcity: [], bound: 0, cuts: [...cuts], quantities: [] }
      for (;;) {
        const seconds = (until - now()) / 1000
        const answer = seconds > 0 ? program.solve(seconds) : undefined
        if (!answer) return best
        const { prices, better } = priceOnce(problem, choices, numbers, answer)
        const found = { cuts: [...cuts], quantities: answer.quantities.slice(without.length) }
        best =
          prices.bound > best.bound || best.values.length === 0
            ? { ...prices, ...found }
            : { ...best, ...found }
        if (better.length === 0 || enough(best.bound)) return best
        cuts.push(...better)
        program.add(better.map((cut) => columnOf(cut, problem)))
      }
    })
  })

/** When to stop, in milliseconds of a clock. */
export interface Deadline {
  readonly until: number
  readonly now: () => number
}

/** One row for each kind of blank, then one for each supply that ends. */
const rowsOf = ({ demands, supplies }: CuttingProblem): Row[] => [
  ...demands.map(({ count }) => ({ lower: count, upper: Infinity })),
  ...supplies.map(({ limit }) => ({ lower: -Infinity, upper: limit })),
]

const columnOf = ({ supply, fillings }: CutSupply, { demands, supplies }: CuttingProblem): Column => {
  const held = demands.map((_, blank) => fillings.reduce((sum, filling) => sum + (filling[blank] ?? 0), 0))
  return {
    cost: supplies[supply]?.cost ?? 0,
    upper: Infinity,
    parts: [
      ...held.flatMap((count, blank) => (count === 0 ? [] : [[blank, count] as const])),
      [demands.length + supply, 1],
    ],
  }
}

/** Blanks that are not cut at all, dearer than any board: there is an answer then whatever the numbers of boards. */
const goneWithout = ({ demands, supplies }: CuttingProblem): Column[] =>
  demands.map((_, blank) => ({
    cost: DEAR * Math.max(...supplies.map(({ cost }) => cost)),
    upper: Infinity,
    parts: [[blank, 1]],
  }))

const DEAR = 10

/** A gain smaller than this part of a board's cost is rounding noise of the solver. */
const NOISE = 1e-7

const priceOnce = (
  problem: CuttingProblem,
  choices: RoomChoices,
  numbers: Numbers,
  { rowPrices }: LinearAnswer,
): { prices: Prices; better: CutSupply[] } => {
  const { demands, supplies } = problem
  const values = demands.map((_, blank) => Math.max(0, rowPrices[blank] ?? 0))
  const worths = worthsOf(problem, choices, values)
  const dearest = Math.max(...supplies.map(({ cost }) => cost))
  const better: CutSupply[] = []
  const worth = supplies.map((supply, index) => {
    if (numbers.most[index] === 0) return 0
    const atMost = worthOfSupply(supply, worths)
    const price = supply.cost - (rowPrices[demands.length + index] ?? 0)
    if (atMost <= price + NOISE * dearest) return atMost
    const cut = bestCut(problem, index, worths)
    if (cut.worth > price + NOISE * dearest) better.push(cut.cut)
    return cut.worth
  })
  return { prices: feasiblePrices(problem, numbers, values, worth), better }
}

/** The best way of cutting a board, and a worth that none exceeds. */
const bestCut = (
  { supplies }: CuttingProblem,
  index: number,
  worths: Worths,
): { cut: CutSupply; worth: number } => {
  const { rooms = [], ways = [] } = supplies[index] ?? {}
  const atMost = rooms.map(worths.atMost)
  const sumOf = (way: readonly number[], worth: (room: number) => number): number =>
    way.reduce((sum, room) => sum + worth(room), 0)
  const found = rooms.map((): BestFilling | undefined => undefined)
  const bestIn = (room: number): BestFilling => (found[room] ??= worths.best(rooms[room] as Room))
  let [best, worth] = [0, Number.NEGATIVE_INFINITY]
  const promising = ways
    .map((way, number) => ({ way, number, most: sumOf(way, (room) => atMost[room] ?? 0) }))
    .sort((a, b) => b.most - a.most)
  for (const { way, number, most } of promising) {
    if (most <= worth) break
    const sum = sumOf(way, (room) => bestIn(room).worth)
    if (sum > worth) [best, worth] = [number, sum]
  }
  const fillings = (ways[best] ?? []).map((room) => bestIn(room).filling)
  return { cut: { supply: index, way: best, fillings, times: 1 }, worth }
}

/**
 * Prices scaled down until no endless supply is worth more than it costs; what a supply that ends is worth beyond is its
 * scarcity. All blanks at these prices, less what the boards are worth beyond their cost, plus what boards that must be
 * taken lose, is a cost that no cutting with these numbers undercuts.
 */
const feasiblePrices = (
  { demands, supplies }: CuttingProblem,
  { least, most }: Numbers,
  values: readonly number[],
  worth: readonly number[],
): Prices => {
  const scale = Math.min(
    1,
    ...supplies.map(({ cost }, index) =>
      most[index] === Infinity && (worth[index] ?? 0) > 0 ? cost / (worth[index] ?? 1) : 1,
    ),
  )
  const scaled = values.map((value) => value * scale)
  const losses = supplies.map(({ cost }, index) => cost - (worth[index] ?? 0) * scale)
  const scarcity = losses.map((loss, index) => (most[index] === Infinity ? 0 : Math.max(0, -loss)))
  const gain = demands.reduce((sum, { count }, blank) => sum + count * (scaled[blank] ?? 0), 0)
  const paid = scarcity.reduce((sum, each, index) => sum + (each === 0 ? 0 : each * (most[index] ?? 0)), 0)
  const lost = losses.reduce((sum, loss, index) => sum + Math.max(0, loss) * (least[index] ?? 0), 0)
  return { values: scaled, scarcity, bound: gain - paid + lost }
}

/** What a board costs more than its blanks are worth. */
export const lossOf = (
  { supply, fillings }: CutSupply,
  values: readonly number[],
  supplies: CuttingProblem['supplies'],
): number =>
  (supplies[supply]?.cost ?? 0) -
  fillings.reduce(
    (sum, filling) => sum + filling.reduce((inner, count, blank) => inner + count * (values[blank] ?? 0), 0),
    0,
  )
