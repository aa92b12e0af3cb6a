import { type Star, solveStar } from '../geometry/star.js'
import type { Board, Order, StarOrder } from '../order/order.js'
import { blankOf } from '../plan/blank.js'
import { mm } from '../units/convert.js'
import { SHOP } from '../units/tolerance.js'
import type { Shape } from './shapes.js'

/** A size that a star can have here, and where it comes from. */
export interface Sized {
  readonly size: StarOrder['size']
  readonly board?: Board
  /** So large that the arms of whole stars take the board's whole length. */
  readonly wholeBoard: boolean
}

/** A whole-board star that is smaller than this part of the largest one leaves too much of the width. */
const SMALLEST_PART = 0.6

/**
 * The largest star of a shape on each board, within the wall and the blade's reach; and, when `wholeBoards`, the
 * largest whose arms, whole stars of them, use up the board's length. Without boards, the size that the star of the
 * order has, or the largest for the wall.
 */
export const sizesFor = (
  shape: Shape,
  order: Order,
  asked: StarOrder['size'] | undefined,
  wholeBoards: boolean,
): Sized[] => {
  const unit = solveStar(shape.points, shape.tipAngle, 'radius', mm(1))
  const most = largestRadius(unit, order)
  const { boards } = order.shop
  if (boards.length === 0) return sizeWithoutBoards(unit, most, asked)
  return boards.flatMap((board): Sized[] => {
    const byWidth = board.width / unit.armStrip
    const radius = Math.min(byWidth, most)
    const size: StarOrder['size'] =
      byWidth <= most ? { by: 'board-width', length: board.width } : { by: 'radius', length: mm(radius) }
    const whole = wholeBoards ? wholeBoardRadius(unit, board, order, radius) : undefined
    return [
      { size, board, wholeBoard: false },
      ...(whole === undefined
        ? []
        : [{ size: { by: 'radius' as const, length: mm(whole) }, board, wholeBoard: true }]),
    ]
  })
}

/** By the wall, and by what the blade reaches across; infinite when neither is told. */
const largestRadius = (unit: Star, { space, shop }: Order): number =>
  Math.min(
    (space.across ?? Number.POSITIVE_INFINITY) / unit.across,
    (space.height ?? Number.POSITIVE_INFINITY) / unit.height,
    (shop.saw.crosscut ?? Number.POSITIVE_INFINITY) / blankOf(unit, mm(0), mm(0)).longestCut,
  )

const sizeWithoutBoards = (unit: Star, most: number, asked: StarOrder['size'] | undefined): Sized[] => {
  const wanted = asked
    ? solveStar(unit.points, unit.tipAngle, asked.by, asked.length).radius
    : Number.POSITIVE_INFINITY
  if (asked && wanted <= most) return [{ size: asked, wholeBoard: false }]
  return Number.isFinite(most) ? [{ size: { by: 'radius', length: mm(most) }, wholeBoard: false }] : []
}

/**
 * The radius at which the slant and the pitches of whole stars' arms come to just the board's sound length: both grow
 * with the star, the blade's slot in each pitch does not. Undefined where that is no size to make.
 */
const wholeBoardRadius = (unit: Star, board: Board, order: Order, most: number): number | undefined => {
  const { saw, endAllowance } = order.shop
  if (board.defects.length > 0) return undefined
  const { slant, side } = blankOf(unit, mm(0), mm(0))
  const slot = blankOf(unit, saw.kerf, mm(0)).pitch - side
  const length = board.length - endAllowance
  const radiusFor = (arms: number) => (length - arms * slot) / (slant + arms * side)
  const least = (length / most - slant) / (side + slot / most)
  const arms = Math.max(1, Math.ceil(least / unit.points - SHOP / length)) * unit.points
  const radius = radiusFor(arms)
  return radius <= most && radius > SMALLEST_PART * most ? radius : undefined
}
