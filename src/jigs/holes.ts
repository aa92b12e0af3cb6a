import { circle, type Outline } from '../geometry/outline.js'
import { add, between, type Point, scale } from '../geometry/point.js'
import type { JigStock } from '../order/order.js'

/** Round holes evenly along a line, from one end to the other. */
export const holesAlong = (from: Point, to: Point, count: number, diameter: number): Outline[] =>
  Array.from({ length: count }, (_, index) =>
    circle(between(from, to, count === 1 ? 0.5 : index / (count - 1)), diameter / 2),
  )

/** The four holes of a toggle clamp's foot; its arm points along `along`, of length 1. */
export const clampHoles = (
  middle: Point,
  along: Point,
  { clampAcross, clampAlong, screw }: JigStock,
): Outline[] =>
  clampCorners(middle, along, clampAcross, clampAlong).map((corner) => circle(corner, screw / 2))

/** Corners of a rectangle about its middle, counter-clockwise. */
export const clampCorners = (middle: Point, along: Point, across: number, length: number): Point[] => {
  const side = { x: -along.y, y: along.x }
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([a = 0, s = 0]) => add(middle, add(scale(along, (a * length) / 2), scale(side, (s * across) / 2))))
}
