import { isAmericanPaper, type PaperName } from '../tables/paper.js'
import type { Order } from './order.js'
import { usualPaper } from './to-order.js'

/** The sheet that a desk printer takes in the country of the shop's paper: for cards, and where the paper is no sheet. */
export const officePaper = ({ shop: { paper }, lengths }: Order): Extract<PaperName, 'A4' | 'Letter'> => {
  const { sheet } = paper
  if ('size' in sheet) return isAmericanPaper(sheet.size) ? 'Letter' : 'A4'
  return usualPaper(lengths.units)
}
