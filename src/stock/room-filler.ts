import { SAME_POINT } from '../units/tolerance.js'
import type { CuttingProblem, Filling } from './cutting-problem.js'

/** Lays blanks into the rooms of a board, as many of each kind as fit, in a given order. */
export interface RoomFiller {
  /** How many blanks of each kind a board gives; to be read before the next call. */
  readonly counts: (supply: number, way: number, wanted: Wanted, order: Order) => ArrayLike<number>
  /** The same, room by room. */
  readonly fillings: (supply: number, way: number, wanted: Wanted, order: Order) => Filling[]
}

/** How many of each blank are still wanted. */
type Wanted = readonly number[]
type Order = readonly number[]

/** By blank: what its slant and its spare length are in a room; endless where it may not lie. */
interface Lying {
  readonly length: number
  readonly slants: Float64Array
  readonly spares: Float64Array
}

export const roomFiller = ({ demands, supplies }: CuttingProblem): RoomFiller => {
  const lengths = Float64Array.from(demands, ({ length }) => length)
  const lying = supplies.map(({ rooms }) =>
    rooms.map(({ length, placings }): Lying => {
      const slants = new Float64Array(demands.length).fill(Infinity)
      const spares = new Float64Array(demands.length)
      for (const { blank, slant, spare } of placings) {
        slants[blank] = slant
        spares[blank] = spare
      }
      return { length: length + SAME_POINT, slants, spares }
    }),
  )
  const given = new Int32Array(demands.length)

  const fillRoom = ({ length, slants, spares }: Lying, wanted: Wanted, order: Order): void => {
    let [free, slant, spare] = [length, 0, 0]
    for (const blank of order) {
      const more = (wanted[blank] as number) - (given[blank] as number)
      const own = slants[blank] as number
      if (more <= 0 || own === Infinity) continue
      const lost = Math.max(slant, own) - slant + spare - Math.max(spare, spares[blank] as number)
      const count = Math.min(more, Math.floor((free - lost) / (lengths[blank] as number)))
      if (count < 1) continue
      free -= lost + count * (lengths[blank] as number)
      slant = Math.max(slant, own)
      spare = Math.max(spare, spares[blank] as number)
      given[blank] = (given[blank] as number) + count
    }
  }

  return {
    counts: (supply, way, wanted, order) => {
      given.fill(0)
      for (const room of supplies[supply]?.ways[way] ?? []) {
        const lies = lying[supply]?.[room]
        if (lies) fillRoom(lies, wanted, order)
      }
      return given
    },
    fillings: (supply, way, wanted, order) => {
      given.fill(0)
      return (supplies[supply]?.ways[way] ?? []).map((room) => {
        const before = [...given]
        const lies = lying[supply]?.[room]
        if (lies) fillRoom(lies, wanted, order)
        return before.map((count, blank) => (given[blank] ?? 0) - count)
      })
    },
  }
}
