import { parseOrder } from '../order/parse.js'
import { type Problem, problemsOf } from '../order/problem.js'
import { type Plan, planOrder } from '../plan/plan.js'

/** An order's text, and what it comes to. */
export interface Job {
  readonly text: string
  readonly problems: readonly Problem[]
  /** Absent when the order has mistakes. */
  readonly plan?: Plan
}

export const jobOf = (text: string): Job => {
  const order = parseOrder({ text })
  const plan = order.ok ? planOrder(order.value) : order
  return { text, problems: problemsOf(plan), ...(plan.ok ? { plan: plan.value } : {}) }
}
