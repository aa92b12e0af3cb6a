import { add, leftOf, type Point, scale, turn } from '../geometry/point.js'
import type { JigStock } from '../order/order.js'
import { degrees, toRadians } from '../units/convert.js'
import { type BladeLine, fromBlade } from './blade-line.js'
import { beside, clampCorners } from './holes.js'

/** Wood around the clamp's foot, in mm, at least. */
export const RIM = 12

export interface ClampPlace {
  readonly at: Point
  /** From the clamp to where the bar presses; of length 1. */
  readonly toArm: Point
  readonly reach: number
}

/** Turns from the square to the blade that are tried for the bar, the square itself first. */
const TURNS = [0, -15, 15, -30, 30, -45, 45, -60, 60, -75, 75]

/** Steps between places tried along a turn, and the farthest one, in mm. */
const STEP = 5
const FARTHEST = 20_000

/**
 * The nearest place for the clamp that is far enough from the blade, above the strip, and beside what is in its way.
 *
 * @param inTheWay convex polygons, counter-clockwise: the block, and the wood before it is cut
 */
export const clampPlace = (
  nose: Point,
  blade: BladeLine,
  inTheWay: readonly (readonly Point[])[],
  stock: JigStock,
): ClampPlace => {
  const found = TURNS.reduce<ClampPlace | undefined>(
    (best, turned) =>
      placeAlong(nose, blade, inTheWay, stock, turned, best ? best.reach - STEP / 2 : FARTHEST) ?? best,
    undefined,
  )
  if (!found) throw new RangeError('the clamp has no place beside the arm')
  return found
}

/** The nearest along one turn, within so many mm of the nose. */
const placeAlong = (
  nose: Point,
  blade: BladeLine,
  inTheWay: readonly (readonly Point[])[],
  stock: JigStock,
  turned: number,
  within: number,
): ClampPlace | undefined => {
  const way = turn(leftOf(blade.along), toRadians(degrees(turned)))
  const rim = beside(RIM, stock)
  const [across, length] = [stock.clampAcross + 2 * rim, stock.clampAlong + stock.clampSlot + 2 * rim]
  const fits = (corners: readonly Point[]): boolean =>
    corners.every((corner) => fromBlade(blade, corner) >= stock.hands && corner.y >= 2) &&
    inTheWay.every((each) => apart(corners, each))
  for (let reach = length; reach <= within; reach += STEP) {
    const at = add(nose, scale(way, reach))
    if (fits(clampCorners(at, way, across, length))) return { at, toArm: scale(way, -1), reach }
  }
  return undefined
}

/** Do two convex polygons lie on the two sides of one of their own edges' lines? */
const apart = (a: readonly Point[], b: readonly Point[]): boolean =>
  [
    [a, b],
    [b, a],
  ].some(([own = [], other = []]) =>
    own.some((from, index) => {
      const to = own[(index + 1) % own.length] ?? from
      return other.every(({ x, y }) => (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x) <= 0)
    }),
  )
