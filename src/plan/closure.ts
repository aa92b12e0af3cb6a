import type { Degrees, Mm } from '../units/brand.js'
import { degrees, mm, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'

/*
 * Closure is 360° less the sum of the arms' centre angles. In each arm tip + 2 side + centre = 360°, so with n arms
 * closure = n (tip error) + 2n (side-angle error). Above zero the arms are too slim and the last joint gapes at the
 * valleys; below zero they are too fat and it gapes at the centre.
 */

/** The first cut decides the tip angle: tip = 90° - miter. */
export const closureOfFirstCut = (points: number, miter: Degrees, set: Degrees): Degrees =>
  degrees(points * (miter - set))

/** The joint cut decides the side angle: side = 90° + miter, and each arm has two. */
export const closureOfJointCut = (points: number, miter: Degrees, set: Degrees): Degrees =>
  degrees(2 * points * (set - miter))

/** A rhombus arm needs no joint cuts: its centre angle is its tip angle, 90° - miter. */
export const closureOfRhombus = (points: number, miter: Degrees, set: Degrees): Degrees =>
  degrees(points * (set - miter))

/** The gap at the open end of the last joint when all of the closure is left to it. */
export const closureGap = (jointEdge: Mm, closure: Degrees): Mm =>
  mm(2 * jointEdge * maths.sin(toRadians(degrees(Math.min(180, Math.abs(closure)) / 2))))

/** The gap at the last joint when every joint cut is off by `error`. */
export const gapPerJointError = (points: number, jointEdge: Mm, error: Degrees): Mm =>
  closureGap(jointEdge, degrees(2 * points * error))
