import type { Order } from '../../src/order/order.js'
import { type OrderInput, parseOrder } from '../../src/order/parse.js'
import { showProblem } from '../../src/order/problem.js'

/** An order that must be right; otherwise the test fails with what is wrong with it. */
export const orderOf = (input: OrderInput): Order => {
  const order = parseOrder(input)
  if (!order.ok) throw new Error(order.problems.map(showProblem).join('\n'))
  return order.value
}
