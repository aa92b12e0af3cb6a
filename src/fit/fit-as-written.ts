import type { Order } from '../order/order.js'
import { type Outcome, problemsOf, refused } from '../order/problem.js'
import type { StarPlan } from '../plan/plan.js'
import { type DryFit, dryFit } from './dry-fit.js'
import { readMeasurements, type WrittenMeasurements } from './read-measurements.js'
import { readTerms, type WrittenTerms } from './read-terms.js'

/** A star's dry fit from what was measured and how it was cut, both as a person wrote them; or all that is wrong. */
export const fitAsWritten = (
  star: StarPlan,
  measured: WrittenMeasurements,
  terms: WrittenTerms,
  { shop, lengths }: Order,
): Outcome<DryFit> => {
  const read = readMeasurements(measured, star.star, lengths)
  const readAs = readTerms(terms, star, shop, lengths)
  return read.ok && readAs.ok
    ? dryFit(star, shop.saw, read.value, readAs.value, lengths)
    : refused([read, readAs].flatMap(problemsOf))
}
