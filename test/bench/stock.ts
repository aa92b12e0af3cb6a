import { parseOrder } from '../../src/order/parse.js'
import { planPanels } from '../../src/panels/plan-panels.js'
import { planOrder } from '../../src/plan/plan.js'
import { cheapestCutting } from '../../src/stock/cheapest.js'
import { loadSolver } from '../../src/stock/highs.js'
import { planStock } from '../../src/stock/stock.js'
import { publishedProblems } from '../stock/published-problems.js'
import { bigOrder } from './big-order.js'

const now = () => performance.now()
const secondsSince = (begun: number): string => `${((now() - begun) / 1000).toFixed(1)} s`

/** The published instances, then the big order: cost, bound, time. */
export const reportStock = async (): Promise<void> => {
  for (const { name, problem, optimum } of publishedProblems()) {
    const begun = now()
    const { cost, proved } = await cheapestCutting(problem, loadSolver, { until: now() + 20_000, now })
    console.log(
      `stock, ${name}: ${cost}${proved ? ', proved' : ''}, ${secondsSince(begun)} (published: ${optimum})`,
    )
  }
  for (const seed of [1, 2, 3]) {
    const begun = now()
    const order = parseOrder({ text: bigOrder(seed) })
    const plan = order.ok ? planOrder(order.value) : order
    const stock = plan.ok
      ? await planStock(plan.value, { until: begun + 8000, now }, planPanels(plan.value))
      : plan
    if (!stock.ok) throw new Error(JSON.stringify(stock.problems))
    const { cost, bound } = stock.value
    const off = (100 * (cost - bound)) / cost
    console.log(
      `stock, 12 stars, 300 arms, 8 lengths, 60 reclaimed boards (${seed}): ${cost.toFixed(2)}, bound ${bound.toFixed(2)}, ${off.toFixed(2)} %, ${secondsSince(begun)} (at most 1 %, 10 s)`,
    )
  }
}
