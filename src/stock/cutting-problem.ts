import { SAME_POINT } from '../units/tolerance.js'

/*
 * The arithmetic of cutting up boards, with everything that is wood left out. A board is cut into rooms: stretches of
 * sound wood on the strips it is ripped into. Blanks lie one behind the other in a room. Each takes its own length (its
 * pitch); once a room comes the slant of the steepest among them, less what the last one may reach past the room's end.
 */

/** Blanks of one kind. */
export interface Demand {
  readonly count: number
  /** What each takes of a room's length. */
  readonly length: number
}

/** How blanks of one kind lie in a room. */
export interface Placing {
  /** Which demand. */
  readonly blank: number
  /** Lost once to its slant, where no blank in the room is steeper. */
  readonly slant: number
  /** What it may reach past the room's end as the last one; at most its own length. */
  readonly spare: number
}

export interface Room {
  readonly length: number
  /** The blanks that may lie in it, in the order of the demands. */
  readonly placings: readonly Placing[]
}

/** One way of ripping a board: its rooms by number, one that it has twice named twice. */
export type Way = readonly number[]

/** Boards that are alike. */
export interface Supply {
  readonly cost: number
  /** How many there are; Infinity when as many as needed. */
  readonly limit: number
  readonly rooms: readonly Room[]
  readonly ways: readonly Way[]
}

export interface CuttingProblem {
  readonly demands: readonly Demand[]
  readonly supplies: readonly Supply[]
}

/** How many blanks of each kind lie in a room, in the order of the demands. */
export type Filling = readonly number[]

/** Boards of one supply that are cut alike: a filling for each room of the way. */
export interface CutSupply {
  readonly supply: number
  readonly way: number
  readonly fillings: readonly Filling[]
  readonly times: number
}

/** How much of a room's length a filling takes. */
export const lengthTaken = (filling: Filling, room: Room, demands: readonly Demand[]): number => {
  let [length, slant, spare] = [0, 0, 0]
  for (const placing of room.placings) {
    const count = filling[placing.blank] ?? 0
    if (count === 0) continue
    length += count * (demands[placing.blank]?.length ?? 0)
    slant = Math.max(slant, placing.slant)
    spare = Math.max(spare, placing.spare)
  }
  return length === 0 ? 0 : length + slant - spare
}

export const fits = (filling: Filling, room: Room, demands: readonly Demand[]): boolean =>
  lengthTaken(filling, room, demands) <= room.length + SAME_POINT

export const costOf = (cuts: readonly CutSupply[], { supplies }: CuttingProblem): number =>
  cuts.reduce((sum, { supply, times }) => sum + times * (supplies[supply]?.cost ?? 0), 0)

/** How many blanks of each kind the cut boards give. */
export const blanksOf = (cuts: readonly CutSupply[], { demands }: CuttingProblem): number[] =>
  demands.map((_, blank) =>
    cuts.reduce(
      (sum, { fillings, times }) =>
        sum + times * fillings.reduce((inner, filling) => inner + (filling[blank] ?? 0), 0),
      0,
    ),
  )

/** Each board by itself. */
export const single = (cuts: readonly CutSupply[]): CutSupply[] =>
  cuts.flatMap((cut) => Array.from({ length: cut.times }, (): CutSupply => ({ ...cut, times: 1 })))

/** The smallest step between two total costs: no cost lies between two multiples of it. */
export const costStep = ({ supplies }: CuttingProblem): number => {
  const parts = supplies.map(({ cost }) => Math.round(cost * PARTS)).filter((part) => part > 0)
  return parts.reduce(greatestCommonDivisor, 0) / PARTS
}

/** Prices are read with at most six decimals. */
const PARTS = 1e6

const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b)

/** A lower bound moved up to the next cost that there can be. */
export const nextCost = (bound: number, step: number): number =>
  step === 0 ? 0 : Math.max(0, Math.ceil(bound / step - STEP_NOISE)) * step

/** Rounding noise of a solver, over a step. */
const STEP_NOISE = 1e-4
