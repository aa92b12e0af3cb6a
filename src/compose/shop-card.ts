import { notedDrawing } from '../drawing/drawing.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { line, path } from '../drawing/shapes.js'
import { closedOutline } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { StockPlan } from '../stock/stock.js'
import { mm } from '../units/convert.js'
import { firstBoardRow } from './board-block.js'
import {
  type Block,
  checkList,
  fittedText,
  headingBlock,
  movedShapes,
  stacked,
  textBlock,
} from './card-blocks.js'
import { cardSettings, readingNote } from './card-settings.js'
import { accuracyText, boardLines, countText, firstPiece, sawWarnings, workingOrder } from './card-words.js'
import { CARD_CAUTIONS } from './cautions.js'
import { PICTURE_WIDTH, starPicture } from './star-picture.js'
import { stepDrawings } from './step-drawings.js'

/** The card fits the window of A4 and of Letter with 10 mm margins, and leaves a title strip below. */
const WIDTH = 186
const HEIGHT = 250
/** White beside the frame, and at least above and below each band. */
const PADDING = 3
const BAND_GAP = 1.7

const INSIDE = WIDTH - 2 * PADDING
const COLUMNS = 4

/** At the saw nothing is lettered smaller than MUST_READ; cautions and notes not smaller than NOTES (ISO 3098). */
const MUST_READ = 3.5
const NOTES = 2.5

/** A name's heights, each with the lines it may take; the last takes as many as it needs. */
const LARGE_NAME = [
  { height: 10, lines: 1 },
  { height: 7, lines: 2 },
  { height: 5, lines: 2 },
  { height: MUST_READ, lines: 1 },
]
const SMALL_NAME = LARGE_NAME.filter(({ height }) => height !== 7)

/** Height of the figures, lettering of the name, and whether each caution has its own line; the roomiest first. */
const SETTINGS = [
  { figures: 14, name: LARGE_NAME, apart: true },
  { figures: 10, name: LARGE_NAME, apart: true },
  { figures: 10, name: SMALL_NAME, apart: false },
]
/** Below this height the step drawings are hard to read from where the saw stands. */
const STEPS = 62

/**
 * One star's card, to hang by the saw: its first board to scale where there is room, settings, one drawing a cut, what to
 * check, what comes after, the cautions.
 */
export const shopCard = (plan: StarPlan, order: Order, stock?: StockPlan): Drawing => {
  const bands = cardBands(plan, order, stock)
  const taken = bands.reduce((sum, { height }) => sum + height, 0)
  const gap = (HEIGHT - taken) / (2 * bands.length)
  const shapes: Shape[] = [frame()]
  let top = HEIGHT
  bands.forEach((band, index) => {
    if (index > 0) shapes.push(line('NOTE', point(0, top), point(WIDTH, top)))
    shapes.push(...movedShapes(band.shapes, point(PADDING, top - gap)))
    top -= band.height + 2 * gap
  })
  return notedDrawing({
    kind: 'shop-card',
    title: `${plan.order.name}: shop card`,
    trueSize: { across: mm(WIDTH), height: mm(HEIGHT) },
    figure: shapes,
    asides: [],
    pieces: [],
  })
}

const frame = (): Shape =>
  path('NOTE', closedOutline([point(0, 0), point(WIDTH, 0), point(WIDTH, HEIGHT), point(0, HEIGHT)]))

/** From top to bottom; the step drawings take the height that the others leave. */
const cardBands = (plan: StarPlan, order: Order, stock: StockPlan | undefined): Block[] => {
  const layouts = [...(stock ? [stock] : []), undefined].flatMap((boards) =>
    SETTINGS.map(({ figures, name, apart }) => {
      const above = [titleBand(plan, order, name, boards), cardSettings(plan, order, figures, INSIDE)]
      const below = [listBand(plan, order), cautionBand(plan, order, apart)]
      const taken = [...above, ...below].reduce((sum, { height }) => sum + height, 0)
      return { above, below, left: HEIGHT - taken - 10 * BAND_GAP }
    }),
  )
  const layout = layouts.find(({ left }) => left >= STEPS) ?? layouts.at(-1)
  return layout ? [...layout.above, stepDrawings(plan, order, INSIDE, layout.left), ...layout.below] : []
}

const titleBand = (
  plan: StarPlan,
  order: Order,
  name: typeof LARGE_NAME,
  stock: StockPlan | undefined,
): Block => {
  const across = INSIDE - PICTURE_WIDTH - COLUMNS
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
      textBlock(boardLines(plan, order).slice(0, board ? 1 : undefined), MUST_READ, across),
      ...(board ? [board] : []),
      textBlock([readingNote(order)], NOTES, across),
    ],
    2.6,
  )
  const picture = starPicture(plan, order)
  return beside(words, picture, across + COLUMNS)
}

/** The second block to the right of the first, from `x` on. */
const beside = (left: Block, right: Block, x: number): Block => ({
  height: Math.max(left.height, right.height),
  shapes: [...left.shapes, ...movedShapes(right.shapes, point(x, 0))],
})

const listBand = (plan: StarPlan, order: Order): Block => {
  const left = (INSIDE - COLUMNS) * 0.4
  const right = INSIDE - COLUMNS - left
  return beside(
    stacked(
      [
        checkList('First piece', firstPiece(plan, order), MUST_READ, left),
        textBlock([accuracyText(plan, order)], MUST_READ, left),
      ],
      BAND_GAP,
    ),
    checkList('Then, in this order', workingOrder(plan, order), NOTES, right),
    left + COLUMNS,
  )
}

const cautionBand = (plan: StarPlan, order: Order, apart: boolean): Block =>
  stacked(
    [
      headingBlock('Cautions'),
      ...[...sawWarnings(plan, order), ...(apart ? CARD_CAUTIONS : [CARD_CAUTIONS.join(' ')])].map((text) =>
        textBlock([text], NOTES, INSIDE),
      ),
    ],
    1,
  )
