import { type Star, solveStar, tipAngleLimit } from '../geometry/star.js'
import type { Mm } from '../units/brand.js'
import { degrees, mm, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import type { CutArm } from './arm.js'

/** What recutting both joint faces of arms makes of them. */
export interface Recut {
  /** The star that the recut arms close to; their tips stay as they are. */
  readonly star: Star
  /** The stop goes this much toward the blade. */
  readonly stopMove: Mm
  /** Taken off each face, square to the new one, at its two ends. */
  readonly off: { readonly valley: Mm; readonly centre: Mm }
}

/** Shorter edges cannot be recut at a saw. */
const SMALLEST_EDGE = mm(5)

/**
 * The largest kite with the same tip and a centre angle of 360° / n whose new joint faces take off `cleanUp` at least,
 * everywhere; undefined when no arm worth the name is left, or when tips so fat leave no valley.
 *
 * Both kites lie on one axis in one tip, so the new one lies in the old as soon as its valley and its inner corner do.
 */
export const recutArms = (points: number, arm: CutArm, cleanUp: Mm): Recut | undefined => {
  if (arm.tipAngle >= tipAngleLimit(points)) return undefined
  const side = toRadians(degrees(180 - arm.tipAngle / 2 - 180 / points))
  const byCentre = (arm.radius * maths.sin(Math.PI / points)) / maths.sin(side)
  const tipEdge = Math.min(arm.tipEdge, byCentre) - cleanUp / maths.sin(side)
  if (tipEdge < SMALLEST_EDGE) return undefined
  const star = solveStar(points, arm.tipAngle, 'tip-edge', mm(tipEdge))
  // The new face leaves the edge on the fence at the side angle; its outward normal is (sin, cos) of that.
  const halfTip = toRadians(arm.tipAngle) / 2
  const beyond = (x: number, y: number): Mm => mm((x - tipEdge) * maths.sin(side) + y * maths.cos(side))
  return {
    star,
    stopMove: mm(arm.tipEdge - tipEdge),
    off: {
      valley: beyond(arm.tipEdge, 0),
      centre: beyond(arm.radius * maths.cos(halfTip), arm.radius * maths.sin(halfTip)),
    },
  }
}
