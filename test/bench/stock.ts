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
    await reportBig(`60 reclaimed boards (${seed})`, bigOrder(seed))
    await reportBig(`60 short reclaimed boards (${seed})`, bigOrder(seed, [300, 1100]))
  }
}

const reportBig = async (what: string, text: string): Promise<void> => {
  const [begun, cpu] = [now(), process.cpuUsage()]
  const order = parseOrder({ text })
  const plan = order.ok ? planOrder(order.value) : order
  const stock = plan.ok
    ? await planStock(plan.value, { until: begun + 8000, now }, () => planPanels(plan.value))
    : plan
  if (!stock.ok) throw new Error(JSON.stringify(stock.problems))
  const { cost, bound, boards } = stock.value
  const off = (100 * (cost - bound)) / cost
  const bought = boards.reduce((sum, { board, times }) => sum + (board.name === undefined ? times : 0), 0)
  const { user, system } = process.cpuUsage(cpu)
  console.log(
    `stock, 12 stars, 300 arms, 8 lengths, ${what}: ${cost.toFixed(2)}, ${bought} boards bought, bound ${bound.toFixed(2)}, ${off.toFixed(2)} %, ${secondsSince(begun)}, CPU ${((user + system) / 1e6).toFixed(1)} s (at most 1 %, 10 s)`,
  )
}
