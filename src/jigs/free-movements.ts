import type { Point } from '../geometry/point.js'
import type { Degrees } from '../units/brand.js'
import { degrees, radians, toDegrees } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { SAME_ANGLE } from '../units/tolerance.js'

/** Directions a piece can still be pushed in, counter-clockwise from +x: from one angle up to another. */
export interface FreeDirections {
  readonly from: Degrees
  readonly to: Degrees
}

/**
 * In which directions a piece can slide when it lies against straight faces: those that lead into none of them.
 *
 * @param facing for each face the way it faces, towards the piece; no two of them opposite
 * @returns undefined when it cannot slide at all
 */
export const freeDirections = (facing: readonly Point[]): FreeDirections | undefined => {
  const [first, ...more] = facing.map(({ x, y }) => toDegrees(radians(maths.atan2(y, x))))
  if (first === undefined) return { from: degrees(0), to: degrees(360) }
  let [from, to] = [first - 90, first + 90]
  for (const face of more) {
    // The nearer of the face's readings, so that half turns overlap where they can.
    const near = face + 360 * Math.round(((from + to) / 2 - face) / 360)
    from = Math.max(from, near - 90)
    to = Math.min(to, near + 90)
  }
  return from <= to + SAME_ANGLE ? { from: degrees(from), to: degrees(to) } : undefined
}

/** Can the piece be pushed that way? Sliding along a face counts as free. */
export const isFree = (free: FreeDirections | undefined, way: Degrees): boolean => {
  if (!free) return false
  const turned = way + 360 * Math.ceil((free.from - way - SAME_ANGLE) / 360)
  return turned <= free.to + SAME_ANGLE
}
