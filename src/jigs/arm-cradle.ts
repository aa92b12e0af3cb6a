import { leftPart } from '../geometry/half-plane.js'
import { hull } from '../geometry/hull.js'
import { kite, kiteInscribed, kiteOutline } from '../geometry/kite.js'
import { distanceToEdge } from '../geometry/leaves-room.js'
import { circle, closedOutline, edges, type Outline } from '../geometry/outline.js'
import {
  add,
  between,
  distance,
  leftOf,
  type Point,
  point,
  polar,
  scale,
  subtract,
} from '../geometry/point.js'
import type { JigStock } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { mm, toRadians } from '../units/convert.js'
import { SHOP } from '../units/tolerance.js'
import { type BladeLine, fromBlade, onBlade } from './blade-line.js'
import { type ClampPlace, clampPlace, RIM } from './clamp-place.js'
import { beside, clampCorners, clampHoles, crossAt, holesAlong } from './holes.js'
import type { Jig, JigPart } from './jig.js'
import { endOfCut, jointBlade, uncutWood } from './uncut-wood.js'

/** In mm: how wide the fence strip and the tip face's block are, at least: beside their screws stands the panel's thickness. */
const STRIP = 25
const BLOCK = 40
/** The strip is at least this long, behind the tip or beside it. */
const LEAST_STRIP = 80
/** Screws and holes stay this far from the blade, and their middles from a part's ends, at least. */
const CLEAR = 15
/** Screws in a row stand so many of their diameters apart, at least. */
const APART = 3
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
  const blade = jointBlade(plan)
  const block = tipBlock(plan, stock)
  const stripWidth = stripWide(stock)
  const rim = beside(RIM, stock)
  const tipAway = fromBlade(blade, point(0, 0))
  const half = halfBar(tipAway, stock)
  // On the arm's axis; as near to its middle as the bar's nose may come to the blade.
  const noseAway = Math.max(kiteInscribed(star), half + NOSE_CLEAR)
  const nose = between(centre, point(0, 0), noseAway / tipAway)
  // Uncut, the wood lies there for cut 2; turned over for cut 3 it is the arm, which the blank holds.
  const blank = uncutWood(plan)
  const clamp = clampPlace(nose, blade, [block, blank], stock)
  const foot = clampCorners(
    clamp.at,
    clamp.toArm,
    stock.clampAcross + 2 * rim,
    stock.clampAlong + stock.clampSlot + 2 * rim,
  )
  const past = onBlade(blade, centre.y + PAST)
  const low = onBlade(blade, -stripWidth)
  const beyond = [nearValley, centre, farValley, ...block, ...foot, past, low]
  const clear = beside(CLEAR, stock)
  const screwsFrom = (clear + stock.screw) / blade.along.y
  const left = Math.min(...beyond.map(({ x }) => x), low.x - LEAST_STRIP - screwsFrom, -BEHIND_TIP)
  const strip = [point(left, -stripWidth), low, nearValley, point(left, 0)]
  const base = hull([...strip, ...beyond])
  const stripHoles = holesAlong(
    point(left + clear, -stripWidth / 2),
    point(onBlade(blade, -stripWidth / 2).x - screwsFrom, -stripWidth / 2),
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
      inner: [],
      seats: [],
      pilots: stripHoles,
      marks: stripHoles.flatMap(crossAt),
    },
    {
      name: 'arm cradle, tip block',
      word: 'tip block',
      outer: closedOutline(block),
      inner: [],
      seats: [],
      pilots: blockHoles,
      marks: blockHoles.flatMap(crossAt),
    },
    holdDownBar(clamp, nose, half, stock),
  ]
  return {
    name: 'arm-cradle',
    parts,
    inUse: { wood: [arm], uncut: closedOutline(blank), blade: [low, past] },
    hands: [
      { place: 'the clamp', at: clamp.at, fromBlade: mm(nearestCorner(blade, foot)) },
      { place: "the bar's nose", at: nose, fromBlade: mm(fromBlade(blade, nose)) },
    ],
  }
}

/** How far from the fence the blade must reach: across the cradle's strip, and to the end of cut 2 in the uncut wood. */
export const cradleReach = (plan: StarPlan, stock: JigStock): Mm =>
  mm(distance(onBlade(jointBlade(plan), -stripWide(stock)), endOfCut(plan)))

const stripWide = (stock: JigStock): number => beside(STRIP / 2, stock) * 2

/** The block beside the far tip edge, from the dust notch at the tip to the far valley. */
const tipBlock = ({ star }: StarPlan, stock: JigStock): Point[] => {
  const along = polar(1, toRadians(star.tipAngle))
  const back = scale(leftOf(along), beside(BLOCK / 2, stock) * 2)
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

/**
 * How far the tip is from the blade, and from where on the hold-down finds room on the arm: a shorter arm has no
 * cradle.
 */
export const holdRoom = (plan: StarPlan, { bolt }: JigStock): { readonly is: Mm; readonly least: Mm } => ({
  is: mm(fromBlade(jointBlade(plan), point(0, 0))),
  least: mm(bolt + 2 * WALL),
})

const nearestCorner = (blade: BladeLine, corners: readonly Point[]): number =>
  Math.min(...corners.map((corner) => fromBlade(blade, corner)))

/**
 * Screws along the middle of the block, away from the blade and its edges: two at least, on one it would turn; one only
 * where there is no room for more.
 */
const blockScrews = (
  block: readonly Point[],
  blade: BladeLine,
  { screw, thickness }: JigStock,
): Outline[] => {
  const [a, b, c, d] = block
  if (!a || !b || !c) return []
  const [from, to] = [between(a, d ?? c, 0.5), between(b, c, 0.5)]
  const sides = edges(closedOutline(block))
  const places = Array.from({ length: 13 }, (_, step) => between(from, to, 0.2 + step / 20)).filter(
    (at) => fromBlade(blade, at) >= CLEAR + screw,
  )
  const within = (wall: number): Point[] =>
    places.filter((at) => sides.every((edge) => distanceToEdge(at, edge) >= screw / 2 + wall - SHOP))
  const [strong, thin] = [spread(within(thickness), screw), spread(within(WALL), screw)]
  const chosen = strong.length > 1 || thin.length <= strong.length ? strong : thin
  return chosen.map((at) => circle(at, screw / 2))
}

/** Of places in a row the first, the last and the middle one, no nearer to each other than screws may be. */
const spread = (row: readonly Point[], screw: number): Point[] => {
  const [first, middle, last] = [row[0], row[Math.floor(row.length / 2)], row.at(-1)]
  if (!first || !middle || !last) return []
  const room = distance(first, last)
  if (room < APART * screw) return [middle]
  return room < 2 * APART * screw ? [first, last] : [first, middle, last]
}

/** It lies over the base; cut as it lies there, drawn in the assembly only. */
const holdDownBar = ({ at, toArm }: ClampPlace, nose: Point, half: number, stock: JigStock): JigPart => {
  const side = scale(leftOf(toArm), half)
  const tail = add(at, scale(toArm, -stock.clampAlong / 2 - beside(RIM, stock)))
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
