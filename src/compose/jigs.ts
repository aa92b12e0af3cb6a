import type { Drawing } from '../drawing/model.js'
import { blankIsArm } from '../geometry/kite.js'
import { angleGauge } from '../jigs/angle-gauge.js'
import { armCradle, holdRoom } from '../jigs/arm-cradle.js'
import { blankStop } from '../jigs/blank-stop.js'
import { type Jig, mirroredJig } from '../jigs/jig.js'
import type { JigName, Order } from '../order/order.js'
import { done, type Outcome, type Problem, refused } from '../order/problem.js'
import type { StarPlan } from '../plan/plan.js'
import { showAtLeast, showLength } from '../units/show.js'
import { jigDrawing } from './jig-drawing.js'

/** The jig as the order wants it: its stock and hardware, its side of the blade. Refused when the star needs none. */
export const jigOf = (name: JigName, plan: StarPlan, order: Order): Outcome<Jig> => {
  const { shop } = order
  const sided = (jig: Jig): Outcome<Jig> => done(shop.jigStock.side === 'right' ? jig : mirroredJig(jig))
  switch (name) {
    case 'blank-stop':
      return sided(blankStop(plan, shop.jigStock))
    case 'arm-cradle': {
      const refusal = cradleRefusal(plan, order)
      return refusal ? refused([refusal]) : sided(armCradle(plan, shop.jigStock))
    }
    case 'angle-gauge':
      return done(angleGauge(plan, shop.jigStock, shop.cutter))
  }
}

const cradleRefusal = (plan: StarPlan, { shop, lengths }: Order): Problem | undefined => {
  const at = { place: 'jigs', given: 'arm-cradle' }
  if (blankIsArm(plan.star)) {
    return {
      ...at,
      advice: `The blank of "${plan.order.name}" is already the arm: there are no joint cuts to hold it for. Leave the cradle out.`,
    }
  }
  const room = holdRoom(plan, shop.jigStock)
  return room.is < room.least
    ? {
        ...at,
        advice: `The tip of an arm of "${plan.order.name}" lies ${showLength(room.is, lengths)} from the blade: too little for a hold-down, which needs ${showAtLeast(room.least, lengths)}. Make the star larger, give a thinner bolt, or leave the cradle out and cut the joints another way.`,
      }
    : undefined
}

/** A jig and its drawing. */
export interface DrawnJig {
  readonly jig: Jig
  /** Its parts, for paper and for the cutter. */
  readonly drawing: Drawing
}

export const drawJig = (name: JigName, plan: StarPlan, order: Order): Outcome<DrawnJig> => {
  const jig = jigOf(name, plan, order)
  if (!jig.ok) return jig
  const drawing = jigDrawing(jig.value, plan, order)
  return drawing.ok ? done({ jig: jig.value, drawing: drawing.value }) : drawing
}

/** Every jig the order wants for a star, or why it cannot be made. */
export const drawJigs = (plan: StarPlan, order: Order): Outcome<DrawnJig>[] =>
  order.jigs.names.map((name) => drawJig(name, plan, order))
