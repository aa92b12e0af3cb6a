import { describe, expect, it } from 'vitest'
import { parseOrder } from '../../src/order/parse.js'
import { planPanels } from '../../src/panels/plan-panels.js'
import { planOrder } from '../../src/plan/plan.js'
import { planStock } from '../../src/stock/stock.js'
import { leastCost } from './brute-force.js'
import { counted } from './clock.js'
import { smallOrder } from './small-order.js'

/** Compares until `count` orders had boards enough; tells how many of them cost something. */
const compare = async (count: number, ripKerf?: number): Promise<number> => {
  let [served, bought] = [0, 0]
  for (let seed = 1; served < count; seed++) {
    const order = parseOrder({ text: smallOrder(seed, ripKerf) })
    const plan = order.ok ? planOrder(order.value) : order
    if (!plan.ok) throw new Error(JSON.stringify(plan.problems))
    const least = leastCost(plan.value)
    const stock = await planStock(plan.value, counted(10_000), () => planPanels(plan.value))
    expect(stock.ok, `seed ${seed}`).toBe(least !== undefined)
    if (!stock.ok || least === undefined) continue
    served += 1
    if (stock.value.cost > 0) bought += 1
    expect(stock.value.proved, `seed ${seed}`).toBe(true)
    expect(stock.value.cost, `seed ${seed}`).toBeCloseTo(least, 6)
  }
  return bought
}

describe('the cheapest boards are those that trying everything finds', () => {
  it('for 500 small random orders', async () => {
    expect(await compare(500)).toBeGreaterThan(300)
  }, 120_000)

  it('for 60 whose boards may be ripped into strips', async () => {
    expect(await compare(60, 3)).toBeGreaterThan(30)
  }, 120_000)
})
