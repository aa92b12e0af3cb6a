import type { Degrees, Mm, Radians } from '../units/brand.js'
import { degrees, mm, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { SAME_ANGLE } from '../units/tolerance.js'
import { closedOutline, type Outline } from './outline.js'
import { type Point, polar } from './point.js'

/**
 * A flat star of n equal arms. Angles are kept in degrees, because an order and a saw state them so and sums such
 * as 180° - 22.5° - 36° stay exact; lengths in mm.
 */
export interface Star {
  readonly points: number
  readonly tipAngle: Degrees
  /** The arm's angle at the valley, more than 90°. */
  readonly sideAngle: Degrees
  readonly centreAngle: Degrees
  /** Tip to valley. */
  readonly tipEdge: Mm
  /** Valley to centre. */
  readonly jointEdge: Mm
  /** Centre to tip. */
  readonly radius: Mm
  /** Centre to valley; the same length as the joint edge. */
  readonly valleyRadius: Mm
  /** Width of the star with one tip straight up. */
  readonly across: Mm
  /** Height of the star with one tip straight up. */
  readonly height: Mm
  /** Distance from the centre to the line of every tip edge; the sharp inset vanishes there. */
  readonly edgeDistance: Mm
  /** The strip, parallel to a tip edge, that just holds one arm. */
  readonly armStrip: Mm
  readonly valleyLine: ValleyLine
}

/**
 * How the outline runs past the valleys. In the regular star {n/k} each valley lies on the straight line between two
 * tips that are `apart` = k tips from each other.
 */
export interface ValleyLine {
  readonly apart: number
  /** How far the valley lies beyond that straight line, away from the centre; negative when it lies inside. */
  readonly dip: Mm
}

/** Which measure of the star its size is given by. */
export type SizeName = 'board-width' | 'across' | 'height' | 'radius' | 'tip-edge'

export const FEWEST_POINTS = 3
export const MOST_POINTS = 24

export const centreAngle = (points: number): Degrees => degrees(360 / points)

/** Tip angles must stay below this, or the side angle is no longer more than 90° and there is no valley. */
export const tipAngleLimit = (points: number): Degrees => degrees(180 - 360 / points)

/** Tip angle of the regular star polygon {n/k}: Coxeter, Regular Polytopes (1973), section 2.8. */
export const regularTipAngle = (points: number, step: number): Degrees =>
  degrees((180 * (points - 2 * step)) / points)

/**
 * The star whose named measure has the given size.
 *
 * @param points 3 to 24
 * @param tipAngle more than 0° and less than {@link tipAngleLimit}
 * @param size in mm, more than 0
 */
export const solveStar = (points: number, tipAngle: Degrees, sizeName: SizeName, size: Mm): Star => {
  if (!(tipAngle > 0 && tipAngle < tipAngleLimit(points))) {
    throw new RangeError(`no star has ${points} points and a tip angle of ${tipAngle}°`)
  }
  const unit = starFromTipEdge(points, tipAngle, mm(1))
  return starFromTipEdge(points, tipAngle, mm(size / measure(unit, sizeName)))
}

const measure = (star: Star, name: SizeName): Mm => {
  switch (name) {
    case 'board-width':
      return star.armStrip
    case 'across':
      return star.across
    case 'height':
      return star.height
    case 'radius':
      return star.radius
    case 'tip-edge':
      return star.tipEdge
  }
}

/** By the law of sines in the triangle tip, valley, centre. */
const starFromTipEdge = (points: number, tipAngle: Degrees, tipEdge: Mm): Star => {
  const centre = centreAngle(points)
  const halfTip = toRadians(degrees(tipAngle / 2))
  const halfCentre = toRadians(degrees(centre / 2))
  const radius = (tipEdge * maths.sin(halfTip + halfCentre)) / maths.sin(halfCentre)
  const valleyRadius = (tipEdge * maths.sin(halfTip)) / maths.sin(halfCentre)
  const corners = starCorners(points, radius, valleyRadius)
  const xs = corners.map(({ x }) => x)
  const ys = corners.map(({ y }) => y)
  return {
    points,
    tipAngle,
    sideAngle: degrees(180 - tipAngle / 2 - centre / 2),
    centreAngle: centre,
    tipEdge,
    jointEdge: mm(valleyRadius),
    radius: mm(radius),
    valleyRadius: mm(valleyRadius),
    across: mm(Math.max(...xs) - Math.min(...xs)),
    height: mm(Math.max(...ys) - Math.min(...ys)),
    edgeDistance: mm(radius * maths.sin(halfTip)),
    // Does the far tip edge reach higher over the board's edge, or does the centre bulge past it (tip > centre angle)?
    armStrip: mm(Math.max(tipEdge * maths.sin(2 * halfTip), radius * maths.sin(halfTip))),
    valleyLine: valleyLine(points, tipAngle, radius, valleyRadius),
  }
}

/** The line is that of the fattest regular star not fatter than this one, or else of the slimmest there is. */
const valleyLine = (points: number, tipAngle: Degrees, radius: number, valleyRadius: number): ValleyLine => {
  const slimmest = Math.max(1, Math.ceil(points / 2) - 1)
  const fattest = Math.min(2, slimmest)
  let apart = slimmest
  for (let step = fattest; step <= slimmest; step++) {
    if (regularTipAngle(points, step) <= tipAngle + SAME_ANGLE) {
      apart = step
      break
    }
  }
  const half = Math.PI / points
  const dip = valleyRadius * maths.cos((apart - 1) * half) - radius * maths.cos(apart * half)
  return { apart, dip: mm(dip) }
}

/** Direction of tip `index` from the centre: tip 0 straight up, counted counter-clockwise; halves are valleys. */
export const cornerDirection = (points: number, index: number): Radians =>
  (Math.PI / 2 + (index * 2 * Math.PI) / points) as Radians

/** Tips and valleys by turns, counter-clockwise from the tip that points straight up, centre at the origin. */
export const starCorners = (points: number, radius: number, valleyRadius: number): Point[] =>
  Array.from({ length: 2 * points }, (_, corner) =>
    polar(corner % 2 === 0 ? radius : valleyRadius, cornerDirection(points, corner / 2)),
  )

/** The star's outline: closed, counter-clockwise, one tip up, centre at the origin. */
export const starOutline = (star: Star): Outline =>
  closedOutline(starCorners(star.points, star.radius, star.valleyRadius))
