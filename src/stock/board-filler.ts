import { SAME_POINT } from '../units/tolerance.js'
import type { CutSupply, CuttingProblem, Filling, Placing } from './cutting-problem.js'

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

/** A board that was looked at. */
interface Candidate {
  readonly supply: number
  readonly way: number
  /** Cut as a known way of cutting, not filled anew. */
  readonly known?: CutSupply
  readonly worth: number
  readonly cost: number
  /** Cost over worth, as the taste has it. */
  readonly rate: number
  /** Does it hold everything that is left? */
  readonly all: boolean
}

/** Fills board after board, each the one that costs least for what it holds; the last the cheapest that holds the rest. */
export type BoardFiller = (left: Left, taste: Taste) => CutSupply[]

/** @param known ways of cutting that are good, to be chosen from too */
export const boardFiller = (
  { demands, supplies }: CuttingProblem,
  known: readonly CutSupply[] = [],
): BoardFiller => {
  const heldBy = (fillings: readonly Filling[]): number[] =>
    demands.map((_, blank) => fillings.reduce((sum, filling) => sum + (filling[blank] ?? 0), 0))
  const held = known.map(({ fillings }) => heldBy(fillings))
  const lengths = demands.map(({ length }) => length)
  const placings = supplies.map(({ rooms }) =>
    rooms.map((room) => {
      const byBlank: (Placing | undefined)[] = demands.map(() => undefined)
      for (const placing of room.placings) byBlank[placing.blank] = placing
      return byBlank
    }),
  )
  const scratch = new Int32Array(demands.length)

  /** Lays blanks into a room while there are any in `scratch`, and takes them out of it; tells each kind and count. */
  const fillRoom = (
    supply: number,
    room: number,
    order: readonly number[],
    lay: (blank: number, count: number) => void,
  ): void => {
    const byBlank = placings[supply]?.[room] ?? []
    let free = (supplies[supply]?.rooms[room]?.length ?? 0) + SAME_POINT
    let [slant, spare] = [0, 0]
    for (const blank of order) {
      const wanted = scratch[blank] ?? 0
      const placing = byBlank[blank]
      if (wanted === 0 || placing === undefined) continue
      const length = lengths[blank] ?? 0
      const lost = Math.max(slant, placing.slant) - Math.max(spare, placing.spare) - slant + spare
      const first = slant === 0 && spare === 0 ? placing.slant - placing.spare : lost
      const count = Math.min(wanted, Math.floor((free - first) / length))
      if (count < 1) continue
      free -= first + count * length
      slant = Math.max(slant, placing.slant)
      spare = Math.max(spare, placing.spare)
      scratch[blank] = wanted - count
      lay(blank, count)
    }
  }

  const look = (supply: number, way: number, counts: readonly number[], taste: Taste): Candidate => {
    scratch.set(counts)
    let worth = 0
    for (const room of supplies[supply]?.ways[way] ?? []) {
      fillRoom(supply, room, taste.order, (blank, count) => {
        worth += count * (taste.worth[blank] ?? 0)
      })
    }
    const cost = supplies[supply]?.cost ?? 0
    const rate = (cost * taste.dearness(supply)) / worth
    return { supply, way, worth, cost, rate, all: scratch.every((count) => count === 0) }
  }

  const lookAtKnown = (index: number, counts: readonly number[], taste: Taste): Candidate | undefined => {
    const cut = known[index]
    if (!cut) return undefined
    let [worth, all] = [0, true]
    held[index]?.forEach((count, blank) => {
      const wanted = counts[blank] ?? 0
      worth += Math.min(count, wanted) * (taste.worth[blank] ?? 0)
      if (count < wanted) all = false
    })
    const cost = supplies[cut.supply]?.cost ?? 0
    const rate = (cost * taste.dearness(cut.supply)) / worth
    return { supply: cut.supply, way: cut.way, known: cut, worth, cost, rate, all }
  }

  const fillingsOf = ({ supply, way }: Candidate, counts: readonly number[], taste: Taste): Filling[] => {
    scratch.set(counts)
    return (supplies[supply]?.ways[way] ?? []).map((room) => {
      const filling = demands.map(() => 0)
      fillRoom(supply, room, taste.order, (blank, count) => {
        filling[blank] = count
      })
      return filling
    })
  }

  return (left, taste) => {
    const counts = [...left.counts]
    const limits = [...left.limits]
    const cuts: CutSupply[] = []
    while (counts.some((count) => count > 0)) {
      let best: Candidate | undefined
      let last: Candidate | undefined
      const consider = (seen: Candidate | undefined): void => {
        if (!seen || seen.worth <= 0) return
        if (!best || seen.rate < best.rate || (seen.rate === best.rate && seen.worth > best.worth))
          best = seen
        if (seen.all && (!last || seen.cost < last.cost)) last = seen
      }
      supplies.forEach(({ ways }, supply) => {
        if ((limits[supply] ?? 0) < 1) return
        ways.forEach((_, way) => {
          consider(look(supply, way, counts, taste))
        })
      })
      known.forEach(({ supply }, index) => {
        if ((limits[supply] ?? 0) >= 1) consider(lookAtKnown(index, counts, taste))
      })
      const chosen = last && best && (best.all || last.cost <= best.cost) ? last : best
      if (!chosen) throw new Error('every blank has a board that holds it')
      const fillings = chosen.known?.fillings ?? fillingsOf(chosen, counts, taste)
      const given = heldBy(fillings)
      const repeats = given.map((count, blank) => (count === 0 ? Infinity : (counts[blank] ?? 0) / count))
      const times = Math.max(1, Math.min(Math.floor(Math.min(...repeats)), limits[chosen.supply] ?? 0))
      given.forEach((count, blank) => {
        counts[blank] = Math.max(0, (counts[blank] ?? 0) - times * count)
      })
      limits[chosen.supply] = (limits[chosen.supply] ?? 0) - times
      cuts.push({ supply: chosen.supply, way: chosen.way, fillings, times })
    }
    return cuts
  }
}
