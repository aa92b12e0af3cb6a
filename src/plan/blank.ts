import type { Star } from '../geometry/star.js'
import type { Mm } from '../units/brand.js'
import { mm, toRadians } from '../units/convert.js'
import { firstMiter, jointMiter } from './cuts.js'

/** The parallelogram one arm is cut from, and what it takes from the board. */
export interface Blank {
  /** Along the board's edge, cut to cut; the blank is a rhombus, so it is also the slanted side. */
  readonly side: Mm
  /** Board used per blank, the blade's width included. */
  readonly pitch: Mm
  /** Lost to the slant of the cuts, once for every stretch of sound wood. */
  readonly slant: Mm
  /** Lost once per board: the slant, and the allowance for a bad end. */
  readonly firstTrim: Mm
  /** The longest way the blade goes through the board, be it the first cut or a joint cut. */
  readonly longestCut: Mm
}

export const blankOf = (star: Star, kerf: Mm, endAllowance: Mm): Blank => {
  const lean = toRadians(firstMiter(star.tipAngle))
  const jointLean = toRadians(jointMiter(star.points, star.tipAngle))
  const side = mm(star.armStrip / Math.cos(lean))
  const slant = mm(star.armStrip * Math.abs(Math.tan(lean)))
  return {
    side,
    pitch: mm(side + kerf / Math.cos(lean)),
    slant,
    firstTrim: mm(slant + endAllowance),
    longestCut: mm(star.armStrip / Math.min(Math.cos(lean), Math.cos(jointLean))),
  }
}
