import { describe, expect, it } from 'vitest'
import { backing } from '../../src/compose/backing.js'
import { numberedPanels, panelDrawing } from '../../src/compose/panel-drawing.js'
import { CENTRE_CROSS, plateCuts } from '../../src/compose/plate-cuts.js'
import { labelBox } from '../../src/drawing/bounds.js'
import type { Shape } from '../../src/drawing/model.js'
import { boxIsClear } from '../../src/drawing/place-label.js'
import { cross } from '../../src/drawing/shapes.js'
import { edges } from '../../src/geometry/outline.js'
import { point } from '../../src/geometry/point.js'
import { planPanels } from '../../src/panels/plan-panels.js'
import { stretch } from '../geometry/jts.js'
import { planOf } from '../orders.js'

const LANTERN =
  'regular: 6/2, across: 240, backing: { shape: auto, covers: 40, inset: 6, hanging: { kind: cord, wall: 4 }, fixing: { kind: screws, clear: 5 } }'
const STALL =
  'points: 5, tip-angle: 45, board-width: 70, backing: { inset: 10, hanging: { kind: keyhole }, fixing: { kind: nails } }'

/** Its nails stand where the name would. */
const PIER =
  'points: 4, tip-angle: 40, across: 180, backing: { shape: polygon, inset: 6, fixing: { kind: nails, clear: 3 } }'

const planWith = (...stars: readonly string[]) =>
  planOf(`
shop: { cutter: { kind: router, bit: 3, tabs: 4 }, panels: [{ length: 1220, width: 610 }] }
stars: [${stars.map((keys) => `{ ${keys} }`).join(', ')}]
`)

const strokes = (shapes: readonly Shape[]) =>
  shapes.flatMap((shape) =>
    shape.kind === 'path' ? edges(shape).map(({ from, to }) => stretch(from, to)) : [],
  )

describe('UP as it is engraved', () => {
  it.each([
    ['a small plate', LANTERN],
    ['a star', STALL],
  ])('on %s stands clear of nails, holes and the centre cross', (_, keys) => {
    const { stars, order } = planWith(keys)
    const [star] = stars
    if (!star?.backing) throw new Error('the star has a backing')
    const cuts = plateCuts(star.backing, order.shop.cutter)
    const nails = 2 * (star.backing.fixing?.marks.length ?? 0)
    const marks = cuts.filter(({ layer }) => layer === 'MARK')
    const up = strokes(marks.slice(nails))
    expect(up.length).toBeGreaterThan(3)
    const others = [...marks.slice(0, nails), ...cuts.filter(({ layer }) => layer === 'CUT-INSIDE')]
    for (const other of strokes([...others, ...cross('GUIDE', point(0, 0), CENTRE_CROSS)]))
      for (const stroke of up) expect(stroke.distance(other)).toBeGreaterThan(1)
  })
})

it('UP is to be read once: in a file where it is engraved it is not lettered too', () => {
  const { stars, order } = planWith(STALL)
  const [star] = stars
  if (!star?.backing) throw new Error('the star has a backing')
  const { shapes, toCut = [] } = backing(star, star.backing, order)
  const read = (all: readonly Shape[]) =>
    all.filter((shape) => shape.kind === 'label' && shape.text === 'UP').length
  expect([read(shapes), read(toCut)]).toEqual([1, 0])
  const engraved = (all: readonly Shape[]) => all.filter(({ layer }) => layer === 'MARK').length
  expect(engraved(toCut)).toBeGreaterThan(engraved(shapes))
})

it("names on a panel's plates cross neither marks nor cuts", () => {
  const plan = planWith(
    `name: Stall, quantity: 2, ${STALL}`,
    `name: Bell, quantity: 2, ${LANTERN}`,
    `name: Pier, quantity: 2, ${PIER}`,
  )
  const [panel] = numberedPanels(planPanels(plan))
  if (!panel) throw new Error('there is a panel')
  const { shapes } = panelDrawing(panel, plan)
  const names = shapes.flatMap((shape) => (shape.kind === 'label' ? [shape] : []))
  expect(names.map(({ text }) => text).sort()).toEqual(['Bell', 'Bell', 'Stall', 'Stall'])
  for (const name of names)
    expect(
      boxIsClear(
        labelBox(name),
        shapes.filter((shape) => shape !== name),
        0.5,
      ),
    ).toBe(true)
})
