import { circle, closedOutline } from '../geometry/outline.js'
import { add, leftOf, type Point, point, polar, scale } from '../geometry/point.js'
import type { JigStock } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { toRadians } from '../units/convert.js'
import type { JigPart } from './jig.js'

/** In mm: how thick the spacer is at least, square to its faces, and how far its grip stands out past the board. */
const THICK = 25
const GRIP = 60
/** Between the spacer and the fence, for dust. */
const DUST = 3

/** What keeps the board off a stop until it is lifted out, so that no blank is trapped between stop and blade. */
export interface Spacer {
  /** Counter-clockwise, as it lies against the board's slanted end, which begins at the origin. */
  readonly corners: readonly Point[]
  /** The stop's face, from the fence to the board's far edge. */
  readonly face: readonly [Point, Point]
  /** Middle of the hole to lift it by, and the end of it that comes nearest to the blade. */
  readonly grip: Point
  readonly end: Point
}

/** Beside the hole in its grip it is at least as thick as the panel. */
export const spacer = ({ star, blank }: StarPlan, { bolt, thickness }: JigStock): Spacer => {
  const thick = Math.max(THICK, bolt + 2 * thickness)
  const along = polar(1, toRadians(star.tipAngle))
  const back = point(-thick / along.y, 0)
  const low = scale(along, DUST / along.y)
  // Its end is square, so that the grip is as wide as it is thick; both faces reach past the board.
  const reach = blank.side + GRIP + Math.max(0, (-thick * along.x) / along.y)
  const end = scale(along, reach)
  const across = scale(leftOf(along), thick)
  return {
    corners: [add(back, low), low, end, add(end, across)],
    face: [back, add(back, scale(along, blank.side))],
    grip: add(scale(across, 0.5), scale(along, reach - thick / 2)),
    end,
  }
}

/** The spacer as a part of a jig. */
export const spacerPart = (
  jig: string,
  corners: readonly Point[],
  grip: Point,
  { bolt }: JigStock,
): JigPart => ({
  name: `${jig}, spacer`,
  word: 'spacer',
  outer: closedOutline(corners),
  inner: [circle(grip, bolt / 2)],
  seats: [],
  marks: [],
})
