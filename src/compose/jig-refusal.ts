import { cradleReach, holdRoom } from '../jigs/arm-cradle.js'
import { trialWindow } from '../jigs/trial-window.js'
import type { JigName, Order } from '../order/order.js'
import type { Problem } from '../order/problem.js'
import { SCREWS_HOLD, thickestScrew } from '../order/wood-screw.js'
import type { PlannedCut, StarPlan } from '../plan/plan.js'
import { tooSmallForSaw } from '../plan/warnings.js'
import { degrees, mm } from '../units/convert.js'
import { showAngle, showAtLeast, showAtMost, showLength, showSize } from '../units/show.js'
import { SAME_ANGLE, SAME_POINT, SHOP } from '../units/tolerance.js'
import { frameRefusal } from './frame-words.js'
import { wedgeOf } from './wedge-words.js'

/** Thicker wedges push the wood along the fence more than against it. */
const STEEPEST_WEDGE = degrees(45)

/** Where a jig stands in the order. */
export const at = (name: JigName): Pick<Problem, 'place' | 'given'> => ({ place: 'jigs', given: name })

/** Why a jig that the star has use for cannot be made, and the way out; undefined when it can. */
export const jigRefusal = (name: JigName, plan: StarPlan, order: Order): Problem | undefined => {
  switch (name) {
    case 'blank-stop':
      return handSawRefusal(name, plan) ?? railRefusal(order)
    case 'arm-cradle':
      return (
        handSawRefusal(name, plan) ??
        cradleRefusal(name, plan, order) ??
        cradleReachRefusal(name, plan, order)
      )
    case 'first-cut-wedge':
      return handSawRefusal(name, plan) ?? railRefusal(order) ?? wedgeRefusal(name, plan, order)
    case 'joint-cut-wedge':
      return (
        handSawRefusal(name, plan) ??
        cradleRefusal(name, plan, order) ??
        railRefusal(order) ??
        wedgeRefusal(name, plan, order)
      )
    case 'glue-up-frame':
      return frameRefusal(plan, order)
    case 'trial-window':
      return windowRefusal(plan, order)
    default:
      return undefined
  }
}

/** No jig makes an arm safe that nothing can hold beside the blade. */
const handSawRefusal = (name: JigName, plan: StarPlan): Problem | undefined =>
  tooSmallForSaw(plan)
    ? {
        ...at(name),
        advice: `An arm of "${plan.order.name}" is too small for a miter saw, in any jig: cut it with a fine hand saw in a miter box, or make the star larger.`,
      }
    : undefined

const railRefusal = (order: Order): Problem | undefined => {
  const {
    shop: { jigStock },
    lengths,
  } = order
  return jigStock.screw > thickestScrew(jigStock.thickness) + SAME_POINT
    ? {
        place: 'shop.jig-stock.screw',
        given: showSize(jigStock.screw, lengths),
        advice: `It would split a rail of ${showSize(jigStock.thickness, lengths)} panel. Allowed there: up to ${showAtMost(thickestScrew(jigStock.thickness), lengths)}. Give a thinner screw, or a thicker panel.`,
      }
    : undefined
}

const cradleRefusal = (name: JigName, plan: StarPlan, { shop, lengths }: Order): Problem | undefined => {
  const { thickness } = shop.jigStock
  if (thickness < SCREWS_HOLD - SAME_POINT)
    return {
      place: 'shop.jig-stock.thickness',
      given: showSize(thickness, lengths),
      advice: `Too thin for the arm cradle: in its strip and block screws find no hold. Allowed there: ${showAtLeast(SCREWS_HOLD, lengths)} or more. Give a thicker panel, or glue two layers and give the thickness of both.`,
    }
  const room = holdRoom(plan, shop.jigStock)
  return room.is < room.least
    ? {
        ...at(name),
        advice: `The tip of an arm of "${plan.order.name}" lies ${showLength(room.is, lengths)} from the blade: too little for a hold-down, which needs ${showAtLeast(room.least, lengths)}. Make the star larger, give a thinner bolt, or leave the cradle out and cut the joints another way.`,
      }
    : undefined
}

const cradleReachRefusal = (name: JigName, plan: StarPlan, order: Order): Problem | undefined => {
  const { shop, lengths } = order
  if (plan.jointCut.wedge) {
    return (
      steepRefusal(name, plan.jointCut, plan) ??
      wedgeReachRefusal(name, wedgeOf('joint-cut-wedge', plan, order).reach, plan, order)
    )
  }
  const reach = cradleReach(plan, shop.jigStock)
  return shop.saw.crosscut === undefined || reach <= shop.saw.crosscut + SHOP
    ? undefined
    : {
        ...at(name),
        advice: `The cradle's strip keeps an arm of "${plan.order.name}" away from the fence: the blade must reach ${showAtLeast(reach, lengths)}, this saw cuts ${showLength(shop.saw.crosscut, lengths)}. Make the star smaller, or leave the cradle out and clamp each arm to the fence.`,
      }
}

const windowRefusal = (plan: StarPlan, { shop, lengths }: Order): Problem | undefined =>
  trialWindow(plan, shop.jigStock, shop.cutter)
    ? undefined
    : {
        place: 'shop.jig-stock.tolerance',
        given: showSize(shop.jigStock.tolerance, lengths),
        advice: `Nothing would be left of the narrow opening for an arm of "${plan.order.name}". Give a smaller tolerance, or leave the trial window out.`,
      }

const wedgeRefusal = (
  name: 'first-cut-wedge' | 'joint-cut-wedge',
  plan: StarPlan,
  order: Order,
): Problem | undefined => {
  const { shop, lengths } = order
  const steep = steepRefusal(name, name === 'first-cut-wedge' ? plan.firstCut : plan.jointCut, plan)
  if (steep) return steep
  const { bears, reach } = wedgeOf(name, plan, order)
  return bears < shop.jigStock.register - SHOP
    ? {
        ...at(name),
        advice: `Only ${showLength(bears, lengths)} of what lies on the wedge of "${plan.order.name}" bears on it, less than its registration length of ${showAtLeast(shop.jigStock.register, lengths)}. Make the star larger, or give jig-stock: { register: ${showAtMost(bears, lengths)} } and check the first cut with the angle gauge.`,
      }
    : wedgeReachRefusal(name, reach, plan, order)
}

const steepRefusal = (name: JigName, { wedge }: PlannedCut, plan: StarPlan): Problem | undefined => {
  const angle = wedge?.angle ?? degrees(0)
  return angle > STEEPEST_WEDGE + SAME_ANGLE
    ? {
        ...at(name),
        advice: `"${plan.order.name}" would need a wedge of ${showAngle(angle)}; allowed: up to ${showAngle(STEEPEST_WEDGE)}. Make the tip angle larger, or cut it on a band saw.`,
      }
    : undefined
}

/** A cradle on a wedge lies as far out as the wedge takes it. */
const wedgeReachRefusal = (
  name: JigName,
  reach: number,
  plan: StarPlan,
  { shop, lengths }: Order,
): Problem | undefined =>
  shop.saw.crosscut !== undefined && reach > shop.saw.crosscut + SHOP
    ? {
        ...at(name),
        advice: `On the wedge of "${plan.order.name}" the blade must reach ${showAtLeast(mm(reach), lengths)} from the fence; this saw cuts ${showLength(shop.saw.crosscut, lengths)}. Make the tip angle larger or the star smaller, or cut it on a band saw.`,
      }
    : undefined
