import { leftPart } from '../geometry/half-plane.js'
import { blankCorners, blankIsArm, kite } from '../geometry/kite.js'
import { add, direction, type Point, point, polar, scale, turn } from '../geometry/point.js'
import type { PlannedCut, StarPlan } from '../plan/plan.js'
import type { Mm, Radians } from '../units/brand.js'
import { degrees, mm, radians, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'

/** A straight stretch. */
export type Stretch = readonly [Point, Point]

/**
 * One cut at the saw as its operator sees it from above, in mm of the workshop: the fence's face along y = 0, the wood
 * below it, the operator at the bottom, the stop to the right of the blade.
 */
export interface SawScene {
  readonly name: 'Cut 1' | 'Cut 2' | 'Cut 3'
  readonly cut: PlannedCut
  /** Which way the face side of the board looks, which lies upwards at cut 1. */
  readonly faceSide: 'up' | 'down'
  /** Before the cut; of a board its end only. */
  readonly wood: readonly Point[]
  /** Where the board goes on; absent for a blank. */
  readonly goesOn?: readonly Point[]
  /** Between stop and blade: the blank at cut 1, the arm after cut 3. */
  readonly kept: readonly Point[]
  /** What falls off beyond the blade's near side, its slot included; empty at cut 1. */
  readonly waste: readonly Point[]
  /** Edges of the finished arm that are still to be cut afterwards. */
  readonly toCome: readonly Stretch[]
  /** Both sides of the slot, from behind the fence to past the wood. The near side is the stop's. */
  readonly blade: { readonly near: Stretch; readonly far: Stretch }
  readonly handle: Point
  /** Where the wood touches the stop, and where the blade's near side meets the wood's edge at the fence. */
  readonly measured: Stretch
  /** How far these are apart. */
  readonly length: Mm
  readonly stop: readonly Point[]
  /** Is the stop taken away before the blade comes down? */
  readonly stopLiftsOut: boolean
  readonly wedge?: readonly Point[]
  /** The fence's face, open where the blade passes. */
  readonly fence: readonly [Stretch, Stretch]
  /** Where the blade's near side crosses the fence's face. */
  readonly pivot: Point
  /** A size to draw stop, handle and overruns by: some 1/24 of the scene. */
  readonly unit: number
}

/** The cuts of one arm in order. A rhombus arm has only the first. */
export const sawScenes = (plan: StarPlan, kerf: number): SawScene[] => {
  const cuts = [boardCut(plan, kerf)]
  if (!blankIsArm(plan.star)) cuts.push(...jointCuts(plan))
  return cuts.map((setUp) => asTheOperatorSees(setUp, plan, kerf))
}

/**
 * A cut as the arm pattern has it: the wood's edge along y = 0 and the wood above it, the tip at the origin. Then the
 * fence is turned by what a wedge takes.
 */
interface SetUp
  extends Pick<
    SawScene,
    'name' | 'cut' | 'faceSide' | 'wood' | 'kept' | 'waste' | 'toCome' | 'stopLiftsOut'
  > {
  readonly goesOn?: readonly Point[]
  /** Where the blade's near side meets the wood's edge, from the tip. */
  readonly reach: number
  /** Of the blade, away from the fence; of length 1. */
  readonly along: Point
  /** End of the wood's edge, from the tip. */
  readonly edge: number
  /** How high the stop's face goes. */
  readonly stopHeight: number
}

const unitOf = ({ star, blank }: StarPlan): number => {
  const [, , , highLeft] = blankCorners(star, blank.side)
  return (blank.side + Math.abs(highLeft.x) + star.armStrip) / 24
}

const boardCut = (plan: StarPlan, kerf: number): SetUp => {
  const { star, blank, firstCut } = plan
  const corners = blankCorners(star, blank.side)
  const [tip, , highRight, highLeft] = corners
  const end =
    Math.max(blank.side, highRight.x) + kerf / maths.sin(toRadians(star.tipAngle)) + 4 * unitOf(plan)
  const { nearValley, centre, farValley } = kite(star)
  return {
    name: 'Cut 1',
    cut: firstCut,
    faceSide: 'up',
    wood: [tip, point(end, 0), point(end, star.armStrip), highLeft],
    goesOn: breakLine(end, star.armStrip, unitOf(plan)),
    kept: corners,
    waste: [],
    toCome: blankIsArm(star)
      ? []
      : [
          [nearValley, centre],
          [centre, farValley],
        ],
    reach: blank.side,
    along: polar(1, toRadians(star.tipAngle)),
    edge: end,
    stopHeight: star.armStrip,
    stopLiftsOut: true,
  }
}

/** A line with a zigzag in its middle (ISO 128-2, 02: limit of a partial view). */
const breakLine = (x: number, height: number, unit: number): Point[] => [
  point(x, 0),
  point(x, height * 0.4),
  point(x + unit / 2, height * 0.45),
  point(x - unit / 2, height * 0.55),
  point(x, height * 0.6),
  point(x, height),
]

const jointCuts = (plan: StarPlan): SetUp[] => {
  const { star, blank, jointCut, firstCut } = plan
  const { nearValley, centre, farValley } = kite(star)
  const along = direction(nearValley, centre)
  const corners = blankCorners(star, blank.side)
  const second = leftPart(corners, nearValley, along)
  const turnedOver = second.map((corner) => mirrored(corner, toRadians(degrees(star.tipAngle / 2)))).reverse()
  const both = {
    cut: jointCut,
    reach: star.tipEdge,
    along,
    edge: blank.side,
    stopHeight: firstCut.miter <= 0 ? star.armStrip : Math.min(star.armStrip, 4 * unitOf(plan)),
    stopLiftsOut: false,
  }
  const beyond = (wood: readonly Point[]) => leftPart(wood, nearValley, scale(along, -1))
  return [
    {
      ...both,
      name: 'Cut 2',
      faceSide: 'up',
      wood: corners,
      kept: second,
      waste: beyond(corners),
      toCome: [[centre, farValley]],
    },
    {
      ...both,
      name: 'Cut 3',
      faceSide: 'down',
      wood: turnedOver,
      kept: leftPart(turnedOver, nearValley, along),
      waste: beyond(turnedOver),
      toCome: [],
    },
  ]
}

/** Mirrored in the line through the origin at `angle`: what turning a board over about that line does to its outline. */
const mirrored = ({ x, y }: Point, angle: Radians): Point => ({
  x: x * maths.cos(2 * angle) + y * maths.sin(2 * angle),
  y: x * maths.sin(2 * angle) - y * maths.cos(2 * angle),
})

/**
 * The stop's block beside the tip. Its face is square to the wood's edge and meets the tip alone; at cut 1, and where
 * the slanted edge overhangs the tip, the face follows that edge.
 */
const stopBlock = ({ stopLiftsOut, stopHeight }: SetUp, { star }: StarPlan, unit: number): Point[] => {
  const follows = stopLiftsOut || star.tipAngle > 90
  const top = follows
    ? polar(stopHeight / maths.sin(toRadians(star.tipAngle)), toRadians(star.tipAngle))
    : point(0, stopHeight)
  const outer = Math.min(0, top.x) - 2.5 * unit
  return [point(0, 0), top, point(outer, top.y), point(outer, 0)]
}

/**
 * A wedge with its thick end on the side the blade leans to turns the wood's edge away from the fence there. Then all
 * is turned by half a turn, for the pattern lies with the fence at the bottom and the operator stands opposite.
 */
const asTheOperatorSees = (setUp: SetUp, plan: StarPlan, kerf: number): SawScene => {
  const { name, cut, faceSide, along, reach, edge, stopLiftsOut } = setUp
  const unit = unitOf(plan)
  const stop = stopBlock(setUp, plan, unit)
  const slope = radians(Math.sign(cut.miter) * toRadians(cut.wedge?.angle ?? degrees(0)))
  const onWedge: Stretch = [point(Math.min(...stop.map(({ x }) => x)), 0), point(edge, 0)]
  const lowest = Math.min(...onWedge.map((end) => turn(end, slope).y))
  const lift = cut.wedge ? unit / 2 - lowest : 0
  const onFence = (at: Point): Point => add(turn(at, slope), point(0, lift))
  const seen = ({ x, y }: Point): Point => point(0 - x, 0 - y)
  const all = (corners: readonly Point[]): Point[] => corners.map((corner) => seen(onFence(corner)))
  const stretch = ([from, to]: Stretch): Stretch => [seen(onFence(from)), seen(onFence(to))]

  const blade = turn(along, slope)
  const past = plan.star.armStrip / along.y + 3 * unit
  const side = (from: number) => {
    const foot = onFence(point(from, 0))
    const crossing = add(foot, scale(blade, -foot.y / blade.y))
    return {
      crossing,
      ends: [add(crossing, scale(blade, (-0.6 * unit) / blade.y)), add(foot, scale(blade, past))] as const,
    }
  }
  const near = side(reach)
  const far = side(reach + kerf / along.y)
  const corners = [...setUp.wood, ...stop].map(onFence)
  const xs = [...corners, ...near.ends, ...far.ends].map(({ x }) => x)
  const [left, right] = [Math.min(...xs), Math.max(...xs)]
  const opening = 1.2 * unit
  return {
    name,
    cut,
    faceSide,
    unit,
    stopLiftsOut,
    wood: all(setUp.wood),
    ...(setUp.goesOn ? { goesOn: all(setUp.goesOn) } : {}),
    kept: all(setUp.kept),
    waste: all(setUp.waste),
    toCome: setUp.toCome.map(stretch),
    stop: all(stop),
    length: mm(reach),
    measured: stretch([point(0, 0), point(reach, 0)]),
    blade: {
      near: [seen(near.ends[0]), seen(near.ends[1])],
      far: [seen(far.ends[0]), seen(far.ends[1])],
    },
    handle: seen(add(near.ends[1], scale(blade, unit))),
    pivot: seen(near.crossing),
    fence: [
      [seen(point(left - unit, 0)), seen(point(near.crossing.x - opening, 0))],
      [seen(point(far.crossing.x + opening, 0)), seen(point(right + unit, 0))],
    ],
    ...(cut.wedge
      ? {
          wedge: [...onWedge.map(onFence), ...onWedge.map((end) => point(onFence(end).x, 0)).reverse()].map(
            seen,
          ),
        }
      : {}),
  }
}
