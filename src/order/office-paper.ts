import { isAmericanPaper, type PaperName } from '../tables/paper.js'
import type { Order, PrintedCheck } from './order.js'
import { usualPaper } from './to-order.js'

/** The sheet that a desk printer takes in the country of the shop's paper: for cards, and where the paper is no sheet. */
export const officePaper = ({ shop: { paper }, lengths }: Order): Extract<PaperName, 'A4' | 'Letter'> => {
  const { sheet } = paper
  if ('size' in sheet) return isAmericanPaper(sheet.size) ? 'Letter' : 'A4'
  return usualPaper(lengths.units)
}

/** What the print check found for that sheet; a check of a roll, or of a larger sheet, tells nothing of it. */
export const officePrinted = (order: Order): PrintedCheck | undefined => {
  const { sheet, printed } = order.shop.paper
  return 'roll' in sheet || ('size' in sheet && sheet.size !== officePaper(order)) ? undefined : printed
}
