import type { Order } from '../order/order.js'
import { sentence } from '../order/problem.js'
import type { StarPlan } from '../plan/plan.js'
import { tooSmallForSaw } from '../plan/warnings.js'
import type { StockPlan } from '../stock/stock.js'
import { showLength } from '../units/show.js'
import { firstBoardRow } from './board-block.js'
import {
  BETWEEN_COLUMNS,
  type Block,
  beside,
  checkList,
  fittedText,
  headingBlock,
  inTwoColumns,
  sideBySide,
  stacked,
  textBlock,
} from './card-blocks.js'
import { MUST_READ, type Setting } from './card-setting.js'
import {
  accuracyText,
  boardLines,
  countText,
  firstPiece,
  type WarningsTold,
  warningTexts,
  workingOrder,
} from './card-words.js'
import { BENCH_CAUTION, SAW_CAUTIONS } from './cautions.js'
import { readingNotes } from './cut-steps.js'
import { ownNote } from './own-note.js'
import { pictureWidth, starPicture } from './star-picture.js'

/** Cautions and notes (ISO 3098). */
const NOTES = 2.5

/** Between a list and the line under it. */
const UNDER_LIST = 1.7

/** Heights of the line that says how many. */
const COUNT = [
  { height: 5, lines: 1 },
  { height: MUST_READ, lines: 1 },
]

/** Name, how many, boards, and the star's picture. */
export const titleBand = (
  plan: StarPlan,
  order: Order,
  { name, picture, note }: Pick<Setting, 'name' | 'picture' | 'note'>,
  inside: number,
  stock?: StockPlan,
): Block => {
  const across = inside - pictureWidth(picture) - BETWEEN_COLUMNS
  const board = stock && firstBoardRow(plan, stock, across)
  const count = countText(plan)
  const lines = [...ownNote(plan, note), ...boardLines(plan, order).slice(0, board ? 1 : undefined)]
  const told =
    picture === 'bare'
      ? [textBlock([[count, sizeWords(plan, order), ...lines].map(sentence).join(' ')], MUST_READ, across)]
      : [fittedText(count, COUNT, across), textBlock(lines, MUST_READ, across)]
  const words = stacked(
    [
      fittedText(plan.order.name, name, across),
      ...told,
      ...(board ? [board] : []),
      textBlock(tooSmallForSaw(plan) ? [] : [readingNotes(order).join(' ')], NOTES, across),
    ],
    2.6,
  )
  return beside(words, starPicture(plan, order, picture), across + BETWEEN_COLUMNS)
}

/** Width and height of the star, where its picture does not give them. */
const sizeWords = ({ star }: StarPlan, { lengths }: Order): string =>
  `${showLength(star.across, lengths)} across, ${showLength(star.height, lengths)} high`

const firstPieceBlock = (plan: StarPlan, order: Order, width: number): Block =>
  stacked(
    [
      checkList('First piece', firstPiece(plan, order), MUST_READ, width),
      textBlock([accuracyText(plan, order)], MUST_READ, width),
    ],
    UNDER_LIST,
  )

/** What to check on the first piece, beside what comes after the saw. */
export const listBand = (plan: StarPlan, order: Order, inside: number): Block =>
  sideBySide(
    inside,
    (width) => firstPieceBlock(plan, order, width),
    (width) => afterSaw(plan, order, NOTES, width),
  )

const afterSaw = (plan: StarPlan, order: Order, height: number, width: number): Block =>
  checkList('Then, in this order', workingOrder(plan, order), height, width)

/** The plan's warnings, then what always holds. */
export const cautions = (plan: StarPlan, order: Order, told: WarningsTold, width: number): Block =>
  listedCautions([...warningTexts(plan, order, told), ...SAW_CAUTIONS, BENCH_CAUTION], width)

/** Lines of more letters than this width holds are hard to follow. */
const WIDEST_NOTES = 130

const listedCautions = (texts: readonly string[], inside: number): Block => {
  const listed = (width: number) => texts.map((text) => textBlock([text], NOTES, width))
  return stacked(
    [
      headingBlock('Cautions'),
      inside > WIDEST_NOTES ? inTwoColumns(inside, listed, 1) : stacked(listed(inside), 1),
    ],
    1,
  )
}
