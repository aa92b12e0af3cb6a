import { afterAll, describe, expect, it, vi } from 'vitest'
import { jigWords } from '../../src/compose/jig-words.js'
import { drawJig, jigOf } from '../../src/compose/jigs.js'
import { forCutter } from '../../src/drawing/drawing.js'
import { writeDxf } from '../../src/write/dxf.js'
import { openDxfReader } from '../read-back/read-dxf.js'
import type { ReadOutline } from '../read-back/read-outline.js'
import { sweptPlans } from './sweep-plans.js'

vi.setConfig({ testTimeout: 120_000 })

const reader = openDxfReader()
afterAll(reader.close)

/** The middles of strokes as long as the screws' holes are wide, two of which halve each other: where something is drilled. */
const crossesOf = (marks: readonly ReadOutline[]): { x: number; y: number }[] => {
  const middles = marks.flatMap(({ vertices: [a, b], vertices }) =>
    a && b && vertices.length === 2 && Math.abs(Math.hypot(b.x - a.x, b.y - a.y) - 4) < 0.001
      ? [{ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }]
      : [],
  )
  return middles.filter((at, index) =>
    middles.slice(index + 1).some(({ x, y }) => Math.hypot(x - at.x, y - at.y) < 0.001),
  )
}

const SAW_JIGS = ['blank-stop', 'arm-cradle'] as const

/** Bits as wide as the screws' holes of 4 mm, and wider; an eighth of an inch gets into all of them. */
describe.each([
  ['3.175 mm', false],
  ['4 mm', true],
  ['1/4 in', true],
  ['8 mm', true],
])('a router bit of %s', (bit, drilled) => {
  const plans = sweptPlans(`cutter: { kind: router, bit: ${bit} }`).filter((_, index) => index % 16 === 3)

  it('leaves out no jig that a narrower one cuts, and marks the screw holes that it does not get into', async () => {
    let crosses = 0
    for (const { plan, order, name } of plans)
      for (const kind of SAW_JIGS) {
        const jig = jigOf(kind, plan, order)
        if (!jig.ok) continue
        const drawn = drawJig(kind, plan, order)
        if (!drawn.ok) throw new Error(`${name}: ${drawn.problems[0]?.advice}`)
        const { outlines } = await reader.read(writeDxf(forCutter(drawn.value.drawing), 'r12'))
        const layer = (wanted: string) => outlines.filter((outline) => outline.layer === wanted)
        // Three screws into a rail; a pilot hole for each into strip and block; four slots have two ends.
        const screws = jig.value.parts.reduce((sum, { pilots = [] }) => sum + pilots.length, 0)
        const pilots = kind === 'blank-stop' ? 0 : screws
        const holes = kind === 'blank-stop' ? 3 : screws + 8
        const places = crossesOf(layer('MARK'))
        expect(places.length, `${name}: ${kind}`).toBe(drilled ? pilots + holes : pilots)
        crosses += places.length
        // Cut inside: the holes for bolts, 6.5 mm, where the bit gets into them; and the others by a narrow bit.
        const bolts = kind === 'blank-stop' ? 1 : 2
        const cut = kind === 'blank-stop' ? 3 : screws + 4
        const wide = bit === '8 mm' ? 0 : bolts
        expect(layer('CUT-INSIDE').length, `${name}: ${kind}`).toBe(drilled ? wide : cut + bolts)
      }
    expect(crosses).toBeGreaterThan(drilled ? 150 : 50)
  })

  it('and tells on card and part what to drill them with', () => {
    for (const { plan, order, name } of plans)
      for (const kind of SAW_JIGS) {
        const jig = jigOf(kind, plan, order)
        if (!jig.ok) continue
        const { steps, onParts } = jigWords(jig.value, plan, order)
        const told = steps.filter((step) => step.startsWith('Holes too narrow'))
        expect(told.length, name).toBe(drilled ? 1 : 0)
        const part = kind === 'blank-stop' ? 'plate' : 'base'
        expect(onParts[part]?.some(({ text }) => text === 'DRILL 4.0 mm') ?? false, name).toBe(drilled)
        if (!drilled) continue
        expect(told[0], name).toContain(`Drill at the crosses: ${part} 4.0 mm`)
        expect(told[0]?.includes('clear out the slot'), name).toBe(kind === 'arm-cradle')
      }
  })
})

it('names the bit by its true width, with a way out that is one', () => {
  const [swept] = sweptPlans('cutter: { kind: router, bit: 12.7 mm }').filter(
    ({ plan, order }) => !drawJig('angle-gauge', plan, order).ok,
  )
  if (!swept) throw new Error('such a bit does not get into every gauge')
  const drawn = drawJig('angle-gauge', swept.plan, {
    ...swept.order,
    shop: { ...swept.order.shop, cutter: { ...swept.order.shop.cutter, bit: 12.25 as never } },
  })
  expect(drawn.ok ? [] : drawn.problems.map(({ given }) => given)).toEqual(['12.25 mm'])
  expect(drawn.ok ? '' : drawn.problems[0]?.advice).toMatch(/saw it by hand from its PDF/)
  const byHand = { ...swept.order.shop, cutter: { ...swept.order.shop.cutter, kind: 'hand' as const } }
  expect(drawJig('angle-gauge', swept.plan, { ...swept.order, shop: byHand }).ok).toBe(true)
})
