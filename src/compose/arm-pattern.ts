import { dimension } from '../drawing/dimension.js'
import { notedDrawing } from '../drawing/drawing.js'
import type { Drawing, Path, Shape } from '../drawing/model.js'
import { chain, path } from '../drawing/shapes.js'
import type { Furniture } from '../furniture/furniture-set.js'
import { blankCorners, blankIsArm, chamferChain, kite, kiteOutline } from '../geometry/kite.js'
import { outlineSize } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { tooSmallForSaw } from '../plan/warnings.js'
import { showLength, showSetting } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'
import { boardLines, kerfLines, OVERRUN, wasteLines } from './arm-cuts.js'
import { angleArcs, armLettering } from './arm-lettering.js'
import { armNotes } from './arm-notes.js'
import { cutNumbers } from './cut-numbers.js'

/**
 * One arm on its board, as it lies at the saw: the lower edge is the fence's. The tip is at the origin, the board
 * runs along x. The finished kite, its blank, the three cuts in order, the waste on the blade's side. An arm that is too
 * small for the saw has no settings, stop or slot of the blade.
 */
export const armPattern = (plan: StarPlan, order: Order, furniture: Furniture): Drawing => {
  const { star, blank } = plan
  const arm = kiteOutline(kite(star))
  const trueSize = outlineSize(arm)
  const byHand = tooSmallForSaw(plan)
  const kerf = byHand ? [] : kerfLines(plan, order.shop.saw.kerf)
  const lines = [...boardLines(plan), ...wasteLines(plan), ...kerf]
  const outline = path('PATTERN', arm)
  const corners = blankCorners(star, blank.side)
  const left = Math.min(...corners.map(({ x }) => x)) - OVERRUN
  const dimensions = armDimensions(plan, order, left)
  const drawn = [outline, ...lines, ...chamferLine(plan), ...angleArcs(plan), ...dimensions]
  const numbers = byHand ? [] : cutNumbers(plan, drawn)
  const lettered = armLettering(plan, order, furniture.grainArrow, [...drawn, ...numbers])
  return notedDrawing({
    kind: 'arm-pattern',
    title: `${plan.order.name}: arm pattern`,
    trueSize,
    figure: [...drawn, ...numbers, ...lettered],
    notes: {
      title: `${plan.order.name}: arm, ${plan.arms} to cut`,
      lines: armNotes(plan, order, trueSize),
    },
    asides: [],
    pieces: [arm],
  })
}

const chamferLine = ({ star, order }: StarPlan): Path[] =>
  order.chamfer === undefined ? [] : [chain('PATTERN', chamferChain(star, order.chamfer), 'dashed')]

const armDimensions = (plan: StarPlan, order: Order, left: number): Shape[] => {
  const { star, blank } = plan
  const show = (length: typeof blank.side) => showLength(length, order.lengths)
  const set = (length: typeof blank.side) => showSetting(length, order.lengths)
  const [tip, low] = blankCorners(star, blank.side)
  const near = point(star.tipEdge, 0)
  const oneLength = blank.side - star.tipEdge < SHOP
  const upright = dimension(point(left, 0), point(left, star.armStrip), 'up', left - 8, show(star.armStrip))
  if (tooSmallForSaw(plan)) return upright
  return oneLength
    ? [
        ...dimension(
          tip,
          near,
          'across',
          -13,
          `${blankIsArm(star) ? 'blank side' : 'stop and blank side'} ${set(star.tipEdge)}`,
        ),
        ...upright,
      ]
    : [
        ...dimension(tip, near, 'across', -13, `stop ${set(star.tipEdge)}`),
        ...dimension(tip, low, 'across', -21, `blank side ${set(blank.side)}`),
        ...upright,
      ]
}
