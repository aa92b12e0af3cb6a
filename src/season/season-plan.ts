import type { Plan } from '../plan/plan.js'
import { type Advice, adviceFor } from './advice.js'
import { type AxisLayout, axisLayout } from './axis-layout.js'
import { type StarSeason, starSeason } from './season.js'

/** How every star of a plan moves with the seasons, and what to do about it. */
export interface SeasonPlan {
  readonly plan: Plan
  readonly stars: readonly AdvisedStar[]
}

export interface AdvisedStar extends StarSeason {
  /** What it would take to lay the arms the other way. */
  readonly layout: AxisLayout
  readonly advice: readonly Advice[]
}

export const planSeason = (plan: Plan): SeasonPlan => ({
  plan,
  stars: plan.stars.map((star) => {
    const season = starSeason(star, plan.order.climate)
    return {
      ...season,
      layout: axisLayout(star, plan.order.shop),
      advice: adviceFor(season, plan.order.lengths),
    }
  }),
})
