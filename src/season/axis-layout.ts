import type { Shop } from '../order/order.js'
import { isWideEnough, ofThickness } from '../plan/boards.js'
import type { StarPlan } from '../plan/plan.js'
import type { Degrees, Mm } from '../units/brand.js'
import { degrees, mm } from '../units/convert.js'

/** Cutting the arms with the grain along their axis: all four edges are slanted cuts. */
export interface AxisLayout {
  /** Board needed: the arm's width from valley to valley. */
  readonly width: Mm
  /** Board used per arm, one behind the other: the arm's length and two kerfs. */
  readonly length: Mm
  /** From a square crosscut. */
  readonly tipMiter: Degrees
  readonly jointMiter: Degrees
  readonly sawReaches: boolean
  /** Is there a board wide and thick enough? Undefined when the order names no boards. */
  readonly boardAllows?: boolean
}

export const axisLayout = ({ star, kite, thickness }: StarPlan, { saw, boards }: Shop): AxisLayout => {
  const tipMiter = degrees(90 - star.tipAngle / 2)
  const jointMiter = degrees(90 - star.centreAngle / 2)
  return {
    width: kite.width,
    length: mm(star.radius + 2 * saw.kerf),
    tipMiter,
    jointMiter,
    sawReaches: Math.max(tipMiter, jointMiter) <= saw.limit,
    ...(boards.length === 0
      ? {}
      : {
          boardAllows:
            ofThickness(
              boards.filter((board) => isWideEnough(board, kite.width)),
              thickness,
            ).length > 0,
        }),
  }
}
