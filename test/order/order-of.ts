import type { Order, StarOrder, StarPlaces } from '../../src/order/order.js'
import { type OrderInput, parseOrder } from '../../src/order/parse.js'
import { showProblem } from '../../src/order/problem.js'

/** A star as it is asked for, wherever its keys stand. */
export type AskedStar = Omit<StarOrder, 'at'>

export interface AskedOrder extends Omit<Order, 'stars'> {
  readonly stars: readonly AskedStar[]
}

const goodOrder = (input: OrderInput): Order => {
  const order = parseOrder(input)
  if (!order.ok) throw new Error(order.problems.map(showProblem).join('\n'))
  return order.value
}

/** An order that must be right; otherwise the test fails with what is wrong with it. */
export const orderOf = (input: OrderInput): AskedOrder => {
  const order = goodOrder(input)
  return { ...order, stars: order.stars.map(({ at, ...star }) => star) }
}

/** Where the keys of each star stand. */
export const placesOf = (input: OrderInput): readonly StarPlaces[] =>
  goodOrder(input).stars.map(({ at }) => at)
