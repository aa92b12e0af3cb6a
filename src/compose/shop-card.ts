import type { Drawing, Shape } from '../drawing/model.js'
import { line } from '../drawing/shapes.js'
import { point } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { tooSmallForSaw } from '../plan/warnings.js'
import type { StockPlan } from '../stock/stock.js'
import type { Mm } from '../units/brand.js'
import { atTheSaw, benchBands, cautions, listBand, titleBand } from './card-bands.js'
import { type Block, movedShapes } from './card-blocks.js'
import { framedCard, insideFrame, PADDING } from './card-frame.js'
import { DENSE, PACKED_SETTINGS, ROOMY, SETTINGS, type Setting, TIGHT } from './card-setting.js'
import { cardSettings } from './card-settings.js'
import { type CardSize, cardSize } from './card-size.js'
import { handSawBlock } from './hand-saw.js'
import { stepDrawings, stepWords } from './step-drawings.js'

/** White at least above and below each band. */
const BAND_GAP = 1.7
/** Heights of the drawn cuts: well read from where the saw stands, and still read; for less there is another page. */
const DRAWN = [32, 26, 20]

/**
 * One star's card, to hang by the saw: its first board to scale, settings, one drawing a cut, what to check, what comes
 * after, the cautions. Where the drawings of the cuts would get too small, what comes after the saw
 * has a page of its own. An arm that is too small for the saw has no settings and no drawings of cuts.
 */
export const shopCards = (plan: StarPlan, order: Order, stock?: StockPlan): Drawing[] => {
  const title = `${plan.order.name}: shop card`
  const size = cardSize(order)
  return cardPages(plan, order, stock, size).map((page, index) =>
    cardOf(page, size.across, index === 0 ? title : `${title}, after the saw`),
  )
}

/** Bands under each other; what the page is higher than they is shared out as white. */
interface Page {
  readonly height: number
  readonly bands: readonly Block[]
}

const cardOf = ({ height, bands }: Page, across: Mm, title: string): Drawing => {
  const taken = bands.reduce((sum, band) => sum + band.height, 0)
  const gap = (height - taken) / (2 * bands.length)
  const shapes: Shape[] = []
  let top = height
  bands.forEach((band, index) => {
    if (index > 0) shapes.push(line('NOTE', point(0, top), point(across, top)))
    shapes.push(...movedShapes(band.shapes, point(PADDING, top - gap)))
    top -= band.height + 2 * gap
  })
  return framedCard({ kind: 'shop-card', title }, across, height, shapes)
}

/** Bands from top to bottom; the step drawings take the height that the others leave. */
const cardPages = (
  plan: StarPlan,
  order: Order,
  stock: StockPlan | undefined,
  { across, height }: CardSize,
): Page[] => {
  const inside = insideFrame(across)
  const lists = listBand(plan, order, inside)
  if (tooSmallForSaw(plan)) {
    const hand = handSawBlock(plan, order, inside)
    return [
      {
        height,
        bands: [titleBand(plan, order, ROOMY, inside), hand, lists, cautions(plan, order, 'all', inside)],
      },
    ]
  }
  const words = stepWords(plan, order, inside)
  const layout = (setting: Setting, lower: readonly Block[]) => {
    const upper = [
      titleBand(plan, order, setting, inside, stock),
      cardSettings(plan, order, setting.figures, inside),
    ]
    const taken = [...upper, ...lower].reduce((sum, band) => sum + band.height, 0)
    const left = height - taken - 2 * (1 + upper.length + lower.length) * BAND_GAP
    return {
      drawn: left - words,
      bands: () => [...upper, stepDrawings(plan, order, inside, left), ...lower],
    }
  }
  const onOnePage = (settings: readonly Setting[]) =>
    firstWithRoom(settings.map((each) => layout(each, [lists, cautions(plan, order, each.warnings, inside)])))
  const whole = onOnePage(SETTINGS) ?? onOnePage(PACKED_SETTINGS)
  if (whole) return [{ height, bands: whole.bands() }]
  const after = benchBands(plan, order, inside)
  const saw = [atTheSaw(plan, order, inside)]
  const layouts = [ROOMY, TIGHT, DENSE].map((each) => layout(each, saw))
  const first = firstWithRoom(layouts) ?? layouts.at(-1)
  if (!first) throw new Error('there are layouts')
  return [
    { height, bands: first.bands() },
    { height: after.reduce((sum, band) => sum + band.height + 2 * PADDING, 0), bands: after },
  ]
}

/** The roomiest setting that leaves the drawn cuts the greatest of the heights that any leaves. */
const firstWithRoom = <Layout extends { readonly drawn: number }>(
  layouts: readonly Layout[],
): Layout | undefined => DRAWN.flatMap((least) => layouts.find(({ drawn }) => drawn >= least) ?? [])[0]
