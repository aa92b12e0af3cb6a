import type { Choice } from '../choose/choices.js'
import { notedDrawing } from '../drawing/drawing.js'
import type { Drawing } from '../drawing/model.js'
import { cross, path } from '../drawing/shapes.js'
import { point } from '../geometry/point.js'
import { starOutline } from '../geometry/star.js'
import type { Order } from '../order/order.js'
import { mm } from '../units/convert.js'
import { PRINT_CAUTION } from './cautions.js'
import { comparisonRows } from './choice-words.js'

/** Two stars over each other at true size, centre on centre and one tip up; the second is dashed. */
export const comparison = (a: Choice, b: Choice, order: Order): Drawing => {
  const [first, second] = [a.plan.star, b.plan.star]
  const title = `${a.label} and ${b.label}`
  return notedDrawing({
    kind: 'comparison',
    title,
    trueSize: {
      across: mm(Math.max(first.across, second.across)),
      height: mm(Math.max(first.height, second.height)),
    },
    figure: [
      path('PATTERN', starOutline(first)),
      path('DIM', starOutline(second), 'dashed'),
      ...cross('GUIDE', point(0, 0), Math.min(6, first.valleyRadius / 3)),
    ],
    asides: [],
    notes: {
      title,
      lines: [
        `Full line: ${a.label}. Dashed line: ${b.label}. True size.`,
        ...comparisonRows(a, b, order).map(([what, one, other]) => `${what}: ${one}; ${other}`),
        PRINT_CAUTION,
      ],
    },
    pieces: [],
  })
}
