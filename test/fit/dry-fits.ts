import { type DryFit, type DryFitTerms, dryFit } from '../../src/fit/dry-fit.js'
import type { Measurement } from '../../src/fit/measurement.js'
import { blankIsArm } from '../../src/geometry/kite.js'
import { DEFAULTS } from '../../src/order/defaults.js'
import type { Outcome } from '../../src/order/problem.js'
import { showProblem } from '../../src/order/problem.js'
import type { StarPlan } from '../../src/plan/plan.js'
import { degrees, mm } from '../../src/units/convert.js'
import { saw } from '../plan/shop-orders.js'

export const LENGTHS = { units: 'mm', nearest: 32 } as const

export const SPREAD = { angle: degrees(0.03), stop: mm(0.1) }

/** Cut at the plan's reading, with our usual allowances. */
export const termsOf = (plan: StarPlan): DryFitTerms => ({
  reading: (blankIsArm(plan.star) ? plan.firstCut : plan.jointCut).reading,
  cleanUp: DEFAULTS.cleanUp,
  accepted: DEFAULTS.acceptedGap,
  spread: SPREAD,
})

export const tryDryFit = (
  plan: StarPlan,
  measured: readonly Measurement[],
  terms: Partial<DryFitTerms> = {},
): Outcome<DryFit> => dryFit(plan, saw(75, 0.5), measured, { ...termsOf(plan), ...terms }, LENGTHS)

/** The dry fit of measurements that agree. */
export const dryFitOf = (
  plan: StarPlan,
  measured: readonly Measurement[],
  terms: Partial<DryFitTerms> = {},
): DryFit => {
  const found = tryDryFit(plan, measured, terms)
  if (!found.ok) throw new Error(found.problems.map(showProblem).join('\n'))
  return found.value
}

export const measurement = (of: Measurement['of'], value: number, within: number): Measurement => ({
  of,
  value,
  within,
  place: `--${of}`,
  given: String(value),
})
