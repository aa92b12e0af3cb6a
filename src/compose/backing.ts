import { labelBox } from '../drawing/bounds.js'
import { notedDrawing } from '../drawing/drawing.js'
import { SMALL, TAIL } from '../drawing/lettering.js'
import type { Drawing, Label, Shape } from '../drawing/model.js'
import { cross, label, path } from '../drawing/shapes.js'
import { insetLimit } from '../geometry/inset.js'
import { point } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import type { BackingPlan, StarPlan } from '../plan/plan.js'
import { showLength } from '../units/show.js'
import { sizeText } from './size-text.js'

/** Lettering as large as fits, from a title's height down to what a printer still renders. */
const HEIGHTS = [5, 3.5, 2.5, 1.8]

/** Arm of the centre cross, and how many lines stand above it. */
const CROSS = 3
const NAME_LINES = 2

/**
 * The plate behind the star, one tip up, at true size: no allowance for the cutter's kerf. Its note lies inside the
 * outline, so that the file's overall size is the outline's own and can be compared with what the cutter's software
 * shows.
 */
export const backing = (plan: StarPlan, plate: BackingPlan, order: Order): Drawing => {
  const trueSize = { across: plate.across, height: plate.height }
  const lines = [
    `${plan.order.name}: backing`,
    'UP',
    sizeText(trueSize, order.lengths),
    `drawn in mm, inset ${showLength(plate.inset, order.lengths)}`,
    'true size, no kerf allowance',
  ]
  const figure: Shape[] = [
    path('CUT-OUTSIDE', plate.outline),
    ...cross('GUIDE', point(0, 0), CROSS),
    ...noteInside(lines, insetLimit(plan.star, plate.shape) - plate.inset),
  ]
  return notedDrawing({
    kind: 'backing',
    title: `${plan.order.name}: backing`,
    trueSize,
    figure,
    pieces: [plate.outline],
  })
}

/**
 * Lines above and below the centre cross, inside the circle that the outline holds; what finds no room is left out,
 * for a line outside would make the file larger than the outline.
 */
const noteInside = (lines: readonly string[], radius: number): Label[] => {
  const layOut = (height: number): Label[] =>
    lines.map((text, row) => {
      const above = row < NAME_LINES
      const fromCross = above ? NAME_LINES - 1 - row : row - NAME_LINES
      const y = above
        ? CROSS + 1 + (TAIL + fromCross * 1.7) * height
        : -CROSS - 1 - height - fromCross * height * 1.7
      return label(text, point(0, y), { height, anchor: 'middle' })
    })
  const fits = (each: Label): boolean => labelBox(each).every(({ x, y }) => Math.hypot(x, y) < radius - 1)
  const smallest = layOut(HEIGHTS.at(-1) ?? SMALL).filter(fits)
  return HEIGHTS.map(layOut).find((labels) => labels.every(fits)) ?? smallest
}
