import { expect, it } from 'vitest'
import { verdictText } from '../../src/compose/stock-words.js'
import { planPanels } from '../../src/panels/plan-panels.js'
import { planStock } from '../../src/stock/stock.js'
import { bigOrder } from '../bench/big-order.js'
import { planOf } from '../orders.js'
import { counted } from './clock.js'

it('when the time runs out, the best found is told with a bound that cannot be undercut, and what is open', async () => {
  const plan = planOf(bigOrder(1))
  expect(plan.stars.reduce((sum, { arms }) => sum + arms, 0)).toBe(300)
  const [hurried, patient] = [
    await planStock(plan, counted(1), () => planPanels(plan)),
    await planStock(plan, counted(400), () => planPanels(plan)),
  ]
  if (!hurried.ok || !patient.ok) throw new Error('there are boards enough')
  expect(hurried.value.proved).toBe(false)
  expect(patient.value.cost).toBeLessThanOrEqual(hurried.value.cost)
  expect(hurried.value.bound).toBeLessThanOrEqual(patient.value.bound)
  expect(patient.value.bound).toBeLessThanOrEqual(patient.value.cost)
  expect(hurried.value.bound).toBeGreaterThan(hurried.value.cost / 2)
  const { cost, bound } = hurried.value
  expect(verdictText(hurried.value)).toContain(
    `costs less than ${bound.toFixed(2)}, so at most ${((100 * (cost - bound)) / cost).toFixed(1)} % can be saved`,
  )
}, 60_000)
