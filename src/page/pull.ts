import { tipAngleLimit } from '../geometry/star.js'
import type { Degrees } from '../units/brand.js'
import { degrees, radians, toDegrees, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { toStep } from '../units/step.js'

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

/** Tip angles that a saw cuts. */
export interface TipRange {
  readonly least: Degrees
  readonly most: Degrees
}

/** The same in whole steps of the saw's scale; undefined where none lies within. */
export const steppedRange = ({ least, most }: TipRange, step: Degrees): TipRange | undefined => {
  const range = {
    least: degrees(toStep(least, step, Math.ceil)),
    most: degrees(toStep(most, step, Math.floor)),
  }
  return range.least <= range.most ? range : undefined
}

/** A tip angle to the saw's step, within what a star of so many points can have. */
export const steppedTipAngle = (points: number, tipAngle: Degrees, step: Degrees): Degrees => {
  const most = tipAngleLimit(points) - step
  return degrees(Math.min(most, Math.max(step, toStep(tipAngle, step, Math.round))))
}

/** One pixel never turns a tip by more than this. */
const FINEST_PULL = degrees(1)
/** Pixels that a pull goes past the end of what the saw cuts before the star follows. */
const HALT = 40

/**
 * The tip angle of a star whose valley is pulled outwards by so many pixels. Blunt stars have their valleys close
 * together: there it moves less than the finger. At the ends of `range` it halts, and goes on when pulled further.
 *
 * @param perPixel of the star's radius
 */
export const pulledTipAngle = (
  {
    points,
    tipAngle,
    range,
  }: {
    readonly points: number
    readonly tipAngle: Degrees
    readonly range: TipRange | undefined
  },
  pixels: number,
  perPixel: number,
): Degrees => {
  const from = valleyShare(points, tipAngle)
  const turned = Math.abs(tipAngleAt(points, from + perPixel) - tipAngle)
  const step = perPixel * Math.min(1, FINEST_PULL / turned)
  const pixelsTo = (angle: Degrees): number => (valleyShare(points, angle) - from) / step
  const halted = range
    ? haltedAt(haltedAt(pixels, pixelsTo(range.most), 1), pixelsTo(range.least), -1)
    : pixels
  return tipAngleAt(points, Math.max(LEAST_SHARE, from + step * halted))
}

/**
 * Centre to tip, in mm, of a star whose tip is pulled outwards by so many pixels; 0 where it is pulled past the centre.
 * At the largest that the saw takes it halts, and goes on when pulled further.
 *
 * @param pixel in mm
 */
export const pulledRadius = (
  { radius, largest }: { readonly radius: number; readonly largest: number | undefined },
  pixels: number,
  pixel: number,
): number => {
  const halted = largest === undefined ? pixels : haltedAt(pixels, (largest - radius) / pixel, 1)
  return Math.max(0, radius + pixel * halted)
}

/** A valley at the centre would be no star. */
const LEAST_SHARE = 0.02

/**
 * How far a pull that passes an end in so many pixels has moved: it halts there, and goes on when pulled further. One
 * that began behind the end does not halt.
 *
 * @param way 1 where the end is outwards, -1 where it is inwards
 */
const haltedAt = (pulled: number, end: number, way: 1 | -1): number => {
  const past = way * (pulled - end)
  return way * end < 0 || past <= 0 ? pulled : end + way * Math.max(0, past - HALT)
}
