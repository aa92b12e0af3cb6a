import { SAME_POINT } from '../units/tolerance.js'
import { type CuttingProblem, type Filling, fits, type Placing, type Room } from './cutting-problem.js'

/** The most a room can be worth when each blank has a value. */
export interface BestFilling {
  /** Never less than the best filling's worth; equal to it unless the search was cut short. */
  readonly worth: number
  readonly filling: Filling
}

export interface Worths {
  /** Never less than what the room's best filling is worth, at once. */
  readonly atMost: (room: Room) => number
  readonly best: (room: Room) => BestFilling
  /**
   * Every filling worth at least `least` to which no blank can be added.
   *
   * @returns undefined when there are more than `most`, or they take too long to find
   */
  readonly all: (room: Room, least: number, most: number) => Filling[] | undefined
}

/** Cells of the tables below; they only steer the search, so their width is no error. */
const CELLS = 8192
/** Steps after which a search is cut short. */
const LONGEST_SEARCH = 50_000
const LONGEST_LISTING = 500_000
const NOISE = 1e-9

/** Blanks that may be chosen together, and the length left for them. */
interface Choice {
  readonly room: number
  readonly blanks: readonly number[]
  /** This one is in the room, for its spare length is counted. */
  readonly last?: number
}

/**
 * Values a blank has, turned into what rooms are worth. Rooms fall into choices, one for each slant that may be the
 * steepest and each blank that may be the last, and each choice is a knapsack. Tables over rounded-down lengths (they
 * never tell too little) steer an exact search.
 */
export const worthsOf = ({ demands, supplies }: CuttingProblem, values: readonly number[]): Worths => {
  const longest = Math.max(
    ...supplies.flatMap(({ rooms }) => rooms.map(({ length }) => length)),
    ...demands.map(({ length }) => length),
  )
  const cell = (2 * longest) / CELLS
  const tables = new Map<string, Float64Array[]>()
  const lengthAt = (blank: number): number => demands[blank]?.length ?? 0
  const valueAt = (blank: number): number => values[blank] ?? 0
  const dearest = (a: number, b: number): number => valueAt(b) / lengthAt(b) - valueAt(a) / lengthAt(a)

  /** In row i the worth of each length when only blanks from the i-th on may be chosen. */
  const tableFor = (blanks: readonly number[]): Float64Array[] => {
    const key = blanks.join()
    const known = tables.get(key)
    if (known) return known
    const rows = [new Float64Array(CELLS + 1)]
    for (const blank of [...blanks].reverse()) {
      const row = Float64Array.from(rows[0] ?? [])
      const width = Math.floor(lengthAt(blank) / cell + NOISE)
      const value = valueAt(blank)
      for (let at = width; at <= CELLS; at++) {
        const longer = (row[at - width] ?? 0) + value
        if (longer > (row[at] ?? 0)) row[at] = longer
      }
      rows.unshift(row)
    }
    tables.set(key, rows)
    return rows
  }
  const atMostFrom = (table: readonly Float64Array[], first: number, length: number): number =>
    length < -SAME_POINT ? Number.NEGATIVE_INFINITY : (table[first]?.[cellOf(length)] ?? 0)
  const cellOf = (length: number): number => Math.min(CELLS, Math.max(0, Math.floor(length / cell + NOISE)))

  const choicesOf = ({ length, placings }: Room): Choice[] => {
    const slants = [...new Set(placings.map(({ slant }) => slant))]
    return slants.flatMap((slant) => {
      const within = placings.filter((placing) => placing.slant <= slant)
      const blanks = within.map(({ blank }) => blank).sort(dearest)
      const room = length - slant
      const last = within
        .filter(({ spare }) => spare > 0)
        .map(({ blank, spare }: Placing): Choice => ({ room: room + spare, blanks, last: blank }))
      return [{ room, blanks }, ...last].filter((choice) => choice.room > 0)
    })
  }
  const mostOf = ({ room, blanks, last }: Choice): number =>
    last === undefined
      ? atMostFrom(tableFor(blanks), 0, room)
      : valueAt(last) + atMostFrom(tableFor(blanks), 0, room - lengthAt(last))

  /** Goes through the fillings of a choice that may be worth more than `floor()`; stops when `step` says so. */
  const search = (
    { room, blanks, last }: Choice,
    floor: () => number,
    step: () => boolean,
    found: (worth: number, counts: Map<number, number>) => void,
  ): void => {
    const table = tableFor(blanks)
    const counts = new Map<number, number>()
    const from = (index: number, left: number, worth: number): boolean => {
      if (!step()) return false
      const blank = blanks[index]
      if (blank === undefined) {
        found(worth, counts)
        return true
      }
      const already = counts.get(blank) ?? 0
      const room = Math.floor((left + SAME_POINT) / lengthAt(blank))
      const most = Math.min((demands[blank]?.count ?? 0) - already, room)
      for (let count = most; count >= 0; count--) {
        const [next, gained] = [left - count * lengthAt(blank), worth + count * valueAt(blank)]
        if (gained + atMostFrom(table, index + 1, next) <= floor()) continue
        counts.set(blank, already + count)
        if (!from(index + 1, next, gained)) return false
      }
      counts.set(blank, already)
      return true
    }
    if (last !== undefined) counts.set(last, 1)
    const begun = last === undefined ? room : room - lengthAt(last)
    if (begun >= -SAME_POINT) from(0, begun, last === undefined ? 0 : valueAt(last))
  }

  const fillingOf = (counts: ReadonlyMap<number, number>): Filling =>
    demands.map((_, blank) => counts.get(blank) ?? 0)

  const best = (room: Room): BestFilling => {
    let [worth, filling, cutShort] = [0, fillingOf(new Map()), 0]
    const choices = choicesOf(room).map((choice) => ({ choice, most: mostOf(choice) }))
    for (const { choice, most } of choices.sort((a, b) => b.most - a.most)) {
      if (most <= worth + NOISE) break
      let steps = 0
      search(
        choice,
        () => worth + NOISE * Math.abs(worth),
        () => ++steps < LONGEST_SEARCH,
        (found, counts) => {
          worth = found
          filling = fillingOf(counts)
        },
      )
      if (steps >= LONGEST_SEARCH) cutShort = Math.max(cutShort, most)
    }
    return { worth: Math.max(worth, cutShort), filling }
  }

  const all = (room: Room, least: number, most: number): Filling[] | undefined => {
    const listed = new Map<string, Filling>()
    let steps = 0
    for (const choice of choicesOf(room)) {
      search(
        choice,
        () => least,
        () => ++steps < LONGEST_LISTING && listed.size <= most,
        (_, counts) => {
          const filling = fillingOf(counts)
          if (isFull(filling, room)) listed.set(filling.join(), filling)
        },
      )
    }
    return steps < LONGEST_LISTING && listed.size <= most ? [...listed.values()] : undefined
  }
  const isFull = (filling: Filling, room: Room): boolean =>
    room.placings.every(
      ({ blank }) =>
        (filling[blank] ?? 0) >= (demands[blank]?.count ?? 0) ||
        !fits(
          filling.map((count, each) => (each === blank ? count + 1 : count)),
          room,
          demands,
        ),
    )

  return { atMost: (room) => Math.max(0, ...choicesOf(room).map(mostOf)), best, all }
}
