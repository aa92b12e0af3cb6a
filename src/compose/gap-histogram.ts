import { notedDrawing } from '../drawing/drawing.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { chain, label, line, path } from '../drawing/shapes.js'
import type { BatchRisk } from '../fit/batch-risk.js'
import { closedOutline } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import { mm, toInches } from '../units/convert.js'
import { fixed, type LengthStyle } from '../units/show.js'
import { SAME_POINT } from '../units/tolerance.js'
import { riskNotes } from './risk-report.js'

/** The diagram on paper, in mm. */
const WIDTH = 160
const HEIGHT = 80
/** Bars that have a figure below their edge: every one, or so many apart that the figures stay clear. */
const FIGURE_WIDTH = 14

/** Gaps at the last joint of simulated stars as bars, what is worked out as a line, what is accepted between two lines. */
export const gapHistogram = (risk: BatchRisk, order: Order): Drawing => {
  const { edges, shares, expected } = risk.histogram
  const bars = shares.length
  const bar = WIDTH / bars
  const up = HEIGHT / Math.max(...shares, ...expected)
  const within = edges.flatMap((gap, edge) =>
    Math.abs(Math.abs(gap) - risk.acceptedGap) < SAME_POINT ? [edge * bar] : [],
  )
  const title = `${risk.plan.order.name}: gaps at the last joint`
  return notedDrawing({
    kind: 'gap-histogram',
    title,
    trueSize: { across: mm(WIDTH), height: mm(HEIGHT) },
    figure: [
      ...shares.flatMap((share, index) => (share === 0 ? [] : [barShape(index * bar, bar, share * up)])),
      chain(
        'DIM',
        expected.map((share, index) => point((index + 0.5) * bar, share * up)),
      ),
      line('PATTERN', point(-3, 0), point(WIDTH + 3, 0)),
      ...acceptedLines(within),
      ...figures(edges, bar, order.lengths),
      label('open at the centre', point(0, -12), { height: 3.5 }),
      label('open at the valley', point(WIDTH, -12), { height: 3.5, anchor: 'end' }),
      label(`gap, ${order.lengths.units === 'in' ? 'inches' : 'mm'}`, point(WIDTH / 2, -12), {
        height: 3.5,
        anchor: 'middle',
      }),
    ],
    asides: [],
    notes: { title, lines: riskNotes(risk, order) },
    pieces: [],
  })
}

const barShape = (x: number, width: number, height: number): Shape =>
  path(
    'PATTERN',
    closedOutline([point(x, 0), point(x + width, 0), point(x + width, height), point(x, height)]),
    'narrow',
  )

/** The one word stands in the middle of both lines. */
const acceptedLines = (xs: readonly number[]): Shape[] => [
  ...xs.map((x) => line('CUT-OUTSIDE', point(x, 0), point(x, HEIGHT + 6), 'dashed')),
  label(
    'accepted',
    point(
      xs.reduce((sum, x) => sum + x / xs.length, 0),
      HEIGHT + 8,
    ),
    {
      height: 2.5,
      anchor: 'middle',
    },
  ),
]

/** Below the edges of the bars; the numbers rise away from zero on both sides. */
const figures = (edges: readonly number[], bar: number, { units }: LengthStyle): Shape[] => {
  const apart = Math.ceil(FIGURE_WIDTH / bar)
  const zero = edges.findIndex((gap) => Math.abs(gap) < SAME_POINT)
  return edges.flatMap((gap, edge): Shape[] => {
    const x = edge * bar
    const told = (edge - zero) % apart === 0
    const size = Math.abs(gap)
    const text = units === 'mm' ? fixed(size, 2) : fixed(toInches(mm(size)), 3)
    return [
      line('PATTERN', point(x, 0), point(x, -1.5), 'narrow'),
      ...(told ? [label(text, point(x, -6), { height: 2.5, anchor: 'middle' })] : []),
    ]
  })
}
