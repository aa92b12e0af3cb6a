import { parseOrder } from '../src/order/parse.js'
import { showProblem } from '../src/order/problem.js'
import { type Plan, planOrder } from '../src/plan/plan.js'

/** The plan of an order that must be right. */
export const planOf = (text: string): Plan => {
  const order = parseOrder({ text })
  if (!order.ok) throw new Error(order.problems.map(showProblem).join('\n'))
  const plan = planOrder(order.value)
  if (!plan.ok) throw new Error(plan.problems.map(showProblem).join('\n'))
  return plan.value
}

/** One star as a flow of YAML keys, such as `points: 5, tip-angle: 45, across: 300`. */
export const oneStar = (keys: string, rest = ''): Plan => planOf(`stars: [{ ${keys} }]\n${rest}`)
