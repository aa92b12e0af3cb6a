import type { Point } from '../geometry/point.js'
import type { Star } from '../geometry/star.js'
import { tipAngleLimit } from '../geometry/star.js'
import type { Degrees, Mm } from '../units/brand.js'
import { degrees, mm, radians, toDegrees, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { toStep } from '../units/step.js'

/** How far a pulled tip is from the centre, and so by what the star's size is multiplied. */
export const sizeFactor = (star: Star, pulled: Point): number => maths.hypot(pulled.x, pulled.y) / star.radius

/** A size to a step that a rule shows, at least one step. */
export const steppedSize = (length: number, step: number): Mm =>
  mm(Math.max(step, toStep(length, step, Math.round)))

/**
 * The tip angle of the star whose valleys are `share` of its radius away from the centre:
 * tan(τ/2) = share · sin(γ/2) / (1 - share · cos(γ/2)), from S/R = sin(τ/2) / sin((τ+γ)/2).
 */
export const tipAngleAt = (points: number, share: number): Degrees => {
  const half = Math.PI / points
  return degrees(2 * toDegrees(radians(maths.atan2(share * maths.sin(half), 1 - share * maths.cos(half)))))
}

/** The valley's distance over the radius, the inverse of {@link tipAngleAt}. */
export const valleyShare = (points: number, tipAngle: Degrees): number => {
  const [tip, half] = [toRadians(tipAngle) / 2, Math.PI / points]
  return maths.sin(tip) / maths.sin(tip + half)
}

/** A tip angle to the saw's step, within what a star of so many points can have. */
export const steppedTipAngle = (points: number, tipAngle: Degrees, step: Degrees): Degrees => {
  const most = tipAngleLimit(points) - step
  return degrees(Math.min(most, Math.max(step, toStep(tipAngle, step, Math.round))))
}
