import type { Board, Shop } from '../order/order.js'
import { overhangOn, slantOn } from '../plan/blank.js'
import { type SoundStretch, soundStretches, spareLength } from '../plan/boards.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { SAME_POINT, SHOP } from '../units/tolerance.js'
import type { BlankKind } from './blank-kinds.js'
import type { Placing, Room, Supply, Way } from './cutting-problem.js'

/** A stretch of sound wood on a strip of a board. */
export interface BoardRoom extends SoundStretch {
  readonly strip: Mm
}

/** A board of the order, ready to be cut up: how it may be ripped, and the rooms on its strips. */
export interface RoomyBoard {
  readonly board: Board
  readonly supply: Supply
  /** By the numbers of the supply's rooms. */
  readonly rooms: readonly BoardRoom[]
  /** By the numbers of the supply's ways: the strips' widths, widest first. */
  readonly strips: readonly (readonly Mm[])[]
  /** Are these all ways there are, or were there too many? */
  readonly allWays: boolean
}

/** More ways of ripping one board than this are no help to anybody; the widest strips come first. */
export const MOST_WAYS = 400

/**
 * What the kinds of blanks find on a board. A strip is as wide as one of the kinds; narrower ones may lie on it too:
 * three cuts and the fence's edge make an arm whatever the strip's width, only the slant gets longer.
 */
export const roomyBoard = (
  board: Board,
  kinds: readonly BlankKind[],
  shop: Shop,
  cost: number,
): RoomyBoard => {
  const slot = mm(Math.max(...kinds.map(({ plan }) => plan.blank.slot)))
  const stretches = soundStretches(board, shop, slot)
  const fitting = kinds.filter(({ plan }) => plan.boards.includes(board))
  const widths = fitting
    .map(({ plan }) => plan.star.armStrip)
    .filter((width, index, all) => index === 0 || (all[index - 1] ?? width) - width > SAME_POINT)
  const rooms = widths.flatMap((strip) => stretches.map((stretch): BoardRoom => ({ ...stretch, strip })))
  const strips = stripSets(widths, board.width, shop.ripKerf)
  return {
    board,
    rooms,
    strips,
    allWays: strips.length < MOST_WAYS,
    supply: {
      cost,
      limit: board.count ?? Infinity,
      rooms: rooms.map((room) => roomFor(room, kinds, fitting, shop)),
      ways: strips.map(
        (set): Way =>
          set.flatMap((strip) => rooms.flatMap((room, index) => (room.strip === strip ? [index] : []))),
      ),
    },
  }
}

const roomFor = (
  { from, to, beyond, strip }: BoardRoom,
  kinds: readonly BlankKind[],
  fitting: readonly BlankKind[],
  shop: Shop,
): Room => ({
  length: to - from,
  placings: kinds.flatMap((kind, blank): Placing[] => {
    if (!fitting.includes(kind) || !liesOn(kind, strip, shop)) return []
    const { star, blank: measures } = kind.plan
    const spare = spareLength({ ...measures, overhang: overhangOn(star, strip) }, beyond)
    return [{ blank, slant: slantOn(star, strip), spare }]
  }),
})

/** Is the strip wide enough, exact where it must be, and within reach of the blade? */
const liesOn = ({ plan, exact }: BlankKind, strip: Mm, { saw }: Shop): boolean => {
  const { armStrip } = plan.star
  const wider = strip - armStrip
  if (wider < -SAME_POINT) return false
  if (wider <= SAME_POINT) return true
  const longestCut = (plan.blank.longestCut * strip) / armStrip
  return !exact && (saw.crosscut === undefined || longestCut <= saw.crosscut + SHOP)
}

/** One strip of each width; or, where boards are ripped, every set of strips to which no other can be added. */
const stripSets = (widths: readonly Mm[], board: Mm, ripKerf: Mm | undefined): readonly (readonly Mm[])[] => {
  if (ripKerf === undefined) return widths.map((width) => [width])
  const narrowest = widths.at(-1)
  const sets: Mm[][] = []
  const add = (set: readonly Mm[], from: number, left: number): void => {
    if (sets.length >= MOST_WAYS) return
    if (set.length > 0 && (narrowest === undefined || left < narrowest - SHOP)) sets.push([...set])
    widths.slice(from).forEach((width, index) => {
      if (width <= left + SHOP) add([...set, width], from + index, left - width - ripKerf)
    })
  }
  add([], 0, board)
  return sets
}
