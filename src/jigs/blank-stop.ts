import { hull } from '../geometry/hull.js'
import { blankCorners } from '../geometry/kite.js'
import { closedOutline } from '../geometry/outline.js'
import { add, point, polar } from '../geometry/point.js'
import type { JigStock } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { mm, toRadians } from '../units/convert.js'
import { type BladeLine, fromBlade } from './blade-line.js'
import type { Jig } from './jig.js'
import { BEHIND, CLAMPS, DEPTH, onRail } from './on-rail.js'
import { spacer, spacerPart } from './spacer.js'

/** In mm, from the face to the plate's far end. */
const LEAST_LENGTH = 120
/** Longer is unhandy: the clamps then stand nearer, and the words say so. */
const MOST_LENGTH = 900

/**
 * A plate whose face lies along the slanted end of the board, a rail on it that is clamped to the saw's fence, and a
 * spacer between face and board. The board is pushed against the spacer, clamped, and the spacer lifted out before the
 * saw is started, so that the blank lies free between blade and stop. The blade's near side is the blank's side away
 * from the board's end, measured along the fence.
 */
export const blankStop = (plan: StarPlan, stock: JigStock): Jig => {
  const { star, blank } = plan
  const along = polar(1, toRadians(star.tipAngle))
  const blade: BladeLine = { foot: point(blank.side, 0), along }
  const { corners, face, grip, end } = spacer(plan, stock)
  const thick = -face[0].x
  // A face that leans back cuts into the room of the rail, which must not stand out through it.
  const lean = Math.max(0, (-stock.thickness * along.x) / along.y)
  // So far left along the fence are the clamps as far from the blade as hands must be.
  const clampsFrom = blank.side - stock.hands / along.y
  const wanted = Math.min(clampsFrom - CLAMPS, -thick - LEAST_LENGTH - lean, face[1].x - BEHIND - CLAMPS)
  const shortest = Math.min(-thick - LEAST_LENGTH - lean, face[1].x - BEHIND)
  const left = Math.max(wanted, Math.min(shortest, -thick - MOST_LENGTH))
  const railEnd = -thick - stock.thickness - lean
  const plate = hull([
    point(left, 0),
    ...face,
    point(face[1].x - BEHIND, face[1].y),
    point(railEnd, stock.thickness),
    point(left, DEPTH),
  ])
  const clamps = point(left + CLAMPS / 2, 0)
  const [, nearEnd, farEnd, other] = blankCorners(star, blank.side)
  return {
    name: 'blank-stop',
    parts: [
      ...onRail(
        {
          jig: 'blank stop',
          plateWord: 'plate',
          railWord: 'rail',
          plate,
          seats: [],
          rail: [left, railEnd],
          clampsFrom: left + CLAMPS,
        },
        stock,
      ),
      spacerPart('blank stop', corners, grip, stock),
    ],
    inUse: {
      wood: [closedOutline([point(0, 0), nearEnd, farEnd, other])],
      blade: [blade.foot, add(blade.foot, end)],
    },
    hands: [
      { place: "the rail's clamps", at: clamps, fromBlade: mm(fromBlade(blade, point(left + CLAMPS, 0))) },
      { place: "the spacer's grip", at: grip, fromBlade: mm(fromBlade(blade, end)) },
    ],
  }
}
