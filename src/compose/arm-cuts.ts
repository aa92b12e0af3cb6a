import type { Path } from '../drawing/model.js'
import { line } from '../drawing/shapes.js'
import { hatch } from '../geometry/hatch.js'
import { blankCorners, blankIsArm, kite } from '../geometry/kite.js'
import { add, direction, leftOf, type Point, point, scale } from '../geometry/point.js'
import type { StarPlan } from '../plan/plan.js'
import { radians } from '../units/convert.js'
import { SAME_POINT } from '../units/tolerance.js'

/** How far a cut line and the board are drawn past the wood. */
export const OVERRUN = 6

/** The board's edges, the ends of the blank and the cuts beyond the kite; nothing lies on another line. */
export const boardLines = ({ star, blank }: StarPlan): Path[] => {
  const { tip, nearValley, centre, farValley } = kite(star)
  const [, lowRight, highRight, highLeft] = blankCorners(star, blank.side)
  const top = star.armStrip
  const left = Math.min(0, highLeft.x) - OVERRUN
  const right = Math.max(lowRight.x, highRight.x) + OVERRUN
  const slope = direction(tip, farValley)
  const back = scale(slope, -1)
  const edges = [
    line('GUIDE', point(left, 0), tip),
    line('GUIDE', nearValley, point(right, 0)),
    ...cutLine(farValley, highLeft, slope),
    ...cutLine(tip, tip, back),
    ...cutLine(lowRight, lowRight, back),
  ]
  if (blankIsArm(star)) {
    return [
      ...edges,
      line('GUIDE', point(left, top), farValley),
      line('GUIDE', centre, point(right, top)),
      ...cutLine(centre, centre, slope),
    ]
  }
  const [near, far] = jointExits({ star, blank })
  return [
    ...edges,
    line('GUIDE', point(left, top), point(right, top)),
    ...cutLine(lowRight, highRight, slope),
    ...cutLine(centre, near, direction(nearValley, centre)),
    ...cutLine(nearValley, nearValley, direction(centre, nearValley)),
    ...cutLine(centre, far, direction(farValley, centre)),
  ]
}

/** From `from` through `to`, the last point on the wood, and a little past it. */
const cutLine = (from: Point, to: Point, along: Point): Path[] => [
  line('GUIDE', from, add(to, scale(along, OVERRUN)), 'double-chain'),
]

/** Where the two joint cuts, drawn from the valleys through the centre, leave the blank. */
export const jointExits = ({ star, blank }: Pick<StarPlan, 'star' | 'blank'>): readonly [Point, Point] => {
  const { nearValley, centre, farValley } = kite(star)
  const corners = blankCorners(star, blank.side)
  return [
    exit(centre, direction(nearValley, centre), corners),
    exit(centre, direction(farValley, centre), corners),
  ]
}

/** The point where a ray from inside (or on) a counter-clockwise parallelogram leaves it. */
const exit = (from: Point, along: Point, corners: readonly Point[]): Point => {
  let reach = Infinity
  corners.forEach((a, index) => {
    const b = corners[(index + 1) % corners.length] ?? a
    const inward = leftOf(direction(a, b))
    const room = inward.x * (from.x - a.x) + inward.y * (from.y - a.y)
    const speed = -(inward.x * along.x + inward.y * along.y)
    if (speed > SAME_POINT) reach = Math.min(reach, Math.max(0, room) / speed)
  })
  return add(from, scale(along, reach))
}

export const wasteLines = ({ star, blank }: StarPlan): Path[] => {
  const { nearValley, centre, farValley } = kite(star)
  const [, lowRight, highRight, highLeft] = blankCorners(star, blank.side)
  const spacing = Math.max(4, star.armStrip / 40)
  return hatch(
    [nearValley, lowRight, highRight, highLeft, farValley, centre],
    radians(-Math.PI / 4),
    spacing,
  ).map(([from, to]) => line('GUIDE', from, to))
}

/** The far side of the blade's slot, on the waste side of each cut. */
export const kerfLines = ({ star, blank }: StarPlan, kerf: number): Path[] => {
  const { tip, nearValley, centre, farValley } = kite(star)
  const [, lowRight, highRight, highLeft] = blankCorners(star, blank.side)
  const [near, far] = jointExits({ star, blank })
  const beside = (a: Point, b: Point, toward: Point): Path => {
    const shift = scale(toward, kerf)
    return line('GUIDE', add(a, shift), add(b, shift), 'dashed')
  }
  return [
    beside(tip, highLeft, leftOf(direction(tip, farValley))),
    beside(lowRight, highRight, leftOf(direction(farValley, tip))),
    ...(blankIsArm(star)
      ? []
      : [
          beside(nearValley, near, leftOf(direction(centre, nearValley))),
          beside(farValley, far, leftOf(direction(farValley, centre))),
        ]),
  ]
}
