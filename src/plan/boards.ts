import type { Board } from '../order/order.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { SHOP, WHOLE } from '../units/tolerance.js'
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
  boards: readonly Board[],
  needed: Mm,
  thickness: Mm | undefined,
  blank: Blank,
  blanks: number,
): BoardUse | undefined => {
  for (const board of boards) {
    if (!boardFits(board, needed, thickness)) continue
    const blanksPerBoard = blanksOn(board, blank)
    if (blanksPerBoard === 0) continue
    const rippedOff = mm(Math.max(0, board.width - needed))
    return { board, blanksPerBoard, boardsNeeded: Math.ceil(blanks / blanksPerBoard), rippedOff }
  }
  return undefined
}

/** Each stretch of sound wood gives whole blanks after its own slant. */
const blanksOn = (board: Board, { pitch, slant, firstTrim }: Blank): number =>
  soundStretches(board, firstTrim - slant).reduce(
    (count, stretch) => count + Math.max(0, Math.floor((stretch - slant) / pitch + WHOLE)),
    0,
  )

/** Lengths between the end allowance, the defects and the board's other end. */
const soundStretches = ({ length, defects }: Board, endAllowance: number): number[] => {
  const sorted = [...defects].sort((a, b) => a.from - b.from)
  const stretches: number[] = []
  let soundFrom = endAllowance
  for (const { from, to } of sorted) {
    stretches.push(from - soundFrom)
    soundFrom = Math.max(soundFrom, to)
  }
  return [...stretches, length - soundFrom]
}
