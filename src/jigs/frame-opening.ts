import {
  add,
  between,
  cross,
  direction,
  dot,
  type Point,
  point,
  polar,
  scale,
  turn,
} from '../geometry/point.js'
import { cornerDirection, type Star } from '../geometry/star.js'
import type { JigStock } from '../order/order.js'
import type { Radians } from '../units/brand.js'
import { degrees, radians, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'

/** The wedges' slope, in mm a mm: it holds by itself, and 8 mm of push close a joint by 1 mm. */
export const WEDGE_SLOPE = 1 / 8
/** In mm: wedges press no nearer to the tip and to the nose's end, and no slot is longer. */
const FROM_TIP = 10
const FROM_NOSE = 5
const LONGEST_SLOT = 120
/** A slot is at least so long: below that a wedge is too small to be pushed. */
export const LEAST_SLOT = 30
/** Share of the slot that its wedge fills; the rest is its way. */
const FILLED = 0.65
/** What glue finds room in, at least, beyond the tips and at the valleys. */
const RELIEF = 12
const VALLEY_RELIEF = 6

/** A place beside a tip edge: so far along it from the tip, so far out from it. */
type Beside = readonly [along: number, out: number]

/** How one arm lies in the opening; its axis along +x, the star's centre at the origin. */
export interface ArmRoom {
  /** Counter-clockwise, from the frame's nose on one side of the arm to that on the other. */
  readonly edge: readonly Point[]
  /** The wedge beside the upper tip edge, in the middle of its way, counter-clockwise. */
  readonly wedge: readonly Point[]
  readonly wedgeSize: { readonly length: number; readonly thin: number; readonly thick: number }
  /** How far a wedge can be pushed to either side of that. */
  readonly way: number
  /** From the centre to the blunt end of the frame's nose between two arms, and to the opening's end beyond the tip. */
  readonly nose: number
  readonly end: number
  /** From the centre to where the nose is wide enough for a key across it, with the panel's thickness around. */
  readonly keyFrom: number
  /** The farthest corner of the opening from the centre. */
  readonly farthest: number
  /** Room along a tip edge for a slot; too little where it is less than {@link LEAST_SLOT}. */
  readonly slotRoom: number
}

/**
 * The opening beside one arm. Beyond the tip it ends straight across; along the tip edge it first lies wider, then
 * slopes in, a wedge between it and the edge, and then lies the clearance off; at the valley the frame's nose is cut
 * off where it is as wide as the panel is thick.
 */
export const armRoom = (star: Star, { clearance, thickness }: JigStock): ArmRoom => {
  const tip = point(star.radius, 0)
  const half = toRadians(degrees(star.centreAngle / 2))
  const axis = polar(1, half)
  const along = direction(tip, scale(axis, star.valleyRadius))
  const out = point(along.y, -along.x)
  const at = ([u, v]: Beside): Point => add(tip, add(scale(along, u), scale(out, v)))
  // Where beside the edge the frame's nose is half as wide as the panel is thick, and clear of the valley.
  const wide = at([0, clearance])
  const noseEnd = Math.min(
    (cross(wide, axis) - thickness / 2) / -cross(along, axis),
    (dot(wide, axis) - star.valleyRadius - VALLEY_RELIEF) / -dot(along, axis),
  )
  const least = Math.max(FROM_TIP, star.tipEdge / 8)
  const slotRoom = noseEnd - FROM_NOSE - least
  const slot = Math.min(slotRoom, LONGEST_SLOT)
  const from = least + (slotRoom - slot) / 2
  const to = from + slot
  const deep = clearance + slot * WEDGE_SLOPE
  const end = star.radius + Math.max(RELIEF, clearance, deep * out.x)
  const beyond: Beside = [(end - star.radius - deep * out.x) / along.x, deep]
  const upper = [at([noseEnd, clearance]), at([to, clearance]), at([from, deep]), at(beyond)]
  const way = (slot * (1 - FILLED)) / 2
  const thin: Beside = [to - way, clearance + way * WEDGE_SLOPE]
  const thick: Beside = [from + way, deep - way * WEDGE_SLOPE]
  return {
    edge: [...mirrored(upper).reverse(), ...[...upper].reverse()],
    wedge: [at(thick), at(thin), at([thin[0], 0]), at([thick[0], 0])],
    wedgeSize: { length: thin[0] - thick[0], thin: thin[1], thick: thick[1] },
    way,
    nose: dot(upper[0] ?? tip, axis),
    end,
    keyFrom: Math.max(dot(upper[0] ?? tip, axis), wideFrom(upper, axis, 2 * thickness)),
    farthest: Math.max(...upper.map(({ x, y }) => maths.hypot(x, y))),
    slotRoom,
  }
}

/** How far out along the axis a chain that runs away from it is first so far off it; the chain's end where it never is. */
const wideFrom = (chain: readonly Point[], axis: Point, off: number): number => {
  for (const [index, to] of chain.entries()) {
    const from = chain[index - 1] ?? to
    const [before, after] = [cross(from, axis), cross(to, axis)]
    if (after < off) continue
    return dot(between(from, to, after > before ? (off - before) / (after - before) : 1), axis)
  }
  return Math.max(...chain.map((at) => dot(at, axis)))
}

/** The other half of an arm's surroundings, counter-clockwise again. */
export const mirrored = (corners: readonly Point[]): Point[] =>
  corners.map(({ x, y }) => point(x, -y)).reverse()

/** What lies beside an arm along +x, beside the arm with the given number; tip 0 straight up. */
export const atArm = (corners: readonly Point[], star: Star, arm: number): Point[] =>
  corners.map((corner) => turn(corner, armDirection(star, arm)))

export const armDirection = (star: Star, arm: number): Radians => cornerDirection(star.points, arm)

/** Along the frame's nose before the arm with the given number, the one after arm `arm - 1`. */
export const noseDirection = (star: Star, arm: number): Radians =>
  radians(cornerDirection(star.points, arm - 0.5))
