import type { Board, Shop } from '../order/order.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { SAME_POINT, SHOP } from '../units/tolerance.js'
import type { Blank } from './blank.js'

/** The boards that a star's arms may be cut from: all of its one thickness. */
export interface ArmBoards {
  /** As the order says, or as thick as the first board that carries the arms and tells it; unknown when absent. */
  readonly thickness?: Mm
  /** As the order lists them. One that tells no thickness counts as of this one. */
  readonly boards: readonly Board[]
  /** Thicknesses of boards that would carry the arms too and are left out, each once, as the order lists them. */
  readonly otherThicknesses: readonly Mm[]
}

/** @param stated as the order says of the star itself */
export const armBoards = (
  shop: Pick<Shop, 'boards'> & BoardRules,
  needed: Mm,
  stated: Mm | undefined,
  blank: Blank,
): ArmBoards => {
  const carrying = shop.boards.filter(
    (board) => isWideEnough(board, needed) && blanksOn(board, shop, blank) > 0,
  )
  const thickness = stated ?? carrying.find((board) => board.thickness !== undefined)?.thickness
  const boards = ofThickness(carrying, thickness)
  return {
    boards,
    otherThicknesses: thicknessesOf(carrying.filter((board) => !boards.includes(board))),
    ...(thickness === undefined ? {} : { thickness }),
  }
}

/** Each once, as listed; those within what can be seen at the bench are one. */
export const thicknessesOf = (listed: readonly { readonly thickness?: Mm }[]): readonly Mm[] => {
  const told = listed.flatMap(({ thickness }) => (thickness === undefined ? [] : [thickness]))
  return told.filter((each, index) => !told.slice(0, index).some((one) => Math.abs(one - each) <= SHOP))
}

/** Boards so thick; where none is, thicker ones, to be planed down. One that tells no thickness counts as so thick. */
export const ofThickness = (boards: readonly Board[], thickness: Mm | undefined): readonly Board[] => {
  if (thickness === undefined) return boards
  const over = (board: Board): number => (board.thickness ?? thickness) - thickness
  const exact = boards.some((board) => board.thickness !== undefined && Math.abs(over(board)) <= SHOP)
  return boards.filter((board) => over(board) >= -SHOP && (!exact || over(board) <= SHOP))
}

/** Within what can be seen at the bench. */
export const isWideEnough = (board: Board, needed: Mm): boolean => board.width >= needed - SHOP

/** The first board that the arms may be cut from, and how far it goes. */
export interface BoardUse {
  readonly board: Board
  readonly blanksPerBoard: number
  /** Boards for the whole quantity. */
  readonly boardsNeeded: number
  /** What is ripped off the board's width; 0 when the arm takes all of it. */
  readonly rippedOff: Mm
}

export const boardUse = (
  { boards: [board] }: ArmBoards,
  rules: BoardRules,
  needed: Mm,
  blank: Blank,
  blanks: number,
): BoardUse | undefined => {
  if (!board) return undefined
  const blanksPerBoard = blanksOn(board, rules, blank)
  return {
    board,
    blanksPerBoard,
    boardsNeeded: Math.ceil(blanks / blanksPerBoard),
    rippedOff: mm(Math.max(0, board.width - needed)),
  }
}

/** Each stretch of sound wood gives whole blanks after its own slant. */
export const blanksOn = (board: Board, shop: BoardRules, blank: Blank): number =>
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
