import type { Star } from '../geometry/star.js'
import type { Mm } from '../units/brand.js'
import { mm, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { firstMiter, jointMiter } from './cuts.js'

/** The parallelogram one arm is cut from, and what it takes from the board. */
export interface Blank {
  /** Along the board's edge, cut to cut; the blank is a rhombus, so it is also the slanted side. */
  readonly side: Mm
  /** Along the board's edge, what the blade removes on the slant. */
  readonly slot: Mm
  /** Board used per blank, the slot included. */
  readonly pitch: Mm
  /** Lost to the slant of the cuts, once for every stretch of sound wood. */
  readonly slant: Mm
  /** How far the blank's last corner reaches along the board beyond all of its arm: waste, which may be unsound. */
  readonly overhang: Mm
  /** Lost once per board: the slant, and the allowance for a bad end. */
  readonly firstTrim: Mm
  /** The longest way the blade goes through the board, be it the first cut or a joint cut. */
  readonly longestCut: Mm
}

export const blankOf = (star: Star, kerf: Mm, endAllowance: Mm): Blank => {
  const lean = toRadians(firstMiter(star.tipAngle))
  const jointLean = toRadians(jointMiter(star.points, star.tipAngle))
  const side = mm(star.armStrip / maths.cos(lean))
  const slant = slantOn(star, star.armStrip)
  const slot = mm(kerf / maths.cos(lean))
  return {
    side,
    slot,
    pitch: mm(side + slot),
    slant,
    overhang: overhangOn(star, star.armStrip),
    firstTrim: mm(slant + endAllowance),
    longestCut: mm(star.armStrip / Math.min(maths.cos(lean), maths.cos(jointLean))),
  }
}

/** What the slant of the first cut takes along a strip of the given width. */
export const slantOn = (star: Star, strip: Mm): Mm =>
  mm(strip * Math.abs(maths.tan(toRadians(firstMiter(star.tipAngle)))))

/**
 * How far the blank's last corner lies beyond all of its arm on a strip of the given width, along the board and toward
 * the side the first cut leans to. The arm ends with its centre; when the tip angle is over 90° the cut leans to the
 * tip's side, and there it ends with a valley.
 */
export const overhangOn = (star: Star, strip: Mm): Mm => {
  const tip = toRadians(star.tipAngle)
  const side = star.armStrip / maths.sin(tip)
  const armEnd =
    star.tipAngle <= 90 ? star.radius * maths.cos(tip / 2) : side + star.tipEdge * Math.abs(maths.cos(tip))
  return mm(Math.max(0, side + slantOn(star, strip) - armEnd))
}
