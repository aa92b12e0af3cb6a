import type { MovedStar, SeasonState, WoodState } from '../season/season.js'
import { meanMoisture, worstGap } from '../season/season.js'
import type { AdvisedStar, SeasonPlan } from '../season/season-plan.js'
import { speciesNamed } from '../tables/species.js'

/**
 * The seasons for programs, a public contract: lengths in mm, angles in degrees, moisture and humidity in %,
 * temperatures in °C, shares as such, unrounded. Additions are allowed; nothing that stands here changes its name or
 * meaning.
 */
export const seasonJson = ({ plan: { order }, stars }: SeasonPlan): string =>
  `${JSON.stringify({ title: order.title, stars: stars.map(starJson), assumed: order.climate.assumed }, undefined, 2)}\n`

const starJson = (star: AdvisedStar) => ({
  name: star.plan.order.name,
  wood: {
    name: star.wood.name,
    from: star.wood.from,
    rings: star.wood.rings,
    tangential: star.wood.tangential,
    radial: star.wood.radial,
    /** How the table's values were seen, `looked-up` or `memory`; null for a wood that is not of the table. */
    seen: speciesNamed(star.wood.name)?.seen ?? null,
  },
  /** Across the arm, for 1 % of moisture. */
  coefficient: star.coefficient,
  workshop: stateJson(star.workshop),
  winter: seasonStateJson(star.winter),
  summer: seasonStateJson(star.summer),
  meanMoisture: meanMoisture(star),
  worstGap: { edge: worstGap(star, 'edge'), axis: worstGap(star, 'axis') },
  axisLayout: { ...star.layout, boardAllows: star.layout.boardAllows ?? null },
  advice: star.advice,
})

const stateJson = ({ air, moisture, holds }: WoodState) => ({ air, moisture, coefficientsHold: holds })

const seasonStateJson = (state: SeasonState) => ({
  ...stateJson(state),
  /** Since the workshop, as a share of the size across the grain. */
  change: state.change,
  edge: movedJson(state.byGrain.edge),
  axis: movedJson(state.byGrain.axis),
})

/** Closure above zero: the last joint gapes at the valley; below: at the centre. */
const movedJson = ({ arm, closure, gap, step }: MovedStar) => ({ ...arm, closure, gap, step })
