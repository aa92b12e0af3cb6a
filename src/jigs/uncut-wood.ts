import { encloses } from '../geometry/crossings.js'
import { leftPart } from '../geometry/half-plane.js'
import { blankCorners, kite } from '../geometry/kite.js'
import { distanceToEdge } from '../geometry/leaves-room.js'
import { edges, type Outline } from '../geometry/outline.js'
import { direction, type Point } from '../geometry/point.js'
import type { StarPlan } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { SHOP } from '../units/tolerance.js'
import { type BladeLine, fromBlade } from './blade-line.js'

/** The joint edge that is cut, in the kite's own place: the tip at the origin, a tip edge along the fence. */
export const jointBlade = ({ star }: StarPlan): BladeLine => {
  const { nearValley, centre } = kite(star)
  return { foot: nearValley, along: direction(nearValley, centre) }
}

/** What cut 2 leaves of the blank on the cradle, with the waste that cut 3 takes off. */
export const uncutWood = (plan: StarPlan): Point[] => {
  const { foot, along } = jointBlade(plan)
  return leftPart(blankCorners(plan.star, plan.blank.side), foot, along)
}

/** Where the blade leaves the wood in cut 2, in the kite's own place. */
export const endOfCut = (plan: StarPlan): Point => {
  const blade = jointBlade(plan)
  return uncutWood(plan)
    .filter((corner) => fromBlade(blade, corner) < SHOP)
    .reduce((end, corner) => (corner.y > end.y ? corner : end), kite(plan.star).centre)
}

/** How far what cut 2 takes off reaches past the blade, square to it. */
export const pastBlade = (plan: StarPlan): Mm => {
  const blade = jointBlade(plan)
  return mm(
    Math.max(0, ...blankCorners(plan.star, plan.blank.side).map((corner) => -fromBlade(blade, corner))),
  )
}

/** How far wood that lies on a base sticks out over its edges; nothing where the base is as large. */
export const pastBase = (wood: Outline, base: Outline): Mm =>
  mm(
    Math.max(
      0,
      ...wood.vertices
        .filter((corner) => !encloses(base.vertices, corner))
        .map((corner) => Math.min(...edges(base).map((edge) => distanceToEdge(corner, edge)))),
    ),
  )
