import { countAt, type OrderDocument, writtenAt } from '../order/edit-text.js'
import { starName } from '../order/star-name.js'
import { type Plan, planOrder, type StarPlan } from '../plan/plan.js'
import type { Units } from '../units/read-length.js'
import type { Change } from './bench.js'
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

/** The order before the mistakes of a written one. */
export interface Before {
  readonly order: string
  /** Where each star of the written order stood in it, counted from 0; {@link NEW} for one that it had not. */
  readonly stars: readonly number[]
}

const NEW = -1

/** @param count of stars */
export const inPlace = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, index) => index)

/** Where the stars stood that are there after the changes: one that is taken away or added moves those after it. */
export const stoodAfter = (stood: readonly number[], changes: readonly Change[]): readonly number[] =>
  changes.reduce((before, [[list, index, ...deeper], value]) => {
    if (list !== 'stars' || deeper.length > 0) return before
    if (typeof index !== 'number') return Array.isArray(value) ? value.map(() => NEW) : []
    if (value === undefined) return before.filter((_, each) => each !== index)
    return index < before.length ? before.with(index, NEW) : before.concat(NEW)
  }, stood)

/** A star of the written order as the plan of the order before has it; undefined for one that is new. */
export const plannedStar = (
  { stars }: Plan,
  stood: readonly number[],
  index: number,
): StarPlan | undefined => {
  const place = stood[index] ?? NEW
  return place === NEW ? undefined : stars[place]
}
