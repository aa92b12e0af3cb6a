import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { tooSmallForSaw } from '../plan/warnings.js'
import type { StockPlan } from '../stock/stock.js'
import { firstBoardRow } from './board-block.js'
import {
  BETWEEN_COLUMNS,
  type Block,
  beside,
  checkList,
  fittedText,
  headingBlock,
  sideBySide,
  stacked,
  textBlock,
} from './card-blocks.js'
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
import { PICTURE_WIDTH, starPicture } from './star-picture.js'

/** At the saw nothing is lettered smaller than MUST_READ; cautions and notes not smaller than NOTES (ISO 3098). */
const MUST_READ = 3.5
const NOTES = 2.5

/** Between a list and the line under it. */
const UNDER_LIST = 1.7

/** A name's heights, each with the lines it may take; the last takes as many as it needs. */
const LARGE_NAME = [
  { height: 10, lines: 1 },
  { height: 7, lines: 2 },
  { height: 5, lines: 2 },
  { height: MUST_READ, lines: 1 },
]
const SMALL_NAME = LARGE_NAME.filter(({ height }) => height !== 7)

/** How roomy a card is set. */
export interface Setting {
  /** Height of the saw's figures. */
  readonly figures: number
  readonly name: typeof LARGE_NAME
  /** Has each caution its own line? */
  readonly apart: boolean
  readonly warnings: WarningsTold
}

export const ROOMY: Setting = {
  figures: 14,
  name: LARGE_NAME,
  apart: true,
  warnings: 'all',
}

export const TIGHT: Setting = { ...ROOMY, figures: 10, apart: false, name: SMALL_NAME }

/** The roomiest first. */
export const SETTINGS: readonly Setting[] = [
  ROOMY,
  { ...ROOMY, figures: 10 },
  { ...ROOMY, figures: 10, apart: false },
  TIGHT,
  { ...TIGHT, warnings: 'at the saw' },
]

/** Before the work after the saw gets a page of its own the figures are set smaller, at twice what must be read. */
export const PACKED: Setting = { ...TIGHT, figures: 2 * MUST_READ }

/** Name, how many, boards, and the star's picture. */
export const titleBand = (
  plan: StarPlan,
  order: Order,
  { name }: Setting,
  inside: number,
  stock?: StockPlan,
): Block => {
  const across = inside - PICTURE_WIDTH - BETWEEN_COLUMNS
  const board = stock && firstBoardRow(plan, stock, across)
  const words = stacked(
    [
      fittedText(plan.order.name, name, across),
      fittedText(
        countText(plan),
        [
          { height: 5, lines: 1 },
          { height: MUST_READ, lines: 1 },
        ],
        across,
      ),
      textBlock(
        [...ownNote(plan), ...boardLines(plan, order).slice(0, board ? 1 : undefined)],
        MUST_READ,
        across,
      ),
      ...(board ? [board] : []),
      textBlock(tooSmallForSaw(plan) ? [] : [readingNotes(order).join(' ')], NOTES, across),
    ],
    2.6,
  )
  return beside(words, starPicture(plan, order), across + BETWEEN_COLUMNS)
}

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

/** What comes after the saw on a page of its own, with the warnings that do not bear on a cut. */
export const benchBands = (plan: StarPlan, order: Order, inside: number): Block[] => [
  stacked(
    [fittedText(plan.order.name, LARGE_NAME, inside), textBlock([countText(plan)], MUST_READ, inside)],
    2.6,
  ),
  afterSaw(plan, order, MUST_READ, inside),
  listedCautions([...warningTexts(plan, order, 'after the saw'), BENCH_CAUTION], inside),
]

const afterSaw = (plan: StarPlan, order: Order, height: number, width: number): Block =>
  checkList('Then, in this order', workingOrder(plan, order), height, width)

/** What is left of the lists on a card whose bench work has a page of its own. */
export const atTheSaw = (plan: StarPlan, order: Order, inside: number): Block =>
  sideBySide(
    inside,
    (width) => firstPieceBlock(plan, order, width),
    (width) => listedCautions([...warningTexts(plan, order, 'at the saw'), ...SAW_CAUTIONS], width),
  )

/** The plan's warnings, then what always holds. */
export const cautions = (
  plan: StarPlan,
  order: Order,
  { warnings, apart }: Pick<Setting, 'warnings' | 'apart'>,
  width: number,
): Block => {
  const always = [...SAW_CAUTIONS, BENCH_CAUTION]
  return listedCautions(
    [...warningTexts(plan, order, warnings), ...(apart ? always : [always.join(' ')])],
    width,
  )
}

const listedCautions = (texts: readonly string[], width: number): Block =>
  stacked([headingBlock('Cautions'), ...texts.map((text) => textBlock([text], NOTES, width))], 1)
