import type { Problem } from '../../src/order/problem.js'
import { planStock, type StockPlan } from '../../src/stock/stock.js'
import { planOf } from '../orders.js'
import { counted } from './clock.js'

/** The boards of an order that has enough of them. */
export const stockOf = async (text: string): Promise<StockPlan> => {
  const stock = await planStock(planOf(text), counted(5000))
  if (!stock.ok) throw new Error(JSON.stringify(stock.problems))
  return stock.value
}

/** What is wrong with the boards of an order. */
export const boardProblems = async (text: string): Promise<readonly Problem[]> => {
  const stock = await planStock(planOf(text), counted(5000))
  return stock.ok ? [] : stock.problems
}
