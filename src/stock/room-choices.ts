import { SAME_POINT } from '../units/tolerance.js'
import type { CuttingProblem, Demand, Room } from './cutting-problem.js'

/** Blanks that may be chosen together, and the length left for them. */
export interface Choice {
  /** What they may take: the room's length without the slant, and without the last blank where one is set. */
  readonly free: number
  readonly set: BlankSet
  /** This one is in the room too, for its spare length is counted. */
  readonly last?: number
}

/** Blanks that may be chosen together in some rooms. */
export interface BlankSet {
  readonly blanks: readonly number[]
  /** The most that is free for them in any room. */
  readonly longest: number
}

/**
 * Rooms as choices, one for each slant that may be the steepest and each blank that may be the last: each choice is then
 * a knapsack, and the best of a room's choices is its best filling. They depend on no prices.
 */
export interface RoomChoices {
  readonly of: (room: Room) => readonly Choice[]
  /** The most that is free in any choice. */
  readonly longest: number
}

export const roomChoices = ({ demands, supplies }: CuttingProblem): RoomChoices => {
  const sets = new Map<string, { blanks: readonly number[]; longest: number }>()
  const setOf = (blanks: readonly number[], free: number): BlankSet => {
    const key = blanks.join()
    const set = sets.get(key) ?? { blanks, longest: 0 }
    set.longest = Math.max(set.longest, free)
    sets.set(key, set)
    return set
  }
  const choices = new Map<Room, readonly Choice[]>()
  for (const { rooms } of supplies)
    for (const room of rooms) choices.set(room, choicesOf(room, demands, setOf))
  return {
    of: (room) => choices.get(room) ?? [],
    longest: [...sets.values()].reduce((most, { longest }) => Math.max(most, longest), 1),
  }
}

const choicesOf = (
  { length, placings }: Room,
  demands: readonly Demand[],
  setOf: (blanks: readonly number[], free: number) => BlankSet,
): Choice[] => {
  const lengthOf = (blank: number): number => demands[blank]?.length ?? 0
  const wanted = placings.filter(({ blank }) => (demands[blank]?.count ?? 0) > 0)
  const slants = [...new Set(wanted.map(({ slant }) => slant))]
  return slants.flatMap((slant) => {
    const within = wanted.filter((placing) => placing.slant <= slant)
    const blanks = within.map(({ blank }) => blank)
    const begun = [
      { free: length - slant },
      ...within
        .filter(({ spare }) => spare > 0)
        .map(({ blank, spare }) => ({ free: length - slant + spare - lengthOf(blank), last: blank })),
    ]
    return begun
      .filter(({ free }) => free >= -SAME_POINT)
      .map((choice): Choice => ({ ...choice, set: setOf(blanks, choice.free) }))
  })
}
