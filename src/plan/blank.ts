import type { Star } from '../geometry/star.js'
import type { Mm } from '../units/brand.js'
import { mm, toRadians } from '../units/convert.js'
import { firstMiter } from './cuts.js'

/** The parallelogram one arm is cut from, and what it takes from the board. */
export interface Blank {
  /** Along the board's edge, cut to cut; the blank is a rhombus, so it is also the slanted side. */
  readonly side: Mm
  /** Board used per blank, the blade's width included. */
  readonly pitch: Mm
  /** Lost once per board: the slant of the end, and the allowance for a bad end. */
  readonly firstTrim: Mm
  /** Length of the cut across the board. */
  readonly cutLength: Mm
}

export const blankOf = (star: Star, kerf: Mm, endAllowance: Mm): Blank => {
  const lean = toRadians(firstMiter(star.tipAngle))
  const side = mm(star.armStrip / Math.cos(lean))
  return {
    side,
    pitch: mm(side + kerf / Math.cos(lean)),
    firstTrim: mm(star.armStrip * Math.abs(Math.tan(lean)) + endAllowance),
    cutLength: side,
  }
}
