import { notedDrawing } from '../drawing/drawing.js'
import type { Drawing } from '../drawing/model.js'
import { path } from '../drawing/shapes.js'
import { closedOutline, outlineSize } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import { showProblem } from '../order/problem.js'
import type { StarPlan } from '../plan/plan.js'
import { mm } from '../units/convert.js'
import { showLength } from '../units/show.js'
import { type Block, headingBlock, movedShapes, stacked, textBlock } from './card-blocks.js'
import { assembly, PICTURE_ACROSS } from './jig-assembly.js'
import { JIG_CAUTION } from './jig-phrases.js'
import { jigWords } from './jig-words.js'
import { type DrawnJig, drawJigs, type WantedJig } from './jigs.js'
import { sizeText } from './size-text.js'

/** As large as the shop card. */
const WIDTH = 186
const HEIGHT = 250
const PADDING = 3
const COLUMN = 4
const WORDS = 2.5
/** Between two jigs, and for the title and the caution of a page. */
const BETWEEN = 4
const TITLE = 26

/**
 * Pages beside the shop card: each jig put together, with the wood in it and the blade beside it, what it is made of,
 * and how it is set. Jigs that cannot be made for this star or this cutter are named with the reason.
 *
 * @param jigs those of {@link drawJigs}
 */
export const jigCards = (jigs: readonly WantedJig[], plan: StarPlan, order: Order): Drawing[] => {
  const pages: Block[][] = []
  let room = 0
  for (const band of jigBands(jigs, plan, order)) {
    if (pages.length === 0 || room < band.height + BETWEEN) {
      pages.push([])
      room = HEIGHT - 2 * PADDING - TITLE
    }
    pages.at(-1)?.push(band)
    room -= band.height + BETWEEN
  }
  return pages.map((bands) => cardOf(plan, bands, HEIGHT))
}

/** The same on one page, however long. */
export const jigCard = (plan: StarPlan, order: Order): Drawing =>
  cardOf(plan, jigBands(drawJigs(plan, order), plan, order), 0)

const cardOf = (plan: StarPlan, bands: readonly Block[], least: number): Drawing => {
  const title = `${plan.order.name}: jigs`
  const caution = textBlock([JIG_CAUTION], WORDS, WIDTH - 2 * PADDING)
  const page = stacked([textBlock([title], 5, WIDTH - 2 * PADDING), ...bands, caution], BETWEEN)
  const height = Math.max(least, page.height + 2 * PADDING)
  return notedDrawing({
    kind: 'jig-card',
    title,
    trueSize: { across: mm(WIDTH), height: mm(height) },
    figure: [
      path('NOTE', closedOutline([point(0, 0), point(WIDTH, 0), point(WIDTH, height), point(0, height)])),
      ...movedShapes(page.shapes, point(PADDING, height - PADDING)),
    ],
    asides: [],
    pieces: [],
  })
}

const jigBands = (jigs: readonly WantedJig[], plan: StarPlan, order: Order): Block[] =>
  jigs.map((wanted) => {
    if ('needless' in wanted) return leftOut(wanted.name, [`Not needed. ${wanted.needless}`])
    const { drawn } = wanted
    return drawn.ok
      ? jigBand(drawn.value, plan, order)
      : leftOut(
          wanted.name,
          drawn.problems.map((problem) => `Left out. ${showProblem(problem)}`),
        )
  })

const leftOut = (name: string, why: readonly string[]): Block =>
  stacked([headingBlock(name.replaceAll('-', ' ')), textBlock(why, WORDS, WIDTH - 2 * PADDING)], 1.5)

const jigBand = ({ jig, drawing, sheets }: DrawnJig, plan: StarPlan, order: Order): Block => {
  const words = jigWords(jig, plan, order)
  const across = WIDTH - 2 * PADDING - PICTURE_ACROSS - COLUMN
  const stock = showLength(order.shop.jigStock.thickness, order.lengths)
  const list = [
    ...jig.parts.map(({ letter, name, outer, copies }) => {
      const size = sizeText(outlineSize(outer), order.lengths)
      const count = copies && copies.length > 1 ? `${copies.length} × ` : ''
      return `${letter}  ${count}${name.replace(/^.*, /, '')}: ${size}`
    }),
    ...words.hardware.map((each) => `+  ${each}`),
    sheets === 1
      ? `All from ${stock} panel, a piece of ${sizeText(drawing.trueSize, order.lengths)}.`
      : `All from ${sheets} pieces of ${stock} panel, one below the other in the file.`,
  ]
  const text = stacked(
    [
      headingBlock(words.title),
      textBlock(words.steps, WORDS, across),
      headingBlock('Parts'),
      textBlock(list, WORDS, across),
    ],
    1.5,
  )
  const picture = assembly(jig)
  return {
    height: Math.max(text.height, picture.height),
    shapes: [...picture.shapes, ...movedShapes(text.shapes, point(PICTURE_ACROSS + COLUMN, 0))],
  }
}
