import { hull } from '../geometry/hull.js'
import { type Outline, outlineSize, turnedOutline } from '../geometry/outline.js'
import { turn } from '../geometry/point.js'
import type { Radians } from '../units/brand.js'
import { radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import type { JigPart } from './jig.js'

/** A part stays as it is where turning it makes its box smaller by less than this share. */
const GAIN = 0.02

/**
 * Turned so far, counter-clockwise, an outline's box is the smallest, and lies rather than stands: parts that lie
 * aslant at the saw take less panel and paper so.
 *
 * @returns more than a quarter turn clockwise, at most a quarter turn counter-clockwise
 */
export const levelling = (outer: Outline): Radians => {
  const corners = hull(outer.vertices)
  let [best, area] = [0, boxArea(outer, radians(0)) * (1 - GAIN)]
  corners.forEach((from, index) => {
    const to = corners[(index + 1) % corners.length] ?? from
    const along = radians(-maths.atan2(to.y - from.y, to.x - from.x))
    const own = boxArea(outer, along)
    if (own < area) {
      area = own
      const { across, height } = outlineSize(turnedOutline(outer, along))
      best = across >= height ? along : along + Math.PI / 2
    }
  })
  const halfTurns = Math.ceil(best / Math.PI - 0.5)
  return radians(best - halfTurns * Math.PI)
}

const boxArea = (outer: Outline, by: Radians): number => {
  const { across, height } = outlineSize(turnedOutline(outer, by))
  return across * height
}

/** The part turned about the origin, as it is cut; where it lies in the jig stays. */
export const turnedPart = (part: JigPart, by: Radians): JigPart => ({
  ...part,
  outer: turnedOutline(part.outer, by),
  inner: part.inner.map((hole) => turnedOutline(hole, by)),
  seats: part.seats.map((seat) => turn(seat, by)),
  marks: part.marks.map((mark) => turnedOutline(mark, by)),
  ...(part.pilots ? { pilots: part.pilots.map((pilot) => turnedOutline(pilot, by)) } : {}),
})

/** The size of a part as it is cut. */
export const levelledSize = (outer: Outline): ReturnType<typeof outlineSize> =>
  outlineSize(turnedOutline(outer, levelling(outer)))
