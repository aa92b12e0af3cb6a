import { hull } from '../geometry/hull.js'
import { mapped, type Outline } from '../geometry/outline.js'
import { add, distance, type Point, point, scale, turn } from '../geometry/point.js'
import type { JigStock } from '../order/order.js'
import type { PlannedCut } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { degrees, mm, radians, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { type BladeLine, fromBlade, onBlade } from './blade-line.js'
import type { JigPart } from './jig.js'
import { BEHIND, CLAMPS, DEPTH, onRail } from './on-rail.js'

/** In mm: between a plate and the blade, square to it. */
export const BLADE_CLEAR = 4
/** What is laid on a wedge, in its own frame: its edge along y = 0, the piece that is kept left of the blade. */
export interface LaidOn {
  readonly cut: PlannedCut
  /** Where the blade's near side crosses the edge, and where it leaves the wood. */
  readonly blade: BladeLine
  readonly cutEnd: Point
  /** Where along the edge it begins to bear. */
  readonly from: number
  /** The heel's face, from the edge outwards. */
  readonly heel: readonly [Point, Point]
  /** What the blade removes, where the board beyond it lies on a wedge of its own; absent where that falls off free. */
  readonly kerf?: Mm
}

/** Wedges in their places at the fence. */
export interface FenceWedge {
  /** From the frame of what is laid on it to the saw's: the fence's face along y = 0. */
  readonly toFence: (outline: Outline) => Outline
  readonly blade: readonly [Point, Point]
  readonly parts: readonly JigPart[]
  /** Where the clamps' room on each rail ends towards the blade. */
  readonly clamps: readonly { readonly at: Point; readonly fromBlade: Mm }[]
  /** How much of the laid edge bears on wedges. */
  readonly bears: Mm
  /** From the fence's face along the blade to the end of the cut. */
  readonly reach: Mm
}

/**
 * A plate between fence and wood, thicker on the side the blade leans to, so that a saw set to its reading cuts the
 * wedge's angle more. The plate ends beside the blade and is thinnest, as thick as the panel, at one end of what bears
 * on it. Past that its heel stands up, which keeps what lies on it from sliding along. A rail on the plate is clamped to
 * the fence at the heel's end. Where a board lies on the other side of the blade too, a second plate carries it there.
 *
 * @param laid a cut that has a wedge
 */
export const fenceWedge = (laid: LaidOn, stock: JigStock): FenceWedge => {
  const { cut, blade, heel, kerf } = laid
  const slope = radians(Math.sign(cut.miter) * toRadians(cut.wedge?.angle ?? degrees(0)))
  const along = turn(blade.along, slope)
  const clear = BLADE_CLEAR / blade.along.y
  const near = blade.foot.x - clear
  const beyond = kerf === undefined ? undefined : blade.foot.x + kerf / blade.along.y + clear
  // So far from the blade, along the fence, are the clamps where hands are told to be.
  const hands = stock.hands / along.y
  const right = beyond === undefined ? undefined : rightEnd(beyond, slope, along, stock)
  const bearing = [heel[0].x, near, ...(right === undefined ? [] : [right / maths.cos(slope)])]
  const lift = stock.thickness - Math.min(...bearing.map((x) => turn(point(x, 0), slope).y))
  const at = (place: Point): Point => add(turn(place, slope), point(0, lift))
  const onFence: BladeLine = { foot: at(blade.foot), along }

  const [heelFoot, heelEnd] = [at(heel[0]), at(heel[1])]
  const bladeEnd = at(point(near, 0))
  const foot = onBlade({ foot: bladeEnd, along }, 0)
  const left = Math.min(
    heelFoot.x - CLAMPS,
    heelEnd.x - BEHIND - CLAMPS,
    onBlade(onFence, 0).x - hands - CLAMPS,
  )
  const corner = point(left, 0)
  const body = hull([
    corner,
    heelFoot,
    heelEnd,
    add(heelEnd, point(-BEHIND, 0)),
    point(left, Math.max(DEPTH, stock.thickness)),
  ])
  const railEnd = Math.min(foot.x, onBlade({ foot: bladeEnd, along }, stock.thickness).x)
  const kept = [corner, foot, bladeEnd, heelFoot, ...between(body, heelEnd, corner)]
  const parts = onRail(
    {
      jig: 'fence wedge',
      plateWord: 'heel plate',
      railWord: 'heel rail',
      plate: kept,
      seats: [heelFoot],
      rail: [left, railEnd],
      clampsFrom: left + CLAMPS,
    },
    stock,
  )
  const clamps = [point(left + CLAMPS, 0)]
  if (beyond !== undefined && right !== undefined) {
    const bladeSide = at(point(beyond, 0))
    const [start, end] = [onBlade({ foot: bladeSide, along }, 0), at(point(right / maths.cos(slope), 0))]
    const railStart = Math.max(start.x, onBlade({ foot: bladeSide, along }, stock.thickness).x)
    const plate = [start, point(end.x, 0), end, bladeSide]
    parts.push(
      ...onRail(
        {
          jig: 'fence wedge',
          plateWord: 'rest plate',
          railWord: 'rest rail',
          plate,
          seats: [],
          rail: [railStart, right],
          clampsFrom: right - CLAMPS,
        },
        stock,
      ),
    )
    clamps.push(point(right - CLAMPS, 0))
  }
  const cutEnd = at(laid.cutEnd)
  return {
    toFence: (outline) => mapped(outline, at),
    blade: [onBlade(onFence, 0), add(cutEnd, scale(along, CLAMPS / 3))],
    parts,
    clamps: clamps.map((place) => ({ at: place, fromBlade: mm(Math.abs(fromBlade(onFence, place))) })),
    bears: mm(
      near -
        laid.from +
        (right === undefined || beyond === undefined ? 0 : right / maths.cos(slope) - beyond),
    ),
    reach: mm(distance(onBlade(onFence, 0), cutEnd)),
  }
}

/** The steepest way, in mm a mm, that a longer plate moves the blade's place on the fence after its clamps. */
const RUNS_AFTER = 0.5

/**
 * Where the board's own plate ends on the fence: long enough to register, and for clamps far from the blade. A blade
 * that leans to that side meets the fence further on, the more so the longer, and there thinner, the plate is.
 */
const rightEnd = (
  beyond: number,
  slope: number,
  along: Point,
  { register, thickness, hands }: JigStock,
): number => {
  const start = beyond * maths.cos(slope)
  const lean = Math.max(0, -along.x / along.y)
  const runs = Math.min(RUNS_AFTER, Math.max(0, -maths.tan(slope)) * lean)
  const clamped = start + (thickness * lean + hands / along.y + CLAMPS) / (1 - runs)
  return Math.max(start + register * maths.cos(slope), clamped)
}

/** The corners of a ring from one on, up to another. */
const between = (ring: readonly Point[], first: Point, end: Point): Point[] => {
  const [start, stop] = [ring.indexOf(first), ring.indexOf(end)]
  return stop > start ? ring.slice(start, stop) : [...ring.slice(start), ...ring.slice(0, stop)]
}
