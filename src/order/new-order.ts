import type { Units } from '../units/read-length.js'
import { editedOrder, type OrderValue, orderDocument } from './edit-text.js'
import { asGroup } from './group.js'

/** A star to begin with: its size in round figures of the units. */
export const freshStar = (units: Units, name: string): OrderValue => ({
  name,
  points: 5,
  'tip-angle': 45,
  'board-width': units === 'mm' ? 70 : '3 1/2',
})

/** An order of one star, in which everything else is left open. */
export const newOrder = (units: Units): string =>
  editedOrder(`units: ${units}\n`, ['stars'], [freshStar(units, 'Star 1')])

/** What an order says of the workshop and of who works there, and not of the stars that are made. */
const OF_THE_SHOP = ['nearest', 'creator', 'shop', 'climate', 'jigs']

/** The same in the workshop of an order, which must be YAML that can be read. */
export const newOrderInShop = (text: string): string => {
  const before = asGroup(orderDocument(text).toJS()) ?? {}
  return OF_THE_SHOP.filter((key) => before[key] !== undefined).reduce(
    (written, key) => editedOrder(written, [key], before[key] as OrderValue),
    newOrder(before.units === 'in' ? 'in' : 'mm'),
  )
}
