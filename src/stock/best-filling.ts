import { SAME_POINT } from '../units/tolerance.js'
import { type CuttingProblem, type Filling, fits, type Room } from './cutting-problem.js'
import type { BlankSet, Choice, RoomChoices } from './room-choices.js'

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
const CELLS = 4096
/** Steps after which a search is cut short. */
const LONGEST_SEARCH = 50_000
const LONGEST_LISTING = 500_000
const NOISE = 1e-9

/** The most that blanks of a set are worth, by the length they may take. */
interface Table {
  /** Dearest for their length first. */
  readonly blanks: readonly number[]
  /** In row i the worth at each length when only blanks from the i-th on may be chosen. */
  readonly rows: readonly Float64Array[]
}

/**
 * Values a blank has, turned into what rooms are worth. Tables over rounded-down lengths (they never tell too little)
 * steer an exact search.
 */
export const worthsOf = (
  { demands }: CuttingProblem,
  choices: RoomChoices,
  values: readonly number[],
): Worths => {
  const lengths = Float64Array.from(demands, ({ length }) => length)
  const worths = Float64Array.from(demands, (_, blank) => values[blank] ?? 0)
  const lengthAt = (blank: number): number => lengths[blank] ?? 0
  const valueAt = (blank: number): number => worths[blank] ?? 0
  const dearest = (a: number, b: number): number => valueAt(b) / lengthAt(b) - valueAt(a) / lengthAt(a)
  const cell = choices.longest / CELLS
  const cellOf = (length: number): number => Math.floor((length + SAME_POINT) / cell + NOISE)
  const tables = new Map<BlankSet, Table>()

  const tableFor = (set: BlankSet): Table => {
    const known = tables.get(set)
    if (known) return known
    const blanks = [...set.blanks].sort(dearest)
    const size = cellOf(set.longest) + 1
    let row = new Float64Array(size)
    const rows = [row]
    for (const blank of [...blanks].reverse()) {
      const [width, value] = [Math.floor(lengthAt(blank) / cell), valueAt(blank)]
      row = row.slice()
      for (let at = width; at < size; at++) {
        const longer = (row[at - width] as number) + value
        if (longer > (row[at] as number)) row[at] = longer
      }
      rows.push(row)
    }
    const table = { blanks, rows: rows.reverse() }
    tables.set(set, table)
    return table
  }

  const mostOf = ({ free, set, last }: Choice): number =>
    (tableFor(set).rows[0]?.[cellOf(free)] ?? 0) + (last === undefined ? 0 : valueAt(last))

  /** Goes through the fillings of a choice that may be worth more than `floor()`; stops when `step` says so. */
  const search = (
    { free, set, last }: Choice,
    floor: () => number,
    step: () => boolean,
    found: (worth: number, counts: Int32Array) => void,
  ): void => {
    const { blanks, rows } = tableFor(set)
    const counts = new Int32Array(demands.length)
    const from = (index: number, left: number, worth: number): boolean => {
      if (!step()) return false
      const blank = blanks[index]
      if (blank === undefined) {
        found(worth, counts)
        return true
      }
      const next = rows[index + 1] as Float64Array
      const [length, value, already] = [lengthAt(blank), valueAt(blank), counts[blank] as number]
      const room = Math.floor((left + SAME_POINT) / length)
      for (let count = Math.min((demands[blank]?.count ?? 0) - already, room); count >= 0; count--) {
        const [rest, gained] = [left - count * length, worth + count * value]
        if (gained + (next[Math.max(0, cellOf(rest))] as number) <= floor()) continue
        counts[blank] = already + count
        if (!from(index + 1, rest, gained)) return false
      }
      counts[blank] = already
      return true
    }
    if (last !== undefined) counts[last] = 1
    from(0, free, last === undefined ? 0 : valueAt(last))
  }

  const mosts = new Map<Room, number>()
  const atMost = (room: Room): number => {
    const known = mosts.get(room)
    if (known !== undefined) return known
    let most = 0
    for (const choice of choices.of(room)) most = Math.max(most, mostOf(choice))
    mosts.set(room, most)
    return most
  }

  const best = (room: Room): BestFilling => {
    let [worth, cutShort] = [0, 0]
    let filling: Filling = demands.map(() => 0)
    const ranked = choices.of(room).map((choice) => ({ choice, most: mostOf(choice) }))
    for (const { choice, most } of ranked.sort((a, b) => b.most - a.most)) {
      if (most <= worth + NOISE) break
      let steps = 0
      search(
        choice,
        () => worth + NOISE * Math.abs(worth),
        () => ++steps < LONGEST_SEARCH,
        (found, counts) => {
          worth = found
          filling = [...counts]
        },
      )
      if (steps >= LONGEST_SEARCH) cutShort = Math.max(cutShort, most)
    }
    return { worth: Math.max(worth, cutShort), filling }
  }

  const all = (room: Room, least: number, most: number): Filling[] | undefined => {
    const listed = new Map<string, Filling>()
    let steps = 0
    for (const choice of choices.of(room)) {
      search(
        choice,
        () => least,
        () => ++steps < LONGEST_LISTING && listed.size <= most,
        (_, counts) => {
          const filling = [...counts]
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

  return { atMost, best, all }
}
