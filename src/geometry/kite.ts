import type { Mm } from '../units/brand.js'
import { degrees, mm, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { SAME_ANGLE } from '../units/tolerance.js'
import { closedOutline, type Outline } from './outline.js'
import { add, type Point, point, polar, scale } from './point.js'
import type { Star } from './star.js'

/**
 * The outline of one arm as it lies on a board: tip at the origin, one tip edge along +x, counter-clockwise.
 */
export interface Kite {
  readonly tip: Point
  /** The valley on the board's edge. */
  readonly nearValley: Point
  readonly centre: Point
  /** The valley that stands away from the board's edge. */
  readonly farValley: Point
}

export const kite = (star: Star): Kite => ({
  tip: point(0, 0),
  nearValley: point(star.tipEdge, 0),
  centre: polar(star.radius, toRadians(degrees(star.tipAngle / 2))),
  farValley: polar(star.tipEdge, toRadians(star.tipAngle)),
})

export const kiteOutline = ({ tip, nearValley, centre, farValley }: Kite): Outline =>
  closedOutline([tip, nearValley, centre, farValley])

/** Valley to valley. */
export const kiteWidth = (star: Star): Mm =>
  mm(2 * star.tipEdge * maths.sin(toRadians(degrees(star.tipAngle / 2))))

/** In mm²: half the product of the diagonals. */
export const kiteArea = (star: Star): number => (star.radius * kiteWidth(star)) / 2

/** Radius, in mm, of the circle that touches all four edges. */
export const kiteInscribed = (star: Star): number => kiteArea(star) / (star.tipEdge + star.jointEdge)

/**
 * The parallelogram an arm is cut from, in the kite's own place: corners from the tip, counter-clockwise, the first
 * side of the given length along +x.
 */
export const blankCorners = (star: Star, side: Mm): readonly [Point, Point, Point, Point] => {
  const along = point(side, 0)
  const up = polar(star.armStrip / maths.sin(toRadians(star.tipAngle)), toRadians(star.tipAngle))
  return [point(0, 0), along, add(along, up), up]
}

/**
 * Where the chamfer on the two tip edges begins: a chain valley side, inset tip, valley side, `width` inside the
 * outline. The width must be less than the star's edge distance, where the chain would reach the centre.
 */
export const chamferChain = (star: Star, width: Mm): readonly [Point, Point, Point] => {
  const { nearValley, centre, farValley } = kite(star)
  const insetTip = scale(centre, width / star.edgeDistance)
  // A line parallel to the tip edge meets the joint edge the same fraction of the way to the centre.
  const toward = (valley: Point): Point =>
    add(scale(valley, 1 - width / star.edgeDistance), scale(centre, width / star.edgeDistance))
  return [toward(nearValley), insetTip, toward(farValley)]
}

/** Is the arm a rhombus, so that its blank has nothing left to cut off? So for tip angle = centre angle, as in {6/2}. */
export const blankIsArm = (star: Star): boolean => Math.abs(star.tipAngle - star.centreAngle) < SAME_ANGLE
