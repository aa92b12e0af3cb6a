import { blankCorners, kite, kiteOutline } from '../geometry/kite.js'
import { closedOutline, moved } from '../geometry/outline.js'
import { add, type Point, point, polar } from '../geometry/point.js'
import type { JigStock } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { mm, toRadians } from '../units/convert.js'
import { armCradle } from './arm-cradle.js'
import { type BladeLine, fromBlade, onBlade } from './blade-line.js'
import { type FenceWedge, fenceWedge } from './fence-wedge.js'
import type { Jig } from './jig.js'
import { spacer, spacerPart } from './spacer.js'
import { endOfCut, jointBlade } from './uncut-wood.js'

/** The cradle's base bears on the wedge's heel so high, in mm: less than its fence strip is wide. */
const HEEL = 20

/** A wedge as a jig, and what tells whether saw and wood allow it. */
export interface WedgeJig extends Jig, Pick<FenceWedge, 'bears' | 'reach'> {}

/**
 * For cut 1: the board lies on a wedge on both sides of the blade; the heel is the stop, its face along the board's
 * slanted end with a spacer between them that is lifted out.
 *
 * @param plan of a star whose first cut has a wedge
 */
export const firstCutWedge = (plan: StarPlan, stock: JigStock, kerf: Mm): WedgeJig => {
  const { star, blank, firstCut } = plan
  const along = polar(1, toRadians(star.tipAngle))
  const blade: BladeLine = { foot: point(blank.side, 0), along }
  const { face, corners, grip, end } = spacer(plan, stock)
  const wedge = fenceWedge(
    { cut: firstCut, blade, cutEnd: blankCorners(star, blank.side)[2], from: 0, heel: face, kerf },
    stock,
  )
  const [, , , farEnd] = blankCorners(star, blank.side)
  const boardEnd = blank.side + stock.register * 2
  const lying = spacerPart('fence wedge', corners, grip, stock)
  const [at = grip] = wedge.toFence(closedOutline([grip])).vertices
  return {
    ...wedge,
    name: 'first-cut-wedge',
    parts: [
      ...wedge.parts,
      { ...lying, outer: wedge.toFence(lying.outer), inner: lying.inner.map(wedge.toFence) },
    ],
    inUse: {
      wood: [
        wedge.toFence(
          closedOutline([
            point(0, 0),
            point(boardEnd, 0),
            point(Math.max(boardEnd, farEnd.x + 1), farEnd.y),
            farEnd,
          ]),
        ),
      ],
      blade: wedge.blade,
    },
    hands: [...handsOn(wedge), { place: "the spacer's grip", at, fromBlade: mm(fromBlade(blade, end)) }],
  }
}

/**
 * For cuts 2 and 3: the arm cradle's base lies on the wedge and bears on its heel; the offcut falls off free.
 *
 * @param plan of a star whose joint cuts have a wedge and whose arms have a cradle
 */
export const jointCutWedge = (plan: StarPlan, stock: JigStock): WedgeJig => {
  const { star, jointCut } = plan
  const { foot: valley, along } = jointBlade(plan)
  const base = armCradle(plan, stock).parts[0]?.outer ?? closedOutline([])
  const back = Math.min(...base.vertices.map(({ y }) => y))
  const left = Math.min(...base.vertices.map(({ x }) => x))
  const raised = point(0, -back)
  const foot = onBlade({ foot: add(valley, raised), along }, 0)
  const wedge = fenceWedge(
    {
      cut: jointCut,
      blade: { foot, along },
      cutEnd: add(endOfCut(plan), raised),
      from: left,
      heel: [point(left, 0), point(left, HEEL)],
    },
    stock,
  )
  return {
    ...wedge,
    name: 'joint-cut-wedge',
    inUse: {
      wood: [wedge.toFence(moved(kiteOutline(kite(star)), raised))],
      around: [wedge.toFence(moved(base, raised))],
      blade: wedge.blade,
    },
    hands: handsOn(wedge),
  }
}

const handsOn = ({ clamps }: FenceWedge): Jig['hands'] =>
  clamps.map(({ at, fromBlade }, index) => ({
    place: `the clamps on the ${index === 0 ? 'heel' : 'rest'} rail`,
    at: at as Point,
    fromBlade,
  }))
