import type { Star } from '../geometry/star.js'
import type { Degrees, Mm } from '../units/brand.js'
import { degrees, mm, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'

/** What the arms of a batch came out at, less what was wanted; the same for all, as they share settings and stop. */
export interface ArmErrors {
  /** Above zero: too fat a tip. */
  readonly tip: Degrees
  /** Of each of the two side angles: what the joint cuts came out too steep. */
  readonly side: Degrees
  /** Above zero: too long. */
  readonly tipEdge: Mm
}

/** An arm as it was cut. */
export interface CutArm {
  readonly tipAngle: Degrees
  readonly sideAngle: Degrees
  /** What tip and sides leave of 360°. */
  readonly centreAngle: Degrees
  readonly tipEdge: Mm
  readonly jointEdge: Mm
  /** Tip to the arm's inner corner. */
  readonly radius: Mm
}

/** By the law of sines in the triangle tip, valley, inner corner. */
export const armAsCut = (star: Star, errors: ArmErrors): CutArm => {
  const tipAngle = degrees(star.tipAngle + errors.tip)
  const sideAngle = degrees(star.sideAngle + errors.side)
  const centreAngle = degrees(star.centreAngle - errors.tip - 2 * errors.side)
  const tipEdge = mm(star.tipEdge + errors.tipEdge)
  const halfCentre = maths.sin(toRadians(centreAngle) / 2)
  return {
    tipAngle,
    sideAngle,
    centreAngle,
    tipEdge,
    jointEdge: mm((tipEdge * maths.sin(toRadians(tipAngle) / 2)) / halfCentre),
    radius: mm((tipEdge * maths.sin(toRadians(sideAngle))) / halfCentre),
  }
}

/** 360° less n centre angles, from the errors: n (tip + 2 side). */
export const closureOf = (points: number, { tip, side }: Pick<ArmErrors, 'tip' | 'side'>): Degrees =>
  degrees(points * (tip + 2 * side))
