import { leftPart } from '../geometry/half-plane.js'
import { hull } from '../geometry/hull.js'
import { kite, kiteOutline } from '../geometry/kite.js'
import { distanceToEdge } from '../geometry/leaves-room.js'
import { circle, closedOutline, edges, type Outline } from '../geometry/outline.js'
import {
  add,
  between,
  direction,
  leftOf,
  type Point,
  point,
  polar,
  scale,
  subtract,
  turn,
} from '../geometry/point.js'
import type { JigStock } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { degrees, mm, toRadians } from '../units/convert.js'
import { type BladeLine, fromBlade, onBlade } from './blade-line.js'
import { clampCorners, clampHoles, holesAlong } from './holes.js'
import type { Jig, JigPart } from './jig.js'

/** In mm: how wide the fence strip and the tip face's block are. */
const STRIP = 25
const BLOCK = 40
/** The strip is at least this long, behind the tip or beside it. */
const LEAST_STRIP = 80
/** Screws and holes stay this far from the blade, and their middles from a part's ends. */
const CLEAR = 15
/** Wood around the clamp's foot. */
const RIM = 12
/** The base goes on this far past the arm, so that its edge can be seen beside the blade. */
const PAST = 15
/** Half of the hold-down bar's width, where the panel's thickness beside its hole is less; and how far its nose stays from the blade. */
const HALF_BAR = 15
const NOSE_CLEAR = 3
/** Wood beside a hole. */
const WALL = 3
/** The base and the strip go on behind the tip. */
const BEHIND_TIP = 20
/** How far the tip stays free of its face, for dust: this, or an eighth of the edge. */
const NOTCH = 6

/**
 * A base with a fence strip and a block whose face follows the arm's far tip edge; the arm lies between them for both
 * joint cuts, turned over for the second. The base ends where the blade passes: its edge is the joint edge's line. A
 * toggle clamp, screwed to the base away from the blade, carries a bar that reaches over the arm.
 *
 * @param plan of a star whose arms have joint cuts, not a rhombus, and the room that {@link holdRoom} asks for
 */
export const armCradle = (plan: StarPlan, stock: JigStock): Jig => {
  const { star } = plan
  const { nearValley, centre, farValley } = kite(star)
  const blade: BladeLine = { foot: nearValley, along: direction(nearValley, centre) }
  const block = tipBlock(plan)
  const tipAway = fromBlade(blade, point(0, 0))
  const half = halfBar(tipAway, stock)
  // On the arm's axis; as near to its middle as the bar's nose may come to the blade.
  const noseAway = Math.max(plan.kite.area / (star.tipEdge + star.jointEdge), half + NOSE_CLEAR)
  const nose = between(centre, point(0, 0), noseAway / tipAway)
  const clamp = clampPlace(nose, blade, block, stock)
  const foot = clampCorners(
    clamp.at,
    clamp.toArm,
    stock.clampAcross + 2 * RIM,
    stock.clampAlong + stock.clampSlot + 2 * RIM,
  )
  const past = onBlade(blade, centre.y + PAST)
  const low = onBlade(blade, -STRIP)
  const beyond = [nearValley, centre, farValley, ...block, ...foot, past, low]
  const screwsFrom = (CLEAR + stock.screw) / blade.along.y
  const left = Math.min(...beyond.map(({ x }) => x), low.x - LEAST_STRIP - screwsFrom, -BEHIND_TIP)
  const strip = [point(left, -STRIP), low, nearValley, point(left, 0)]
  const base = hull([...strip, ...beyond])
  const stripHoles = holesAlong(
    point(left + CLEAR, -STRIP / 2),
    point(onBlade(blade, -STRIP / 2).x - screwsFrom, -STRIP / 2),
    3,
    stock.screw,
  )
  const blockHoles = blockScrews(block, blade, stock)
  const arm = kiteOutline(kite(star))
  const parts: JigPart[] = [
    {
      name: 'arm cradle, base',
      word: 'base',
      outer: closedOutline(base),
      inner: [...stripHoles, ...blockHoles, ...clampHoles(clamp.at, clamp.toArm, stock)],
      seats: [],
      marks: [{ closed: false, vertices: [point(left, 0), nearValley] }, closedOutline(block), arm],
    },
    {
      name: 'arm cradle, fence strip',
      word: 'fence strip',
      outer: closedOutline(strip),
      inner: stripHoles,
      seats: [],
      marks: [],
    },
    {
      name: 'arm cradle, tip block',
      word: 'tip block',
      outer: closedOutline(block),
      inner: blockHoles,
      seats: [],
      marks: [],
    },
    holdDownBar(clamp, nose, half, stock),
  ]
  return {
    name: 'arm-cradle',
    parts,
    inUse: { wood: [arm], blade: [low, past] },
    hands: [
      { place: 'the clamp', at: clamp.at, fromBlade: mm(nearestCorner(blade, foot)) },
      { place: "the bar's nose", at: nose, fromBlade: mm(fromBlade(blade, nose)) },
    ],
  }
}

/** The block beside the far tip edge, from the dust notch at the tip to the far valley. */
const tipBlock = ({ star }: StarPlan): Point[] => {
  const along = polar(1, toRadians(star.tipAngle))
  const back = scale(leftOf(along), BLOCK)
  const start = scale(along, Math.min(NOTCH, star.tipEdge / 8))
  const end = scale(along, star.tipEdge)
  const whole = [start, end, add(end, back), add(start, back)]
  // Where the face leans back over the tip, the dust goes out below the block.
  return leftPart(whole, start, point(1, 0)).length > 2 && star.tipAngle > 90
    ? leftPart(whole, start, point(1, 0))
    : whole
}

/** An arm whose tip is near the blade gets a narrow bar. */
const halfBar = (tipAway: number, { bolt, thickness }: JigStock): number =>
  Math.min(Math.max(HALF_BAR, bolt / 2 + thickness), tipAway / 2)

/** How wide the hold-down bar is beside its hole. */
export const barWall = (plan: StarPlan, stock: JigStock): Mm =>
  mm(halfBar(holdRoom(plan, stock).is, stock) - stock.bolt / 2)

/**
 * How far the tip is from the blade, and from where on the hold-down finds room on the arm: a shorter arm has no
 * cradle.
 */
export const holdRoom = ({ star }: StarPlan, { bolt }: JigStock): { readonly is: Mm; readonly least: Mm } => {
  const { nearValley, centre } = kite(star)
  const is = fromBlade({ foot: nearValley, along: direction(nearValley, centre) }, point(0, 0))
  return { is: mm(is), least: mm(bolt + 2 * WALL) }
}

interface ClampPlace {
  readonly at: Point
  /** From the clamp to where the bar presses; of length 1. */
  readonly toArm: Point
  readonly reach: number
}

/** Turns from the square to the blade that are tried for the bar, the square itself first. */
const TURNS = [0, -15, 15, -30, 30, -45, 45, -60, 60, -75, 75]

/** The nearest place for the clamp that is far enough from the blade and beside block and strip. */
const clampPlace = (nose: Point, blade: BladeLine, block: readonly Point[], stock: JigStock): ClampPlace => {
  const found = TURNS.map((turned) => placeAlong(nose, blade, block, stock, turned))
  return found.reduce((best, each) => (each.reach < best.reach - 1 ? each : best))
}

const placeAlong = (
  nose: Point,
  blade: BladeLine,
  block: readonly Point[],
  stock: JigStock,
  turned: number,
): ClampPlace => {
  const way = turn(leftOf(blade.along), toRadians(degrees(turned)))
  const [across, length] = [stock.clampAcross + 2 * RIM, stock.clampAlong + stock.clampSlot + 2 * RIM]
  const fits = (corners: readonly Point[]): boolean =>
    corners.every((corner) => fromBlade(blade, corner) >= stock.hands && corner.y >= 2) &&
    apart(corners, block)
  for (let reach = length; ; reach += 5) {
    const at = add(nose, scale(way, reach))
    if (fits(clampCorners(at, way, across, length))) return { at, toArm: scale(way, -1), reach }
    if (reach > 20_000) return { at, toArm: scale(way, -1), reach: Number.POSITIVE_INFINITY }
  }
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

const nearestCorner = (blade: BladeLine, corners: readonly Point[]): number =>
  Math.min(...corners.map((corner) => fromBlade(blade, corner)))

/** Screws along the middle of the block, away from the blade and its edges. */
const blockScrews = (block: readonly Point[], blade: BladeLine, { screw }: JigStock): Outline[] => {
  const [a, b, c, d] = block
  if (!a || !b || !c) return []
  const [from, to] = [between(a, d ?? c, 0.5), between(b, c, 0.5)]
  const sides = edges(closedOutline(block))
  const free = (at: Point): boolean =>
    fromBlade(blade, at) >= CLEAR + screw &&
    sides.every((edge) => distanceToEdge(at, edge) >= screw / 2 + WALL)
  return [0.2, 0.5, 0.8]
    .map((share) => between(from, to, share))
    .filter(free)
    .map((at) => circle(at, screw / 2))
}

/** It lies over the base; cut as it lies there, drawn in the assembly only. */
const holdDownBar = ({ at, toArm }: ClampPlace, nose: Point, half: number, stock: JigStock): JigPart => {
  const side = scale(leftOf(toArm), half)
  const tail = add(at, scale(toArm, -stock.clampAlong / 2 - RIM))
  return {
    name: 'arm cradle, hold-down bar',
    word: 'hold-down bar',
    outer: closedOutline([
      subtract(tail, side),
      { ...subtract(nose, side), bulge: 1 },
      add(nose, side),
      add(tail, side),
    ]),
    inner: [circle(at, stock.bolt / 2), circle(nose, stock.bolt / 2)],
    seats: [],
    marks: [],
  }
}
