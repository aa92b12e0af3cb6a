import { countAt, type OrderDocument, writtenAt } from '../order/edit-text.js'
import { starName } from '../order/star-name.js'
import { type Plan, planOrder, type StarPlan } from '../plan/plan.js'
import type { Units } from '../units/read-length.js'
import type { Job } from './job.js'

/** An order without mistakes, and its plan. */
export type Sound = Job & { readonly plan: Plan }

export const isSound = (job: Job): job is Sound => job.plan !== undefined

/** Told in the units that the order is written in, which may be other ones since its mistakes. */
export const inUnits = (plan: Plan, units: Units): Plan => {
  const { order } = plan
  if (order.lengths.units === units) return plan
  // Warnings are worded as the order is planned.
  const told = planOrder({ ...order, lengths: { ...order.lengths, units } })
  return told.ok ? told.value : plan
}

/** Names of the stars as the order is written, mistakes and all. */
export const writtenStars = (document: OrderDocument): readonly string[] => {
  const count = countAt(document, ['stars'])
  return Array.from({ length: count }, (_, index) =>
    starName({ name: writtenAt(document, ['stars', index, 'name']) }, index, count),
  )
}

/**
 * A star of the written order as the plan has it, while the plan may be that of an order before the mistakes of this one:
 * with other names, fewer stars or more. Undefined where none is, or where it cannot be told which.
 *
 * @param written names of the stars as the order is written
 */
export const plannedStar = (
  { stars }: Plan,
  written: readonly string[],
  index: number,
): StarPlan | undefined => {
  const inPlace = stars[index]
  if (inPlace?.order.name === written[index]) return inPlace
  // A star that still has its name where it stood is itself, and no other of that name.
  const named = stars.find(
    ({ order }, place) => order.name === written[index] && written[place] !== order.name,
  )
  if (stars.length !== written.length) return named
  const isRenamed = named === undefined && inPlace !== undefined && !written.includes(inPlace.order.name)
  return isRenamed ? inPlace : undefined
}
