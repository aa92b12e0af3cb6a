import type { Outcome, Problem } from '../../src/order/problem.js'
import { planPanels } from '../../src/panels/plan-panels.js'
import { planStock, type StockPlan } from '../../src/stock/stock.js'
import { planOf } from '../orders.js'
import { counted } from './clock.js'

/** The boards of an order, or what is wrong with them. */
export const tryStock = (text: string): Promise<Outcome<StockPlan>> => {
  const plan = planOf(text)
  return planStock(plan, counted(5000), () => planPanels(plan))
}

/** The boards of an order that has enough of them. */
export const stockOf = async (text: string): Promise<StockPlan> => {
  const stock = await tryStock(text)
  if (!stock.ok) throw new Error(JSON.stringify(stock.problems))
  return stock.value
}

/** What is wrong with the boards of an order. */
export const boardProblems = async (text: string): Promise<readonly Problem[]> => {
  const stock = await tryStock(text)
  return stock.ok ? [] : stock.problems
}
