import type { Problem } from '../../src/order/problem.js'
import { planPanels } from '../../src/panels/plan-panels.js'
import { planStock, type StockPlan } from '../../src/stock/stock.js'
import { planOf } from '../orders.js'
import { counted } from './clock.js'

/** The boards of an order that has enough of them. */
export const stockOf = async (text: string): Promise<StockPlan> => {
  const plan = planOf(text)
  const stock = await planStock(plan, counted(5000), planPanels(plan))
  if (!stock.ok) throw new Error(JSON.stringify(stock.problems))
  return stock.value
}

/** What is wrong with the boards of an order. */
export const boardProblems = async (text: string): Promise<readonly Problem[]> => {
  const plan = planOf(text)
  const stock = await planStock(plan, counted(5000), planPanels(plan))
  return stock.ok ? [] : stock.problems
}
