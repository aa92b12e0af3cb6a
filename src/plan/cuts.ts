import { centreAngle, tipAngleLimit } from '../geometry/star.js'
import type { Saw } from '../order/order.js'
import type { Degrees } from '../units/brand.js'
import { degrees } from '../units/convert.js'
import { SAME_ANGLE } from '../units/tolerance.js'
import { biasOf } from './saw-setting.js'

/** Miter of the cut that makes the blank; negative when it leans the other way (tip angle over 90°). */
export const firstMiter = (tipAngle: Degrees): Degrees => degrees(90 - tipAngle)

/** Miter of both joint cuts: side angle less 90°. */
export const jointMiter = (points: number, tipAngle: Degrees): Degrees =>
  degrees(90 - tipAngle / 2 - centreAngle(points) / 2)

/** The tip angles a saw can cut without a wedge, from the slenderest star to the bluntest; undefined when none. */
export const tipAnglesWithin = (saw: Saw, points: number): { least: Degrees; most: Degrees } | undefined => {
  const least = Math.max(90 - saw.limit, 180 - centreAngle(points) - 2 * (saw.limit + biasOf(saw)))
  const most = Math.min(90 + saw.limit, tipAngleLimit(points))
  const possible = least <= most + SAME_ANGLE && least > 0 && least < tipAngleLimit(points)
  return possible ? { least: degrees(least), most: degrees(most) } : undefined
}
