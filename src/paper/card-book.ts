import { drawingExtents } from '../drawing/bounds.js'
import { SMALL } from '../drawing/lettering.js'
import type { Drawing } from '../drawing/model.js'
import { label } from '../drawing/shapes.js'
import { point } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import { usualPaper } from '../order/to-order.js'
import { paperSize } from '../tables/paper.js'
import { mm } from '../units/convert.js'
import type { Page, PrintedBook } from './page.js'
import { sheetOfSize } from './sheet.js'

/**
 * Cards to hang by the saw, each on an upright sheet of letter-paper size, whatever the patterns are printed on.
 *
 * @param what the file holds, in words
 */
export const cardBook = (cards: readonly Drawing[], order: Order, what = 'shop cards'): PrintedBook =>
  bookOf(cards, order, what, 'card')

/** The cutting list's pages, to hang beside them. */
export const cuttingBook = (pages: readonly Drawing[], order: Order): PrintedBook =>
  bookOf(pages, order, 'boards', 'page')

/** How the panels are laid out. */
export const panelBook = (pages: readonly Drawing[], order: Order): PrintedBook =>
  bookOf(pages, order, 'panels', 'page')

const bookOf = (cards: readonly Drawing[], order: Order, title: string, each: string): PrintedBook => ({
  title: `${order.title}: ${title}`,
  pages: cards.map((card, index) => cardPage(card, `${each} ${index + 1} of ${cards.length}`, order)),
  bookmarks: cards.map((card, page) => ({ title: card.title, page, children: [] })),
})

/** White around a card: what every printer leaves. */
const MARGIN = mm(10)

const cardPage = (card: Drawing, name: string, order: Order): Page => {
  const { paper } = order.shop
  const sheet = sheetOfSize({ ...paper, margin: MARGIN }, paperSize(usualPaper(order.lengths.units)), false)
  const { min, max } = drawingExtents(card)
  const top = sheet.along - MARGIN
  const shift = point((sheet.across - min.x - max.x) / 2, top - max.y)
  const corrected = paper.printed ? 'corrected for the printer' : undefined
  const footer = [order.title, name, corrected, order.date, order.creator].filter(
    (part) => part !== undefined,
  )
  return {
    name,
    sheet,
    views: [
      {
        shapes: card.shapes,
        window: { min: point(MARGIN, MARGIN), max: point(sheet.across - MARGIN, top) },
        shift,
      },
    ],
    furniture: () => ({
      shapes: [label(footer.join(' · '), point(min.x + shift.x, MARGIN + 1), { height: SMALL })],
      artwork: [],
    }),
  }
}
