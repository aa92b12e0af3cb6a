import type { Degrees, Mm } from '../units/brand.js'
import { degrees, mm, radians, toDegrees, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { kite } from './kite.js'
import { distance, type Point, subtract, turn } from './point.js'
import type { Star } from './star.js'

/** How the arm lies in the wood: the grain runs along one of its tip edges, or along its axis from tip to centre. */
export type GrainAlong = 'edge' | 'axis'

/** An arm whose wood has changed across the grain. With the grain along an edge its two sides differ. */
export interface MovedArm {
  readonly tipAngle: Degrees
  readonly centreAngle: Degrees
  /** At the valley on the edge that the grain follows, and at the other. */
  readonly sideAngles: readonly [near: Degrees, far: Degrees]
  /** From those valleys to the centre. */
  readonly jointEdges: readonly [near: Mm, far: Mm]
  readonly tipEdges: readonly [near: Mm, far: Mm]
}

/**
 * The arm after every distance across the grain has been multiplied by `factor`: an affine map, which keeps distances
 * along the grain.
 */
export const movedArm = (star: Star, grain: GrainAlong, factor: number): MovedArm => {
  // The kite lies with a tip edge along x; turned by half its tip angle, with its axis along x.
  const turned = toRadians(degrees(grain === 'edge' ? 0 : -star.tipAngle / 2))
  const across = (corner: Point): Point => {
    const { x, y } = turn(corner, turned)
    return { x, y: y * factor }
  }
  const { tip, nearValley, centre, farValley } = kite(star)
  const [a, near, c, far] = [across(tip), across(nearValley), across(centre), across(farValley)]
  return {
    tipAngle: angleAt(a, near, far),
    centreAngle: angleAt(c, far, near),
    sideAngles: [angleAt(near, a, c), angleAt(far, a, c)],
    jointEdges: [mm(distance(near, c)), mm(distance(far, c))],
    tipEdges: [mm(distance(a, near)), mm(distance(a, far))],
  }
}

/** The angle of a corner between the directions to two others, 0° to 180°. */
const angleAt = (corner: Point, one: Point, other: Point): Degrees => {
  const [a, b] = [subtract(one, corner), subtract(other, corner)]
  return toDegrees(radians(maths.atan2(Math.abs(a.x * b.y - a.y * b.x), a.x * b.x + a.y * b.y)))
}
