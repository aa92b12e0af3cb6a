import makerjs from 'makerjs'
import { afterAll, describe, expect, it, vi } from 'vitest'
import { drawJig } from '../../src/compose/jigs.js'
import { forCutter } from '../../src/drawing/drawing.js'
import { JIG_NAMES } from '../../src/order/order.js'
import { writeDxf } from '../../src/write/dxf.js'
import { openDxfReader } from '../read-back/read-dxf.js'
import type { ReadOutline } from '../read-back/read-outline.js'
import { sweptPlans } from './sweep-plans.js'

vi.setConfig({ testTimeout: 120_000 })

const reader = openDxfReader()
afterAll(reader.close)

/** The relief is 0.05 mm wider than the bit, on the radius: the loop that the bit's middle follows in it. */
const LOOP = 0.05

/** Arcs of the outline as makerjs makes them of their bulges, that are no larger than that loop. */
const loops = ({ vertices }: ReadOutline): number =>
  vertices.filter((from, index) => {
    const to = vertices[(index + 1) % vertices.length] ?? from
    if (from.bulge === 0) return false
    const sagitta = (from.bulge * Math.hypot(to.x - from.x, to.y - from.y)) / 2
    const middle = [(from.x + to.x) / 2, (from.y + to.y) / 2] as const
    const away = Math.atan2(to.y - from.y, to.x - from.x) - Math.PI / 2
    const top: makerjs.IPoint = [middle[0] + sagitta * Math.cos(away), middle[1] + sagitta * Math.sin(away)]
    const { radius } = new makerjs.paths.Circle([from.x, from.y], top, [to.x, to.y])
    return radius < 1.2 * LOOP
  }).length

describe.each(JIG_NAMES)('%s', (kind) => {
  it.each([
    ['{ kind: router, bit: 3 mm }', 40],
    ['{ kind: router, bit: 6.35 mm }', 42],
  ])(
    'cut by %s, a saw that stops at %s°: in the DXF inner cuts come first, and each seat has its relief',
    async (cutter, limit) => {
      const plans = sweptPlans(`cutter: ${cutter}, jig-stock: { thickness: 18 mm }`, limit)
      let files = 0
      for (const { plan, order, name } of plans.filter((_, index) => index % 9 === 4)) {
        const drawn = drawJig(kind, plan, order)
        if (!drawn.ok) continue
        const { jig, drawing } = drawn.value
        const { outlines } = await reader.read(writeDxf(forCutter(drawing), 'r12'))
        const layers = outlines.map(({ layer }) => layer)
        const parts = jig.parts.reduce((sum, { copies }) => sum + (copies?.length ?? 1), 0)
        expect(layers.filter((layer) => layer === 'CUT-OUTSIDE').length, name).toBe(parts)
        expect(layers.lastIndexOf('CUT-INSIDE'), name).toBeLessThan(layers.indexOf('CUT-OUTSIDE'))
        const reliefs = outlines
          .filter(({ layer }) => layer.startsWith('CUT-'))
          .reduce((sum, outline) => sum + loops(outline), 0)
        const seats = jig.parts.reduce((sum, part) => sum + part.seats.length * (part.copies?.length ?? 1), 0)
        expect(reliefs, name).toBe(seats)
        files += 1
      }
      expect(files).toBeGreaterThan(3)
    },
  )
})
