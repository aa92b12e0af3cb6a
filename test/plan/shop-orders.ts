import type { Saw } from '../../src/order/order.js'
import { parseOrder } from '../../src/order/parse.js'
import type { Outcome } from '../../src/order/problem.js'
import { type Plan, planOrder, type StarPlan } from '../../src/plan/plan.js'
import { degrees, mm } from '../../src/units/convert.js'
import { planOf } from '../orders.js'

type Keys = Readonly<Record<string, unknown>>

/** A saw without marks in the way: it reaches far and its scale is fine. */
export const FAR_SAW = { limit: 75, kerf: 2.4, 'reads-to': 0.5 }

/** A saw with a limit, a scale step and detents, in degrees. */
export const saw = (limit: number, readsTo: number, detents: readonly number[] = []): Saw => ({
  limit: degrees(limit),
  kerf: mm(2.4),
  readsTo: degrees(readsTo),
  detents: detents.map(degrees),
  repeatsTo: degrees(0.05),
  trueTo: degrees(0.2),
})

const orderText = (star: Keys, shop: Keys, rest: Keys): string =>
  JSON.stringify({ ...rest, shop, stars: [star] })

/** The plan of one star; `shop` and `rest` as they stand in an order file. */
export const starPlan = (star: Keys, shop: Keys = { saw: FAR_SAW }, rest: Keys = {}): StarPlan => {
  const [plan] = planOf(orderText(star, shop, rest)).stars
  if (!plan) throw new Error('an order of one star has one plan')
  return plan
}

/** The same where the plan may be refused; the order itself must be right. */
export const tryStarPlan = (star: Keys, shop: Keys, rest: Keys = {}): Outcome<Plan> => {
  const order = parseOrder({ text: orderText(star, shop, rest) })
  if (!order.ok) throw new Error(JSON.stringify(order.problems))
  return planOrder(order.value)
}

export const sin = (angle: number): number => Math.sin((angle * Math.PI) / 180)
export const cos = (angle: number): number => Math.cos((angle * Math.PI) / 180)
export const tan = (angle: number): number => Math.tan((angle * Math.PI) / 180)
