import { SAME_POINT } from '../units/tolerance.js'
import { worthsOf } from './best-filling.js'
import type { CutSupply, CuttingProblem, Filling, Supply } from './cutting-problem.js'
import type { Prices } from './price-boards.js'
import { roomChoices } from './room-choices.js'
import type { Column, Row, Solver } from './solver.js'

/** Which ways of ripping and which fillings of rooms whole boards are chosen from. */
export interface Offered {
  /** By supply: the ways allowed. */
  readonly ways: readonly (readonly number[])[]
  /** By supply and room. */
  readonly fillings: readonly (readonly (readonly Filling[])[])[]
}

export interface WholeBoards {
  readonly cuts: readonly CutSupply[]
  /** Nothing made of what was offered costs less. */
  readonly bound: number
}

/** The fillings of some ways of cutting. */
export const offeredBy = (cuts: readonly CutSupply[], { supplies }: CuttingProblem): Offered => {
  const found = supplies.map(({ rooms }) => rooms.map(() => new Map<string, Filling>()))
  const ways = supplies.map(() => new Set<number>())
  for (const { supply, way, fillings } of cuts) {
    ways[supply]?.add(way)
    supplies[supply]?.ways[way]?.forEach((room, place) => {
      const filling = fillings[place] ?? []
      if (filling.some((count) => count > 0)) found[supply]?.[room]?.set(filling.join(), filling)
    })
  }
  return {
    ways: ways.map((each) => [...each]),
    fillings: found.map((rooms) => rooms.map((room) => [...room.values()])),
  }
}

export const joined = (a: Offered, b: Offered): Offered => ({
  ways: a.ways.map((ways, supply) => [...new Set([...ways, ...(b.ways[supply] ?? [])])]),
  fillings: a.fillings.map((rooms, supply) =>
    rooms.map((room, number) => [
      ...new Map(
        [...room, ...(b.fillings[supply]?.[number] ?? [])].map((each) => [each.join(), each]),
      ).values(),
    ]),
  ),
})

/** More than this the solver cannot go through in the time a maker waits. */
const MOST_FILLINGS = 10_000

/**
 * Every way and filling that a cutting of less than `bound + gap` can be made of: at the given prices none of its
 * parts may lose more than the gap.
 *
 * @returns undefined when there are too many
 */
export const allWithin = (
  problem: CuttingProblem,
  { values, scarcity }: Prices,
  gap: number,
): Offered | undefined => {
  const worths = worthsOf(problem, roomChoices(problem), values)
  let left = MOST_FILLINGS
  const listed: { ways: number[]; fillings: Filling[][] }[] = []
  for (const [index, supply] of problem.supplies.entries()) {
    const best = supply.rooms.map((room) => (worths.atMost(room) <= 0 ? 0 : worths.best(room).worth))
    const lost = (way: readonly number[]): number =>
      supply.cost + (scarcity[index] ?? 0) - way.reduce((sum, room) => sum + (best[room] ?? 0), 0)
    const ways = supply.ways.flatMap((way, number) => (lost(way) < gap ? [number] : []))
    const fillings: Filling[][] = []
    for (const [number, room] of supply.rooms.entries()) {
      const using = ways.filter((way) => supply.ways[way]?.includes(number))
      const least = Math.min(...using.map((way) => lost(supply.ways[way] ?? [])))
      const found =
        using.length === 0
          ? []
          : worths.all(room, (best[number] ?? 0) - (gap - Math.max(0, least)) - SAME_POINT, left)
      if (!found) return undefined
      left -= found.length
      fillings.push(found)
    }
    listed.push({ ways, fillings })
  }
  return { ways: listed.map(({ ways }) => ways), fillings: listed.map(({ fillings }) => fillings) }
}

/** A column of the whole program and what it stands for. */
interface Choice {
  readonly column: Column
  readonly supply: number
  readonly way?: number
  readonly room?: number
  readonly filling?: Filling
}

/**
 * The cheapest whole boards made of the ways and fillings offered. Each room's fillings are chosen apart from those of
 * the other rooms of its board: there are as many as the ways of ripping give.
 *
 * @param known boards to begin with, made of what is offered
 */
export const wholeBoards = (
  problem: CuttingProblem,
  offered: Offered,
  known: readonly CutSupply[],
  solver: Solver,
  seconds: number,
): WholeBoards | undefined => {
  const { demands, supplies } = problem
  const roomRows = new Map<string, number>()
  const firstRoom = demands.length + supplies.length
  supplies.forEach(({ rooms }, supply) => {
    rooms.forEach((_, room) => {
      if ((offered.fillings[supply]?.[room] ?? []).length > 0)
        roomRows.set(`${supply} ${room}`, firstRoom + roomRows.size)
    })
  })
  const rows: Row[] = [
    ...demands.map(({ count }) => ({ lower: count, upper: Infinity })),
    ...supplies.map(({ limit }) => ({ lower: -Infinity, upper: limit })),
    ...[...roomRows].map(() => ({ lower: -Infinity, upper: 0 })),
  ]
  const choices = supplies.flatMap((supply, index) => choicesOf(supply, index, offered, problem, roomRows))
  const start = quantitiesOf(known, choices, problem)
  const answer = solver.whole(
    rows,
    choices.map(({ column }) => column),
    start,
    seconds,
  )
  return answer && { cuts: cutsOf(choices, answer.quantities, problem), bound: answer.bound }
}

const choicesOf = (
  { cost, limit, ways }: Supply,
  supply: number,
  offered: Offered,
  { demands }: CuttingProblem,
  roomRows: ReadonlyMap<string, number>,
): Choice[] => {
  const limitRow = demands.length + supply
  const rowOf = (room: number): number | undefined => roomRows.get(`${supply} ${room}`)
  const ripped = (offered.ways[supply] ?? []).map((way): Choice => {
    const times = new Map<number, number>()
    for (const room of ways[way] ?? []) {
      const row = rowOf(room)
      if (row !== undefined) times.set(row, (times.get(row) ?? 0) - 1)
    }
    return { supply, way, column: { cost, upper: limit, parts: [[limitRow, 1], ...times] } }
  })
  const filled = (offered.fillings[supply] ?? []).flatMap((fillings, room) =>
    fillings.map((filling): Choice => {
      const row = rowOf(room)
      const held = filling.flatMap((count, blank) => (count === 0 ? [] : [[blank, count] as const]))
      const parts = row === undefined ? held : [...held, [row, 1] as const]
      return { supply, room, filling, column: { cost: 0, upper: Infinity, parts } }
    }),
  )
  return [...ripped, ...filled]
}

const keyOf = ({ supply, way, room, filling }: Omit<Choice, 'column'>): string =>
  way === undefined ? `${supply} ${room} ${filling?.join()}` : `${supply} ${way}`

const quantitiesOf = (
  cuts: readonly CutSupply[],
  choices: readonly Choice[],
  { supplies }: CuttingProblem,
): number[] => {
  const counts = new Map<string, number>()
  const add = (key: string, times: number) => counts.set(key, (counts.get(key) ?? 0) + times)
  for (const { supply, way, fillings, times } of cuts) {
    add(keyOf({ supply, way }), times)
    supplies[supply]?.ways[way]?.forEach((room, place) => {
      add(keyOf({ supply, room, filling: fillings[place] ?? [] }), times)
    })
  }
  return choices.map((choice) => counts.get(keyOf(choice)) ?? 0)
}

/** Gives each board of the answer its rooms' fillings, one after the other. */
const cutsOf = (
  choices: readonly Choice[],
  quantities: readonly number[],
  { demands, supplies }: CuttingProblem,
): CutSupply[] => {
  const fillings = new Map<string, Filling[]>()
  choices.forEach(({ supply, room, filling }, index) => {
    if (filling === undefined) return
    const key = `${supply} ${room}`
    const many = Array.from({ length: quantities[index] ?? 0 }, () => filling)
    fillings.set(key, [...(fillings.get(key) ?? []), ...many])
  })
  const empty = demands.map(() => 0)
  return choices.flatMap(({ supply, way }, index) =>
    way === undefined
      ? []
      : Array.from({ length: quantities[index] ?? 0 }, (): CutSupply => {
          const rooms = supplies[supply]?.ways[way] ?? []
          return {
            supply,
            way,
            fillings: rooms.map((room) => fillings.get(`${supply} ${room}`)?.shift() ?? empty),
            times: 1,
          }
        }),
  )
}
