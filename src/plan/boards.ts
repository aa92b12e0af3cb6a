import type { Board, Shop } from '../order/order.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { SAME_POINT, SHOP } from '../units/tolerance.js'
import type { Blank } from './blank.js'

/** The first board of the shop that an arm fits, and how far it goes. */
export interface BoardUse {
  readonly board: Board
  readonly blanksPerBoard: number
  /** Boards for the whole quantity. */
  readonly boardsNeeded: number
  /** What is ripped off the board's width; 0 when the arm takes all of it. */
  readonly rippedOff: Mm
}

/** Wide enough, and thick enough when a thickness is asked for? Within what can be seen at the bench. */
export const boardFits = (board: Board, needed: Mm, thickness: Mm | undefined): boolean =>
  board.width >= needed - SHOP &&
  (thickness === undefined || board.thickness === undefined || board.thickness >= thickness - SHOP)

export const boardUse = (
  shop: Pick<Shop, 'boards'> & BoardRules,
  needed: Mm,
  thickness: Mm | undefined,
  blank: Blank,
  blanks: number,
): BoardUse | undefined => {
  for (const board of shop.boards) {
    if (!boardFits(board, needed, thickness)) continue
    const blanksPerBoard = blanksOn(board, shop, blank)
    if (blanksPerBoard === 0) continue
    const rippedOff = mm(Math.max(0, board.width - needed))
    return { board, blanksPerBoard, boardsNeeded: Math.ceil(blanks / blanksPerBoard), rippedOff }
  }
  return undefined
}

/** Each stretch of sound wood gives whole blanks after its own slant. */
const blanksOn = (board: Board, shop: BoardRules, blank: Blank): number =>
  soundStretches(board, shop, blank.slot).reduce((count, stretch) => count + blanksIn(stretch, blank), 0)

const blanksIn = ({ from, to, beyond }: SoundStretch, blank: Blank): number => {
  const length = to - from - blank.slant + spareLength(blank, beyond)
  return Math.max(0, Math.floor((length + SAME_POINT) / blank.pitch))
}

/** What the last blank of a stretch may reach past its end: its slot and what is waste of it, at most all of it. */
export const spareLength = (blank: Pick<Blank, 'slot' | 'overhang' | 'pitch'>, beyond: Mm): Mm =>
  mm(Math.min(blank.slot + blank.overhang, blank.pitch, beyond))

/** Wood between the end allowance, the defects and the board's other end, measured from the first end. */
export interface SoundStretch {
  readonly from: Mm
  readonly to: Mm
  /** How much board lies past its end, that waste may reach into; none where waste must be sound too. */
  readonly beyond: Mm
}

/** What the shop says about the use of boards. */
export type BoardRules = Pick<Shop, 'endAllowance' | 'sound'>

/**
 * The stretches of a board on which arms may lie.
 *
 * @param slot what the blade takes along the board: a defect that is shorter costs as much
 */
export const soundStretches = (
  { length, defects }: Board,
  { endAllowance, sound }: BoardRules,
  slot: Mm,
): SoundStretch[] => {
  const sorted = [...defects].sort((a, b) => a.from - b.from)
  const stretches: SoundStretch[] = []
  let soundFrom = endAllowance
  for (const { from, to } of sorted) {
    if (from > soundFrom) {
      stretches.push({ from: soundFrom, to: from, beyond: mm(sound === 'arm' ? length - from : 0) })
      soundFrom = mm(from + slot)
    }
    soundFrom = mm(Math.max(soundFrom, to))
  }
  return soundFrom < length ? [...stretches, { from: soundFrom, to: length, beyond: mm(0) }] : stretches
}
