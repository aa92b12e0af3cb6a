import type { StarCost } from '../stock/quotation.js'
import type { StockPlan } from '../stock/stock.js'
import { fixed } from '../units/show.js'
import { areaText } from './stock-words.js'

export const QUOTATION_TITLE = 'What a star costs'

/** What is in the figures and what is not. */
export const QUOTATION_NOTE =
  'Each star pays its share of the boards and panels it is cut from, what is left of them included. Work, power and profit are yours to add.'

/** A line a star, under a heading; all together in a last line where there are several. The first column holds words. */
export const quotationTable = ({ stars, priced, plan: { order } }: StockPlan): string[][] => {
  const rows = stars.map((cost) => [
    cost.plan.order.name,
    String(cost.plan.order.quantity),
    areaText(cost.wood, order.lengths),
    money(priced ? cost.boards : undefined),
    money(cost.panel),
    money(cost.hardware),
    money(isPriced(cost) ? cost.total : undefined),
    money(isPriced(cost) ? allOf(cost) : undefined),
  ])
  const total = stars.reduce((sum, cost) => sum + allOf(cost), 0)
  const sum = ['Together', '', '', '', '', '', '', money(stars.some(isPriced) ? total : undefined)]
  return [HEADING, ...rows, ...(stars.length > 1 ? [sum] : [])]
}

const HEADING = ['Star', 'stars', 'wood', 'boards', 'panel', 'hardware', 'one star', 'all of them']

const money = (amount: number | undefined): string => (amount === undefined ? '-' : fixed(amount, 2))

const isPriced = ({ boards, panel, hardware }: StarCost): boolean =>
  [boards, panel, hardware].some((part) => part !== undefined)

const allOf = ({ total, plan }: StarCost): number => total * plan.order.quantity
