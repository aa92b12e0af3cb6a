import { movedShapes, textBlock } from '../compose/card-blocks.js'
import { CARD_MARGIN } from '../compose/card-size.js'
import { drawingExtents } from '../drawing/bounds.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { point } from '../geometry/point.js'
import { officePaper, officePrinted } from '../order/office-paper.js'
import type { Order } from '../order/order.js'
import { paperSize } from '../tables/paper.js'
import type { Page, PrintedBook } from './page.js'
import { sheetOfSize, uncorrected } from './sheet.js'
import { correctionText } from './strip.js'

/**
 * Cards to hang by the saw, each on an upright sheet of the shop's A4 or Letter, whatever the patterns are printed on.
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

const cardPage = (card: Drawing, name: string, order: Order): Page => {
  const printed = officePrinted(order)
  const paper = printed ? order.shop.paper : uncorrected(order.shop.paper)
  const sheet = sheetOfSize({ ...paper, margin: CARD_MARGIN }, paperSize(officePaper(order)), false)
  const { min, max } = drawingExtents(card)
  const top = sheet.along - CARD_MARGIN
  const shift = point((sheet.across - min.x - max.x) / 2, top - max.y)
  const footer = [order.title, name, order.date, order.creator].filter((part) => part !== undefined)
  const told = printed ? [correctionText(printed, order.lengths)] : []
  return {
    name,
    sheet,
    views: [
      {
        shapes: card.shapes,
        window: { min: point(CARD_MARGIN, CARD_MARGIN), max: point(sheet.across - CARD_MARGIN, top) },
        shift,
      },
    ],
    furniture: () => ({
      shapes: footerLines(
        [footer.join(' · '), ...told],
        min.x + shift.x,
        max.x - min.x,
        min.y + shift.y - CARD_MARGIN,
      ),
      artwork: [],
    }),
  }
}

/** Heights of the footer's lettering (ISO 3098): the first in which it fits under the card. */
const FOOTER_HEIGHTS = [2.5, 1.8]

/** Paragraphs standing on the lower margin, in `room` mm of height. */
const footerLines = (
  paragraphs: readonly string[],
  left: number,
  across: number,
  room: number,
): readonly Shape[] => {
  const blocks = FOOTER_HEIGHTS.map((height) => textBlock(paragraphs, height, across))
  const fitting = blocks.find(({ height }) => height <= room) ?? blocks.at(-1)
  return fitting ? movedShapes(fitting.shapes, point(left, CARD_MARGIN + fitting.height)) : []
}
