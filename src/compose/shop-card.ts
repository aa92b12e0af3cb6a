import type { Drawing, Shape } from '../drawing/model.js'
import { line } from '../drawing/shapes.js'
import { point } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { tooSmallForSaw } from '../plan/warnings.js'
import type { StockPlan } from '../stock/stock.js'
import { cautions, listBand, titleBand } from './card-bands.js'
import { type Block, movedShapes } from './card-blocks.js'
import { framedCard, insideFrame, PADDING } from './card-frame.js'
import { FULLEST, PACKED_SETTINGS, ROOMY, SETTINGS, type Setting } from './card-setting.js'
import { cardSettings } from './card-settings.js'
import { type CardSize, cardSize } from './card-size.js'
import { handSawBlock } from './hand-saw.js'
import { stepDrawings, stepWords } from './step-drawings.js'

/** White at least above and below each band. */
const BAND_GAP = 1.7
/** Heights of the drawn cuts: well read from where the saw stands, and still read; less than these only at last. */
const DRAWN = [32, 26, 20]
const LEAST_DRAWN = 17

/**
 * One star's card, to hang by the saw, on one page: its first board to scale, settings, one drawing a cut, what to check,
 * what comes after, the cautions. What crowds it is set smaller. An arm that is too small for the saw has no settings and
 * no drawings of cuts.
 */
export const shopCard = (plan: StarPlan, order: Order, stock?: StockPlan): Drawing => {
  const size = cardSize(order)
  const { across, height } = size
  const bands = cardBands(plan, order, stock, size)
  const taken = bands.reduce((sum, band) => sum + band.height, 0)
  const gap = (height - taken) / (2 * bands.length)
  const shapes: Shape[] = []
  let top: number = height
  bands.forEach((band, index) => {
    if (index > 0) shapes.push(line('NOTE', point(0, top), point(across, top)))
    shapes.push(...movedShapes(band.shapes, point(PADDING, top - gap)))
    top -= band.height + 2 * gap
  })
  return framedCard({ kind: 'shop-card', title: `${plan.order.name}: shop card` }, across, height, shapes)
}

/** Bands from top to bottom; the step drawings take the height that the others leave. */
const cardBands = (
  plan: StarPlan,
  order: Order,
  stock: StockPlan | undefined,
  { across, height }: CardSize,
): readonly Block[] => {
  const inside = insideFrame(across)
  const lists = listBand(plan, order, inside)
  if (tooSmallForSaw(plan)) {
    const hand = handSawBlock(plan, order, inside)
    return [titleBand(plan, order, ROOMY, inside), hand, lists, cautions(plan, order, 'all', inside)]
  }
  const words = stepWords(plan, order, inside)
  const layoutOf = (setting: Setting) => {
    const upper = [
      titleBand(plan, order, setting, inside, stock),
      cardSettings(plan, order, setting.figures, inside),
    ]
    const lower = [lists, cautions(plan, order, setting.warnings, inside)]
    const taken = [...upper, ...lower].reduce((sum, band) => sum + band.height, 0)
    const left = height - taken - 2 * (1 + upper.length + lower.length) * BAND_GAP
    return {
      drawn: left - words,
      bands: () => [...upper, stepDrawings(plan, order, inside, left), ...lower],
    }
  }
  const packed = PACKED_SETTINGS.map(layoutOf)
  const chosen =
    firstWithRoom(SETTINGS.map(layoutOf), DRAWN) ??
    firstWithRoom(packed, DRAWN) ??
    firstWithRoom(packed, [LEAST_DRAWN]) ??
    layoutOf(FULLEST)
  return chosen.bands()
}

/** The roomiest setting that leaves the drawn cuts the greatest of the heights that any leaves. */
const firstWithRoom = <Layout extends { readonly drawn: number }>(
  layouts: readonly Layout[],
  heights: readonly number[],
): Layout | undefined => heights.flatMap((least) => layouts.find(({ drawn }) => drawn >= least) ?? [])[0]
