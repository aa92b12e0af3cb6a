import type { Star } from '../geometry/star.js'
import type { Degrees, Mm } from '../units/brand.js'
import { degrees, radians, toDegrees, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { type ArmErrors, armAsCut, type CutArm, closureOf } from './arm.js'
import type { Equation } from './least-squares.js'
import type { Row } from './span.js'

/** What can be measured on one dry-fitted star. */
export type Measurable = 'gap' | 'tip' | 'side' | 'centre' | 'tip-edge' | 'across'

/** One measurement, in mm or degrees. */
export interface Measurement {
  readonly of: Measurable
  /** The gap is above zero when it opens at the valley, below when at the centre or when the last arm will not drop in. */
  readonly value: number
  /** The true value surely lies within this much of it, either way. */
  readonly within: number
  /** The flag it came from, and what was written there. */
  readonly place: string
  readonly given: string
}

/** One standard deviation, from arm to arm, of each cut angle and of the stop. */
export interface Spread {
  readonly angle: Degrees
  readonly stop: Mm
}

/** How sure tip angle and tip edge are, on which the length of the gaping joint hangs: standard uncertainties. */
export interface Doubt {
  readonly tip: Degrees
  readonly tipEdge: Mm
}

/** Tips from the one to the other end of the widest straight way over the star. */
export const widestApart = (points: number): number => Math.floor(points / 2)

/** What would be measured on a star of such arms; the gap as its closure, in degrees. */
export const wouldMeasure = (of: Measurable, star: Star, errors: ArmErrors): number => {
  const arm = armAsCut(star, errors)
  switch (of) {
    case 'gap':
      return closureOf(star.points, errors)
    case 'tip':
      return arm.tipAngle
    case 'side':
      return arm.sideAngle
    case 'centre':
      return arm.centreAngle
    case 'tip-edge':
      return arm.tipEdge
    case 'across':
      return acrossOf(star.points, arm)
  }
}

/** Tip to tip at the widest, over joints that are closed. */
const acrossOf = (points: number, { radius, centreAngle }: CutArm): number =>
  2 * radius * maths.sin((widestApart(points) * toRadians(centreAngle)) / 2)

/** How it would change with each error: derivatives of {@link wouldMeasure}. */
export const rowOf = (of: Measurable, star: Star, errors: ArmErrors): Row => {
  const { points } = star
  switch (of) {
    case 'gap':
      return [points, 2 * points, 0]
    case 'tip':
      return [1, 0, 0]
    case 'side':
      return [0, 1, 0]
    case 'centre':
      return [-1, -2, 0]
    case 'tip-edge':
      return [0, 0, 1]
    case 'across': {
      // Logarithmic derivative of 2 L sin(side) sin(k centre / 2) / sin(centre / 2), where centre falls with tip + 2 side.
      const arm = armAsCut(star, errors)
      const across = acrossOf(points, arm)
      const half = toRadians(arm.centreAngle) / 2
      const apart = widestApart(points)
      const byCentre = (apart / maths.tan(apart * half) - 1 / maths.tan(half)) / 2
      const perDegree = across * toRadians(degrees(1))
      const bySide = 1 / maths.tan(toRadians(arm.sideAngle)) - 2 * byCentre
      return [-byCentre * perDegree, bySide * perDegree, across / arm.tipEdge]
    }
  }
}

/** A rectangular distribution of this half-width: GUM (JCGM 100:2008), 4.3.7. */
export const standard = (within: number): number => within / Math.sqrt(3)

/**
 * A measurement as an equation for what the errors still lack.
 *
 * The gap of one star also holds the chance errors of its own 2n joint faces, and it is a closure only by the length of
 * the joint; an angle or edge of one arm holds the chance errors of that arm.
 */
export const equationOf = (
  measured: Measurement,
  star: Star,
  errors: ArmErrors,
  spread: Spread,
  doubt: Doubt,
): Equation => {
  const { of, value, within } = measured
  const row = rowOf(of, star, errors)
  const lacks = -wouldMeasure(of, star, errors)
  const face = maths.square(spread.angle)
  const own = maths.square(standard(within))
  switch (of) {
    case 'gap': {
      const arm = armAsCut(star, errors)
      const { jointEdge } = arm
      const half = maths.asin(Math.min(1, Math.abs(value) / (2 * jointEdge)))
      const closure = Math.sign(value) * toDegrees(radians(2 * half))
      const perDegree = jointEdge * maths.cos(half) * toRadians(degrees(1))
      // Relative variance of the joint edge L sin(tip / 2) / sin(centre / 2), and what it does to 2 asin(gap / 2 joint).
      const byTip = toRadians(doubt.tip) / 2 / maths.tan(toRadians(arm.tipAngle) / 2)
      const byEdge = doubt.tipEdge / arm.tipEdge
      const ofJoint =
        maths.square(toDegrees(radians(2 * maths.tan(half)))) * (maths.square(byTip) + maths.square(byEdge))
      return {
        row,
        value: closure + lacks,
        variance: own / maths.square(perDegree) + 2 * star.points * face + ofJoint,
      }
    }
    case 'tip':
    case 'side':
      return { row, value: value + lacks, variance: own + face }
    case 'centre':
      return { row, value: value + lacks, variance: own + 3 * face }
    case 'tip-edge':
    case 'across':
      return { row, value: value + lacks, variance: own + maths.square(spread.stop) }
  }
}
