import { expect, it } from 'vitest'
import { numberedPanels, panelDrawing } from '../../src/compose/panel-drawing.js'
import { rectangle } from '../../src/geometry/outline.js'
import { planPanels } from '../../src/panels/plan-panels.js'
import { piecesLeft } from '../cutter/swept.js'
import { planOf } from '../orders.js'

/* What hangs together on a panel when the bit has been led along all its lines, by an independent library (Clipper2). */

const STARS = [
  'quantity: 30, points: 6, tip-angle: 60, board-width: 60, backing: { shape: polygon, inset: 12 }',
  'quantity: 30, points: 5, tip-angle: 45, board-width: 70, backing: { shape: star, inset: 10 }',
  'quantity: 30, regular: 5/2, across: 240, backing: { shape: star, inset: 8, corner-radius: 5 }',
]

const orderOf = (star: string, cutter: string, panel = '') =>
  `shop: { cutter: { ${cutter} }, panels: [{ length: 1220, width: 610${panel} }] }\nstars: [{ ${star} }]\n`

const fallApart = (order: string, bit: number): { plates: number; pieces: number } => {
  const found = planPanels(planOf(order))
  const [panel] = numberedPanels(found)
  if (!panel) throw new Error('nothing is laid')
  const lines = panelDrawing(panel, found.plan).shapes.flatMap((shape) =>
    shape.kind === 'path' && shape.layer.startsWith('CUT') ? [shape] : [],
  )
  const { length, width } = panel.filled.panel
  return {
    plates: panel.filled.plates.length,
    pieces: piecesLeft(rectangle(0, 0, length, width), lines, bit / 2).length,
  }
}

it.each(
  STARS.flatMap((star) => [
    { star, cutter: 'kind: router, bit: 3.175, tabs: 3', bit: 3.175, panel: '' },
    { star, cutter: 'kind: router, bit: 6, tabs: 3', bit: 6, panel: '' },
    { star, cutter: 'kind: router, bit: 3, tabs: 4, tab: 4', bit: 3, panel: ', gap: 9, edge: 6' },
  ]),
)('tabs hold every plate and all waste to the rim: $cutter$panel, $star', ({ star, cutter, bit, panel }) => {
  const { plates, pieces } = fallApart(orderOf(star, cutter, panel), bit)
  expect(plates).toBeGreaterThan(5)
  expect(pieces).toBe(1)
})

it('without tabs every plate comes free', () => {
  const [star = ''] = STARS
  const { plates, pieces } = fallApart(orderOf(star, 'kind: router, bit: 3'), 3)
  expect(pieces).toBeGreaterThan(plates)
})
