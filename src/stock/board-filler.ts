import { SAME_POINT } from '../units/tolerance.js'
import type { CutSupply, CuttingProblem, Filling } from './cutting-problem.js'
import { type RoomFiller, roomFiller } from './room-filler.js'

/** How boards are filled and chosen. */
export interface Taste {
  /** The blanks in the order in which they are laid. */
  readonly order: readonly number[]
  /** What each blank counts for. */
  readonly worth: readonly number[]
  /** What a supply's cost is multiplied by before boards are compared. */
  readonly dearness: (supply: number) => number
}

/** What is still to be cut, and the boards there still are, in the order of the demands and supplies. */
export interface Left {
  readonly counts: readonly number[]
  readonly limits: readonly number[]
}

/** Rates, cost over worth, that no taste goes below; boards that cannot be best are then not looked at. */
export interface LeastRates {
  readonly ofWay: (supply: number, way: number) => number
  readonly ofCut: (cut: CutSupply) => number
}

/** A board to fill anew, or to cut in a known way. */
interface Offer {
  readonly supply: number
  readonly way: number
  readonly known?: { readonly cut: CutSupply; readonly held: readonly number[] }
  readonly leastRate: number
}

/** An offer that was looked at. */
interface Candidate {
  readonly offer: Offer
  readonly worth: number
  readonly cost: number
  /** Cost over worth, as the taste has it. */
  readonly rate: number
  /** Does it hold everything that is left? */
  readonly all: boolean
}

/** Fills board after board, each the one that costs least for what it holds; the last the cheapest that holds the rest. */
export type BoardFiller = (left: Left, taste: Taste) => CutSupply[]

const NO_LIMITS: LeastRates = { ofWay: () => 0, ofCut: () => 0 }

/** @param known ways of cutting that are good, to be chosen from too */
export const boardFiller = (
  problem: CuttingProblem,
  known: readonly CutSupply[] = [],
  leastRates: LeastRates = NO_LIMITS,
): BoardFiller => {
  const { demands, supplies } = problem
  const filler = roomFiller(problem)
  const heldBy = (fillings: readonly Filling[]): number[] =>
    demands.map((_, blank) => fillings.reduce((sum, filling) => sum + (filling[blank] ?? 0), 0))
  const offers = offersOf(problem, known, leastRates, heldBy)
  const longest = Math.max(...supplies.flatMap(({ rooms, ways }) => ways.map((way) => roomOf(way, rooms))))

  return (left, taste) => {
    const counts = [...left.counts]
    const limits = [...left.limits]
    const cuts: CutSupply[] = []
    while (counts.some((count) => count > 0)) {
      const wanted = taste.order.filter((blank) => (counts[blank] ?? 0) > 0)
      const rest = wanted.reduce(
        (sum, blank) => sum + (counts[blank] ?? 0) * (demands[blank]?.length ?? 0),
        0,
      )
      let best: Candidate | undefined
      let last: Candidate | undefined
      for (const offer of offers) {
        if (best && rest > longest && offer.leastRate > best.rate) break
        if ((limits[offer.supply] ?? 0) < 1) continue
        const seen = lookAt(offer, counts, wanted, taste, problem, filler)
        if (seen.worth <= 0) continue
        if (!best || seen.rate < best.rate || (seen.rate === best.rate && seen.worth > best.worth))
          best = seen
        if (seen.all && (!last || seen.cost < last.cost)) last = seen
      }
      const chosen = last && best && (best.all || last.cost <= best.cost) ? last : best
      if (!chosen) throw new Error('every blank has a board that holds it')
      const { supply, way, known: as } = chosen.offer
      const fillings = as ? as.cut.fillings : filler.fillings(supply, way, counts, wanted)
      const given = heldBy(fillings)
      const repeats = given.map((count, blank) => (count === 0 ? Infinity : (counts[blank] ?? 0) / count))
      const times = Math.max(1, Math.min(Math.floor(Math.min(...repeats)), limits[supply] ?? 0))
      given.forEach((count, blank) => {
        counts[blank] = Math.max(0, (counts[blank] ?? 0) - times * count)
      })
      limits[supply] = (limits[supply] ?? 0) - times
      cuts.push({ supply, way, fillings, times })
    }
    return cuts
  }
}

/** More than blanks can take of a way's rooms. */
const roomOf = (way: readonly number[], rooms: CuttingProblem['supplies'][number]['rooms']): number =>
  way.reduce((sum, number) => {
    const { length = 0, placings = [] } = rooms[number] ?? {}
    return sum + length + placings.reduce((most, { spare }) => Math.max(most, spare), 0) + SAME_POINT
  }, 0)

/** Ways to fill and ways that are known, the least rates first. */
const offersOf = (
  { supplies }: CuttingProblem,
  known: readonly CutSupply[],
  leastRates: LeastRates,
  heldBy: (fillings: readonly Filling[]) => number[],
): Offer[] => {
  const ways = supplies.flatMap((each, supply) =>
    each.ways.map((_, way): Offer => ({ supply, way, leastRate: leastRates.ofWay(supply, way) })),
  )
  const cuts = known.map((cut): Offer => {
    const { supply, way, fillings } = cut
    return { supply, way, known: { cut, held: heldBy(fillings) }, leastRate: leastRates.ofCut(cut) }
  })
  return [...ways, ...cuts].sort((a, b) => a.leastRate - b.leastRate)
}

const lookAt = (
  offer: Offer,
  counts: readonly number[],
  wanted: readonly number[],
  { worth: worthOf, dearness }: Taste,
  { supplies }: CuttingProblem,
  filler: RoomFiller,
): Candidate => {
  const { supply, way, known } = offer
  const given = known ? known.held : filler.counts(supply, way, counts, wanted)
  let [worth, all] = [0, true]
  for (const blank of wanted) {
    const [count, most] = [given[blank] ?? 0, counts[blank] ?? 0]
    worth += Math.min(count, most) * (worthOf[blank] ?? 0)
    if (count < most) all = false
  }
  const cost = supplies[supply]?.cost ?? 0
  return { offer, worth, cost, rate: (cost * dearness(supply)) / worth, all }
}
