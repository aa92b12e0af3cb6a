import { cutPlan } from '../compose/cut-plan.js'
import { planJson } from '../compose/plan-json.js'
import { parseOrder } from '../order/parse.js'
import { planOrder } from '../plan/plan.js'
import type { Typed } from './order-flags.js'
import { orderInput } from './order-input.js'
import { EXIT, say, tellProblems } from './terminal.js'

/** `starwright plan`: the cut plan, for people or as JSON. */
export const plan = async (typed: Typed): Promise<number> => {
  const input = await orderInput(typed)
  const order = input.ok ? parseOrder(input.value) : input
  const planned = order.ok ? planOrder(order.value) : order
  if (!planned.ok) return tellProblems(planned.problems)
  if (typed.json === true) process.stdout.write(planJson(planned.value))
  else say(cutPlan(planned.value))
  return EXIT.done
}
