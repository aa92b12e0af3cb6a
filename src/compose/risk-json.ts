import type { BatchRisk } from '../fit/batch-risk.js'
import type { Order } from '../order/order.js'

/** The risk for programs, a public contract: mm, degrees, chances from 0 to 1, unrounded. */
export const riskJson = (risks: readonly BatchRisk[], order: Order): string =>
  `${JSON.stringify({ title: order.title, stars: risks.map(batchJson) }, undefined, 2)}\n`

const batchJson = (risk: BatchRisk) => {
  const { plan, law, simulated, histogram } = risk
  return {
    name: plan.order.name,
    quantity: risk.quantity,
    points: plan.star.points,
    arms: plan.arms,
    set: risk.set,
    repeatsTo: risk.repeatsTo,
    stopRepeatsTo: risk.stopRepeatsTo,
    acceptedGap: risk.acceptedGap,
    acceptedClosure: risk.accepted,
    /** Above zero the last joint opens at the valley; shared by all stars as known, as unknown, and each star's own. */
    closure: { mean: law.mean, shared: law.shared, own: law.own },
    shares: law.shares,
    chance: { star: risk.star, batch: risk.batch },
    needed: { for95: risk.needed.for95 ?? null, for99: risk.needed.for99 ?? null },
    /** Once one dry fit has corrected the saw. */
    corrected: { chance: risk.corrected },
    /** What many dry fits come to: only the spread of the cuts is left. */
    settled: {
      chance: { star: risk.settled.star, batch: risk.settled.batch },
      needed: {
        for95: risk.settled.needed.for95 ?? null,
        for99: risk.settled.needed.for99 ?? null,
      },
    },
    valleyStep: risk.step,
    wastedArms: risk.wasted,
    simulated: {
      seed: risk.seed,
      stars: simulated.stars,
      star: simulated.star,
      batch: simulated.batch,
      stepWithin: simulated.stepWithin,
      wastedArms: simulated.wasted,
      closure: { mean: simulated.mean, deviation: simulated.deviation },
    },
    /** Signed gaps: edges of the bars, and the shares of stars between them. */
    histogram,
  }
}
