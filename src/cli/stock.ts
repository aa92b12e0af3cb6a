import { cuttingList } from '../compose/cutting-list.js'
import { stockJson } from '../compose/stock-json.js'
import { parseOrder } from '../order/parse.js'
import { planOrder } from '../plan/plan.js'
import { planStock } from '../stock/stock.js'
import type { Typed } from './order-flags.js'
import { orderInput } from './order-input.js'
import { EXIT, say, tellProblems } from './terminal.js'

/** `starwright stock`: the cheapest boards, the cutting list, and what a star costs. */
export const stock = async (typed: Typed): Promise<number> => {
  const input = await orderInput(typed)
  const order = input.ok ? parseOrder(input.value) : input
  const plan = order.ok ? planOrder(order.value) : order
  if (!plan.ok) return tellProblems(plan.problems)
  const now = () => performance.now()
  const stocked = await planStock(plan.value, { until: now() + 8 * 1000, now })
  if (!stocked.ok) return tellProblems(stocked.problems)
  if (typed.json === true) process.stdout.write(stockJson(stocked.value))
  else say(cuttingList(stocked.value))
  return EXIT.done
}
