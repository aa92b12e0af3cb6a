import { LARGE, MEDIUM, SMALL } from '../drawing/lettering.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { line } from '../drawing/shapes.js'
import { point } from '../geometry/point.js'
import type { StockPlan } from '../stock/stock.js'
import type { Mm } from '../units/brand.js'
import { boardBlock } from './board-block.js'
import { type Block, fittedText, movedShapes, stacked, textBlock } from './card-blocks.js'
import { framedCard, insideFrame, onCards, PADDING } from './card-frame.js'
import { cardSize } from './card-size.js'
import { SAW_CAUTION } from './cautions.js'
import { quotationBlocks } from './quotation-block.js'
import {
  blankText,
  boardSize,
  boardsTaken,
  drawnText,
  metalLines,
  slotText,
  takenText,
  verdictText,
} from './stock-words.js'
import { pictureScale } from './strip-picture.js'

/** White between two boards, with a line through its middle. */
const GAP = 5

/** The cutting list on pages of a shop card's size. */
export const cuttingPages = (stock: StockPlan): Drawing[] => {
  const size = cardSize(stock.plan.order)
  const pages = onCards(cuttingBlocks(stock, insideFrame(size.across)), size, heightOf)
  return pages.map((blocks, index) =>
    page(
      blocks,
      `${stock.plan.order.title}: boards, page ${index + 1} of ${pages.length}`,
      size.across,
      size.height,
    ),
  )
}

/** The cutting list as one drawing, as high as it needs to be. */
export const cuttingSheet = (stock: StockPlan): Drawing => {
  const { across } = cardSize(stock.plan.order)
  const blocks = cuttingBlocks(stock, insideFrame(across))
  return page(blocks, `${stock.plan.order.title}: boards`, across, heightOf(blocks) - GAP)
}

const heightOf = (blocks: readonly Block[]): number =>
  blocks.reduce((sum, block) => sum + block.height + GAP, 2 * PADDING)

const page = (blocks: readonly Block[], title: string, across: Mm, height: number): Drawing => {
  const shapes: Shape[] = []
  let top = height - PADDING
  blocks.forEach((block, index) => {
    if (index > 0) shapes.push(line('NOTE', point(0, top + GAP / 2), point(across, top + GAP / 2)))
    shapes.push(...movedShapes(block.shapes, point(PADDING, top)))
    top -= block.height + GAP
  })
  return framedCard({ kind: 'cutting-list', title }, across, height, shapes)
}

const cuttingBlocks = (stock: StockPlan, width: number): Block[] => {
  const { boards, plan } = stock
  const count = boards.reduce((sum, { times }) => sum + times, 0)
  const scale = pictureScale(
    boards.map(({ board }) => board),
    width,
  )
  let first = 1
  const blocks = boards.map((cut) => {
    const block = boardBlock(cut, { first, count }, scale, width, plan.order.lengths)
    first += cut.times
    return block
  })
  return [headBlock(stock, scale, width), ...blocks, ...quotationBlocks(stock, width)]
}

const headBlock = (stock: StockPlan, scale: number, width: number): Block => {
  const { plan, boards, kinds } = stock
  const { lengths, title } = plan.order
  const take = boardsTaken(boards).map(
    ({ board, number, times }) =>
      `${times} × ${board.name ?? `board ${number}`} (${boardSize(board, lengths)})`,
  )
  const legend = kinds.map((kind) => `${kind.letter}: ${blankText(kind, lengths)}`)
  return stacked(
    [
      fittedText(
        title,
        [
          { height: 7, lines: 1 },
          { height: LARGE, lines: 2 },
        ],
        width,
      ),
      textBlock([`${takenText(stock)}. ${verdictText(stock)}`, ...take], MEDIUM, width),
      textBlock(legend, MEDIUM, width),
      textBlock(
        [
          `Drawn 1\u00a0:\u00a0${scale}. ${drawnText} ${slotText} T marks a trim.`,
          ...metalLines(boards).map((text) => `! ${text}`),
          `Safety: ${SAW_CAUTION}`,
        ],
        SMALL,
        width,
      ),
    ],
    2.4,
  )
}
