import { tipAngleLimit } from '../geometry/star.js'
import type { Shop, StarOrder } from '../order/order.js'
import { SIZES } from '../order/schema.js'
import { planStar } from '../plan/plan.js'
import { degrees, mm } from '../units/convert.js'
import type { LengthStyle } from '../units/show.js'
import { toStep } from '../units/step.js'

/** What a star's size, or its tip angle, can be pulled to with all else in the order as it is. */
export interface Pullable {
  /** In whole steps; absent where no whole step beside what it is now is taken. */
  readonly limits?: Limits
  /** Would the order with this value have no mistake? */
  readonly isTaken: (value: number) => boolean
}

export interface Limits {
  readonly least: number
  readonly most: number
}

interface Around {
  readonly shop: Shop
  readonly lengths: LengthStyle
  /** What a pull moves by, in mm or degrees. */
  readonly step: number
}

/** Of the size of a star without mistakes, in mm of the measure it is given by. */
export const pullableSize = (star: StarOrder, around: Around): Pullable =>
  pullable(star.size.length, SIZES, star, around, (sized, length) =>
    length >= SIZES.least && length <= SIZES.most
      ? { ...sized, size: { by: sized.size.by, length: mm(length) } }
      : undefined,
  )

/** Of its tip angle, in degrees. */
export const pullableTipAngle = (star: StarOrder, tipAngle: number, around: Around): Pullable => {
  const most = tipAngleLimit(star.points)
  return pullable(tipAngle, { least: 0, most }, star, around, (shaped, angle) =>
    angle > 0 && angle < most
      ? { ...shaped, shape: { by: 'tip-angle', tipAngle: degrees(angle) } }
      : undefined,
  )
}

/** @param withValue the star with another value; undefined where its reader would refuse it */
const pullable = (
  now: number,
  { least, most }: Limits,
  star: StarOrder,
  { shop, lengths, step }: Around,
  withValue: (star: StarOrder, value: number) => StarOrder | undefined,
): Pullable => {
  const { backing: _, ...bare } = star
  const takenOf = (of: StarOrder, value: number): boolean => {
    const changed = withValue(of, value)
    return changed !== undefined && planStar(changed, shop, lengths).ok
  }
  const isTaken = (value: number): boolean => takenOf(star, value)
  const takes = (steps: number): boolean => isTaken(steps * step)
  const from = [Math.round, Math.floor, Math.ceil].map((round) => round(now / step)).find(takes)
  if (from === undefined) return { isTaken }
  const end = (bound: number, round: (steps: number) => number): number => {
    const to = Math.round(toStep(bound, step, round) / step)
    // A backing takes most of the time: it is asked near the end only.
    const withoutBacking = lastTaken(from, to, (steps) => takenOf(bare, steps * step))
    return step * lastTaken(from, withoutBacking, takes)
  }
  return { isTaken, limits: { least: end(least, Math.ceil), most: end(most, Math.floor) } }
}

/** The last whole number that is taken on the way to another: itself, or one before the first that is refused. */
const lastTaken = (from: number, to: number, takes: (steps: number) => boolean): number => {
  if (takes(to)) return to
  let [taken, refused] = [from, to]
  while (Math.abs(refused - taken) > 1) {
    const between = Math.trunc((taken + refused) / 2)
    if (takes(between)) taken = between
    else refused = between
  }
  return taken
}
