import { officePaper, officePrinted } from '../order/office-paper.js'
import type { Order, PrintedCheck } from '../order/order.js'
import { paperSize } from '../tables/paper.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'

/** White round a card and its footer: what every printer leaves. */
export const CARD_MARGIN = mm(10)
/** The widest card: what the margins of A4 leave; Letter has a little more. */
const WIDEST = 190
/** Two lines under the card, and two more that tell of a correction. */
const FOOTER = 9
const CORRECTION = 7

export interface CardSize {
  readonly across: Mm
  readonly height: Mm
}

/** Size of a card's frame: it fits between the margins on the shop's A4 or Letter, over its footer, also corrected. */
export const cardSize = (order: Order): CardSize => {
  const printed = officePrinted(order)
  const sheet = paperSize(officePaper(order))
  const footer = FOOTER + (printed ? CORRECTION : 0)
  return {
    across: mm(Math.min(WIDEST, onPrint(sheet.across, printed?.across) - 2 * CARD_MARGIN)),
    height: mm(Math.floor(onPrint(sheet.along, printed?.along) - 2 * CARD_MARGIN - footer)),
  }
}

/** What a sheet's side measures in the true lengths of a corrected page, when that is less. */
const onPrint = (side: Mm, check: PrintedCheck['across'] | undefined): number =>
  check === undefined ? side : Math.min(side, (side * check.measured) / check.of)
