import type { PathsD } from 'clipper2-ts'
import { describe, expect, it, vi } from 'vitest'
import { drawJig, jigOf } from '../../src/compose/jigs.js'
import { compensated, relievedPart } from '../../src/cutter/compensated.js'
import type { CutPart } from '../../src/cutter/cut-part.js'
import { forCutter } from '../../src/drawing/drawing.js'
import type { Path } from '../../src/drawing/model.js'
import { JIG_NAMES, type JigName } from '../../src/order/order.js'
import { removedWidth } from '../../src/order/removed-width.js'
import { mm } from '../../src/units/convert.js'
import { commonArea, inside, leftWithin, openedBy, sameWithin, swept } from '../cutter/swept.js'
import { sweptPlans } from './sweep-plans.js'

vi.setConfig({ testTimeout: 120_000 })

/** Common practice, no published source: what lasers and routers remove, and either side of the blade. */
const SHOPS = [
  'cutter: { kind: laser, kerf: 0.2 }, jig-stock: { side: left }',
  'cutter: { kind: router, bit: 3 mm }, jig-stock: { thickness: 18 mm }',
  'cutter: { kind: hand }',
]

/** Around inside corners that nothing sits in, as far as a bit leaves them round: there it does not matter. */
const roundedCorners = ({ outer, inner, seats }: CutPart, radius: number): PathsD =>
  [outer, ...inner].flatMap((outline, hole) =>
    outline.vertices.flatMap((at, index, all) => {
      const [a, b] = [all.at(index - 1) ?? at, all[(index + 1) % all.length] ?? at]
      const turns = (at.x - a.x) * (b.y - at.y) - (at.y - a.y) * (b.x - at.x)
      const straight = !at.bulge && !a.bulge
      const sat = seats.some(({ x, y }) => Math.hypot(x - at.x, y - at.y) < 1e-6)
      const isInside = hole > 0 ? turns > 0 : turns < 0
      return straight && isInside && !sat ? inside(square(at, 2 * radius + 0.05)) : []
    }),
  )

/** Every star of the sweep with one of the two, on a saw that needs fence wedges for many of them. */
describe.each(SHOPS.slice(0, 2))('%s', (shop) => {
  const plans = sweptPlans(shop, 42).filter((_, index) => index % 2 === SHOPS.indexOf(shop))

  it.each(JIG_NAMES)(
    'a disc of the cutter led along every line leaves the %s as designed, within 0.02 mm',
    (kind) => {
      let cut = 0
      for (const { plan, order, name } of plans) {
        const jig = jigOf(kind, plan, order)
        if (!jig.ok) continue
        const half = removedWidth(order.shop.cutter) / 2
        for (const part of jig.value.parts) {
          const lines = compensated(part, order.shop.cutter, order.lengths)
          if (!lines.ok) continue
          const shape = relievedPart(part, mm(2 * half))
          if (!shape) throw new Error(`${name}: ${part.name} has no room for its relief`)
          const told = `${name}: ${part.name}`
          const free = roundedCorners(part, half)
          const left = leftWithin(lines.value.outer, half)
          expect(sameWithin(left, inside(shape.outer), 0.02, free), told).toBe(true)
          lines.value.inner.forEach((line, index) => {
            const opening = shape.inner[index] ?? line
            expect(sameWithin(openedBy(line, half), inside(opening), 0.02, free), told).toBe(true)
          })
          cut += 1
        }
      }
      expect(cut).toBeGreaterThan(LEAST[kind])
    },
  )
})

/** How many parts there must be at least, so that no check passes by checking nothing. */
const LEAST: Readonly<Record<JigName, number>> = {
  'blank-stop': 150,
  'first-cut-wedge': 20,
  'arm-cradle': 150,
  'joint-cut-wedge': 0,
  'angle-gauge': 50,
  'trial-window': 50,
  'glue-up-frame': 50,
}

describe.each(SHOPS)('%s', (shop) => {
  // Two of them need fence wedges.
  const plans = sweptPlans(shop, shop.includes('laser') ? 75 : 42).filter(
    (_, index) => index % 8 === SHOPS.indexOf(shop),
  )

  it('parts lie apart on the panel by more than the cutter takes, words and marks on their wood', () => {
    for (const { plan, order, name } of plans) {
      for (const kind of JIG_NAMES) {
        const drawing = drawJig(kind, plan, order)
        if (!drawing.ok) continue
        const shapes = forCutter(drawing.value.drawing).shapes as readonly Path[]
        const told = `${name}: ${kind}`
        expect(
          shapes.every((shape) => shape.kind === 'path'),
          told,
        ).toBe(true)
        const outer = shapes.filter(({ layer }) => layer === 'CUT-OUTSIDE')
        const taken = outer.map((line) => swept(line, 2))
        taken.forEach((own, index) => {
          for (const other of taken.slice(index + 1)) expect(commonArea(own, other), told).toBe(0)
        })
        const wood = outer.map((line) => inside(line))
        for (const { vertices } of shapes.filter(({ layer }) => layer === 'MARK')) {
          const [from] = vertices
          const dot = from && inside(square(from, 0.02))
          expect(dot && wood.some((part) => commonArea(dot, part) > 0), told).toBe(true)
        }
      }
    }
  })
})

const square = ({ x, y }: { x: number; y: number }, half: number) => ({
  closed: true,
  vertices: [
    { x: x - half, y: y - half },
    { x: x + half, y: y - half },
    { x: x + half, y: y + half },
    { x: x - half, y: y + half },
  ],
})
