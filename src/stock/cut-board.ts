import type { Board } from '../order/order.js'
import { slantOn } from '../plan/blank.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { SAME_POINT } from '../units/tolerance.js'
import type { BlankKind } from './blank-kinds.js'
import type { BoardRoom, RoomyBoard } from './board-rooms.js'
import { type CutSupply, type Filling, fits, type Room } from './cutting-problem.js'

/** Boards that are cut alike, with every blank and cut in its place. */
export interface CutBoard {
  readonly board: Board
  /** Where it stands in the order, counted from 1. */
  readonly number: number
  readonly times: number
  readonly strips: readonly CutStrip[]
  /** What is left of the board's width after the last strip and its rip; 0 when the board is one strip. */
  readonly rippedOff: Mm
}

/** A strip of a board, as wide as the widest arm on it; distances run along the fence's edge from the board's first end. */
export interface CutStrip {
  readonly width: Mm
  readonly blanks: readonly LaidBlank[]
  readonly cuts: readonly SawCut[]
  readonly offcut: Offcut
}

export interface LaidBlank extends PlacedBlank {
  /** Has it a cut of its own in front? Else it begins where the one before was cut off, or at a square end. */
  readonly trimmed: boolean
  /** Has it a cut of its own behind? Else the next one's trim sets it free. */
  readonly cutOff: boolean
}

interface PlacedBlank {
  readonly kind: BlankKind
  /** Its side on the fence's edge. */
  readonly from: Mm
  readonly to: Mm
  /** How much further along the board its far edge lies. */
  readonly slant: Mm
}

/** One crosscut at the first cut's setting. */
export interface SawCut {
  /** The mark on the fence's edge: the side of the blade that must not cross it stands there. */
  readonly at: Mm
  /** On which side of the mark the blade's slot lies: toward the first end, or away from it. */
  readonly slot: 'before' | 'after'
  /** Whose setting it has. */
  readonly kind: BlankKind
}

/** What is left after the last cut. */
export interface Offcut {
  /** At the fence's edge. */
  readonly from: Mm
  readonly length: Mm
  /** Kinds of which it holds an arm more, and how many. */
  readonly holds: readonly { readonly kind: BlankKind; readonly count: number }[]
}

/** @param number where the board stands in the order, counted from 1 */
export const cutBoard = (
  cut: CutSupply,
  number: number,
  roomy: RoomyBoard,
  kinds: readonly BlankKind[],
  ripKerf: Mm | undefined,
): CutBoard => {
  const { board, rooms, strips, supply } = roomy
  const widths = strips[cut.way] ?? []
  const perStrip = widths.length === 0 ? 0 : cut.fillings.length / widths.length
  const numbers = supply.ways[cut.way] ?? []
  const cutStrips = widths
    .map((width, index): CutStrip => {
      const places = Array.from({ length: perStrip }, (_, place) => index * perStrip + place)
      const filled = places.flatMap((place): FilledRoom[] => {
        const roomNumber = numbers[place] ?? 0
        const [room, limits] = [rooms[roomNumber], supply.rooms[roomNumber]]
        return room && limits ? [{ room, limits, filling: cut.fillings[place] ?? [] }] : []
      })
      return cutStrip(board, width, filled, kinds)
    })
    .filter(({ blanks }) => blanks.length > 0)
  const taken = cutStrips.reduce((sum, { width }) => sum + width + (ripKerf ?? 0), 0)
  const rippedOff = mm(Math.max(0, board.width - taken))
  return { board, number, times: cut.times, strips: cutStrips, rippedOff }
}

interface FilledRoom {
  readonly room: BoardRoom
  readonly limits: Room
  readonly filling: Filling
}

const cutStrip = (
  board: Board,
  width: Mm,
  filled: readonly FilledRoom[],
  kinds: readonly BlankKind[],
): CutStrip => {
  const blanks = withCuts(filled.flatMap((each) => placedBlanks(each, width, kinds)))
  const cuts = sawCuts(blanks)
  const last = cuts.at(-1)
  const from = mm(last ? last.at + (last.slot === 'after' ? last.kind.plan.blank.slot : 0) : 0)
  const length = mm(Math.max(0, board.length - from))
  return { width, blanks, cuts, offcut: { from, length, holds: offcutHolds(filled.at(-1), kinds) } }
}

/** From the gentlest slant to the steepest, so that the slant is lost once; last the one that may reach furthest. */
const placedBlanks = (
  { room, limits, filling }: FilledRoom,
  width: Mm,
  kinds: readonly BlankKind[],
): PlacedBlank[] => {
  const slantOf = (kind: BlankKind): Mm => slantOn(kind.plan.star, width)
  const used = limits.placings.filter(({ blank }) => (filling[blank] ?? 0) > 0)
  const furthest = used.reduce((most, { spare }) => Math.max(most, spare), 0)
  const last = used.find(({ spare }) => furthest > 0 && spare === furthest)
  const order = [
    ...used
      .sort((a, b) => a.slant - b.slant)
      .flatMap(({ blank }) =>
        Array.from({ length: (filling[blank] ?? 0) - (blank === last?.blank ? 1 : 0) }, () => blank),
      ),
    ...(last ? [last.blank] : []),
  ].flatMap((blank) => kinds[blank] ?? [])
  const laid: PlacedBlank[] = []
  for (const kind of order) {
    const before = laid.at(-1)
    const slant = slantOf(kind)
    const from = before
      ? mm(before.to + before.kind.plan.blank.slot + Math.max(0, before.slant - slant))
      : room.from
    laid.push({ kind, from, to: mm(from + kind.plan.blank.side), slant })
  }
  return laid
}

/** A cut before each blank that does not begin where the last one was cut off, and one behind each. */
const withCuts = (blanks: readonly PlacedBlank[]): LaidBlank[] =>
  blanks.map((blank, index) => {
    const before = blanks[index - 1]
    const next = blanks[index + 1]
    const squareEnd = blank.from < SAME_POINT && blank.slant < SAME_POINT
    return {
      ...blank,
      trimmed: !squareEnd && !(before && isCutOffAt(before, blank)),
      cutOff: !(next && crosses(blank, next)),
    }
  })

/** Every crosscut of a strip, from its first end on. */
const sawCuts = (blanks: readonly LaidBlank[]): SawCut[] =>
  blanks.flatMap(({ kind, from, to, trimmed, cutOff }): SawCut[] => [
    ...(trimmed ? [{ at: from, slot: 'before' as const, kind }] : []),
    ...(cutOff ? [{ at: to, slot: 'after' as const, kind }] : []),
  ])

const isCutOffAt = (before: PlacedBlank, { from, slant }: PlacedBlank): boolean =>
  Math.abs(before.slant - slant) < SAME_POINT &&
  Math.abs(before.to + before.kind.plan.blank.slot - from) < SAME_POINT

/** Beyond a defect the cut behind a steep blank may run into the next one: then the next one's own cut frees both. */
const crosses = (blank: PlacedBlank, next: PlacedBlank): boolean =>
  blank.to + blank.kind.plan.blank.slot + Math.max(0, blank.slant - next.slant) > next.from + SAME_POINT

const offcutHolds = (last: FilledRoom | undefined, kinds: readonly BlankKind[]): Offcut['holds'] => {
  if (!last) return []
  const demands = kinds.map(({ count, plan }) => ({ count, length: plan.blank.pitch }))
  return last.limits.placings.flatMap(({ blank }) => {
    const kind = kinds[blank]
    let count = 0
    const more = (each: number) => last.filling.map((held, other) => (other === blank ? held + each : held))
    while (count < MOST_NAMED && fits(more(count + 1), last.limits, demands)) count += 1
    return kind && count > 0 ? [{ kind, count }] : []
  })
}

/** Enough to count on an offcut. */
const MOST_NAMED = 200
