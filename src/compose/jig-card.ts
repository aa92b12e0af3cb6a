import type { Drawing } from '../drawing/model.js'
import { point } from '../geometry/point.js'
import { levelledSize } from '../jigs/levelled.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { mm } from '../units/convert.js'
import { showSize } from '../units/show.js'
import { type Block, headingBlock, movedShapes, stacked, textBlock } from './card-blocks.js'
import { framedCard, insideFrame, onCards, PADDING } from './card-frame.js'
import { type CardSize, cardSize } from './card-size.js'
import { assembly, PICTURE_ACROSS } from './jig-assembly.js'
import { JIG_CAUTION, nameWords } from './jig-phrases.js'
import { jigWords } from './jig-words.js'
import { type DrawnJig, drawJigs, jigTitle, type WantedJig, whyLeftOut } from './jigs.js'
import { sizeText } from './size-text.js'

const COLUMN = 4
const WORDS = 2.5
/** Between two jigs, and below the title and above the caution of a page. */
const BETWEEN = 3

/**
 * Pages beside the shop card: each jig put together, with the wood in it and the blade beside it, what it is made of,
 * and how it is set. Jigs that cannot be made for this star or this cutter are named with the reason.
 *
 * @param jigs those of {@link drawJigs}
 */
export const jigCards = (jigs: readonly WantedJig[], plan: StarPlan, order: Order): Drawing[] => {
  const size = cardSize(order)
  const bands = jigBands(jigs, plan, order, insideFrame(size.across))
  const pages = onCards(bands, size, (page) => pageOf(plan, page, size).height)
  return pages.map((bands) => cardOf(plan, bands, size))
}

/** The same on one page, however long. */
export const jigCard = (plan: StarPlan, order: Order): Drawing => {
  const { across } = cardSize(order)
  const size = { across, height: mm(0) }
  return cardOf(plan, jigBands(drawJigs(plan, order, [plan]), plan, order, insideFrame(across)), size)
}

const titleOf = (plan: StarPlan): string => `${plan.order.name}: jigs`

/** Title, jigs and caution under each other, and how high a frame around them is. */
const pageOf = (plan: StarPlan, bands: readonly JigBand[], { across }: CardSize): Block => {
  const width = insideFrame(across)
  const title = textBlock([titleOf(plan)], 5, width)
  const notes = [...nameWords(plan), ...(bands.some(({ atBlade }) => atBlade) ? [JIG_CAUTION] : [])]
  const caution = notes.length > 0 ? [textBlock(notes, WORDS, width)] : []
  const { shapes, height } = stacked([title, ...bands, ...caution], BETWEEN)
  return { shapes, height: height + 2 * PADDING }
}

/** @param size of the frame; higher where the bands are */
const cardOf = (plan: StarPlan, bands: readonly JigBand[], size: CardSize): Drawing => {
  const page = pageOf(plan, bands, size)
  const height = Math.max(size.height, page.height)
  return framedCard(
    { kind: 'jig-card', title: titleOf(plan) },
    size.across,
    height,
    movedShapes(page.shapes, point(PADDING, height - PADDING)),
  )
}

/** What a card has of a jig; does it lie beside the blade? */
interface JigBand extends Block {
  readonly atBlade: boolean
}

const jigBands = (jigs: readonly WantedJig[], plan: StarPlan, order: Order, across: number): JigBand[] =>
  jigs.map((wanted) => {
    const drawn = 'drawn' in wanted && wanted.drawn.ok ? wanted.drawn.value : undefined
    return drawn
      ? { ...jigBand(drawn, plan, order, across), atBlade: drawn.jig.inUse?.blade !== undefined }
      : {
          ...stacked(
            [headingBlock(jigTitle(wanted.name)), textBlock(whyLeftOut(wanted), WORDS, across)],
            1.5,
          ),
          atBlade: false,
        }
  })

const jigBand = ({ jig, drawing, sheets }: DrawnJig, plan: StarPlan, order: Order, width: number): Block => {
  const words = jigWords(jig, plan, order)
  const across = width - PICTURE_ACROSS - COLUMN
  const stock = showSize(order.shop.jigStock.thickness, order.lengths)
  const list = [
    ...jig.parts.map(({ word, outer, copies }, index) => {
      const size = sizeText(levelledSize(outer), order.lengths)
      const count = copies && copies.length > 1 ? `, ${copies.length} pieces` : ''
      return `${index + 1}: ${word}${count}, ${size}`
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
