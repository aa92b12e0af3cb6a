import { blankIsArm } from '../geometry/kite.js'
import type { Shop } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { Degrees, Mm } from '../units/brand.js'
import { degrees } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { chanceOfBatch, chanceOfStar, repeatabilityFor } from './chances.js'
import {
  acceptedClosure,
  type ClosureLaw,
  closureLaw,
  cutsOf,
  readingOf,
  type SawSet,
} from './closure-law.js'
import { barsFor, type Histogram, histogramOf } from './histogram.js'
import { type SimulatedChances, simulate } from './simulate.js'
import { type ValleyStep, valleyStep } from './valley-step.js'
import { type WastedArms, wastedArms } from './wasted-arms.js'

/** What may happen to the stars of one line of the order. */
export interface BatchRisk {
  readonly plan: StarPlan
  readonly set: SawSet
  readonly seed: number
  readonly quantity: number
  readonly acceptedGap: Mm
  readonly accepted: Degrees
  readonly repeatsTo: Degrees
  readonly stopRepeatsTo: Mm
  readonly law: ClosureLaw
  /** Chance that one star, and that all of them, close within the accepted gap. */
  readonly star: number
  readonly batch: number
  /** How well each cut must repeat for the batch to close in so many of 100; absent where nothing is enough. */
  readonly needed: Needed
  /** The same once one dry fit has corrected the saw, as well as one gap tells. */
  readonly corrected: { readonly star: number; readonly batch: number }
  /** The same of a saw whose cuts come out as wanted but for their spread: what many dry fits come to. */
  readonly settled: { readonly star: number; readonly batch: number; readonly needed: Needed }
  readonly step: ValleyStep
  readonly wasted: WastedArms
  readonly simulated: SimulatedChances
  readonly histogram: Histogram
}

export interface Needed {
  readonly for95?: Degrees
  readonly for99?: Degrees
}

export interface RiskAsked {
  readonly set: SawSet
  /** How many stars are simulated, and from which seed. */
  readonly simulated: number
  readonly seed: number
}

/** The closed form and the simulation of one star's batch. */
export const batchRisk = (plan: StarPlan, shop: Shop, asked: RiskAsked): BatchRisk => {
  const { saw } = shop
  const { star, order } = plan
  const { quantity } = order
  const law = closureLaw(plan, saw, asked.set)
  const { first, joint } = cutsOf(plan)
  const cuts = first + joint
  const accepted = acceptedClosure(star.jointEdge, shop.acceptedGap)
  const reading = readingOf(star.jointEdge)
  const step = valleyStep(star, shop.stop.repeatsTo)
  const reach = barsFor(law, accepted)
  const simulated = simulate({
    law,
    accepted,
    cuts,
    repeatsTo: saw.repeatsTo,
    quantity,
    stars: asked.simulated,
    seed: asked.seed,
    reach,
    valleys: { count: star.points, edges: blankIsArm(star) ? 1 : 2, repeatsTo: shop.stop.repeatsTo },
    reading,
    step: step.largest,
  })
  const needed = (of: ClosureLaw): Needed => {
    const [for95, for99] = [0.95, 0.99].map((wanted) =>
      repeatabilityFor(wanted, { law: of, accepted, quantity, cuts }),
    )
    return { ...(for95 === undefined ? {} : { for95 }), ...(for99 === undefined ? {} : { for99 }) }
  }
  const fitted: ClosureLaw = { ...law, mean: degrees(0), shared: degrees(maths.hypot(law.own, reading)) }
  const settled: ClosureLaw = { ...law, mean: degrees(0), shared: degrees(0) }
  return {
    plan,
    set: asked.set,
    seed: asked.seed,
    quantity,
    acceptedGap: shop.acceptedGap,
    accepted,
    repeatsTo: saw.repeatsTo,
    stopRepeatsTo: shop.stop.repeatsTo,
    law,
    star: chanceOfStar(law, accepted),
    batch: chanceOfBatch(law, accepted, quantity),
    needed: needed(law),
    corrected: {
      star: chanceOfStar(fitted, accepted),
      batch: chanceOfBatch(fitted, accepted, quantity),
    },
    settled: {
      star: chanceOfStar(settled, accepted),
      batch: chanceOfBatch(settled, accepted, quantity),
      needed: needed(settled),
    },
    step,
    wasted: wastedArms(law, accepted, star.points, quantity, reading),
    simulated,
    histogram: histogramOf(law, reach, star.jointEdge, simulated.counts),
  }
}
