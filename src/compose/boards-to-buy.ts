import type { Order } from '../order/order.js'
import type { StockPlan } from '../stock/stock.js'
import { boardsTaken, boardText, takenText, verdictText } from './stock-words.js'
import { listing } from './text-rows.js'

/** The boards for all stars together, as the cutting list has them; without one, the command that finds them. */
export const boardsToBuy = ({ shop, lengths }: Order, stock: StockPlan | undefined): string[] => {
  if (shop.boards.length === 0) return []
  if (!stock)
    return listing('Boards for all stars together', [
      '`starwright stock` with this order finds the cheapest and says where to cut them',
    ])
  const boards = boardsTaken(stock.boards).map((taken) => `${taken.times} × ${boardText(taken, lengths)}`)
  return listing('Boards for all stars together', [
    `${takenText(stock)}: ${boards.join('; ')}`,
    ...(stock.proved ? [] : [verdictText(stock)]),
    'where to cut them: cutting-list.pdf',
  ])
}
