import { describe, expect, it } from 'vitest'
import { drawJig } from '../../src/compose/jigs.js'
import type { Path } from '../../src/drawing/model.js'
import { outlineSize } from '../../src/geometry/outline.js'
import { cuttingRoom } from '../../src/jigs/cutting-room.js'
import { sweptPlans } from './sweep-plans.js'

describe('the room for jigs', () => {
  const plan = (shop: string) => {
    const [first] = sweptPlans(shop).filter(({ plan }) => plan.star.tipAngle === 45)
    if (!first) throw new Error('the sweep has a star of 45°')
    return first
  }

  it('is the largest panel as thick as jigs are, inside its margin, and no more than the bed takes', () => {
    const panels =
      'panels: [{ length: 1200, width: 600, thickness: 12, edge: 10 }, { length: 3000, width: 1500, thickness: 4 }]'
    expect(cuttingRoom(plan(panels).order.shop)).toEqual({ width: 580, length: 1180 })
    expect(
      cuttingRoom(plan(`${panels}, cutter: { kind: laser, bed: { width: 900, length: 500 } }`).order.shop),
    ).toEqual({ width: 500, length: 900 })
    expect(
      cuttingRoom(plan('panels: [{ length: 3000, width: 1500, thickness: 4 }]').order.shop),
    ).toBeUndefined()
  })

  it('holds every part of a jig as the cutter gets it, on as many pieces as are told', () => {
    const { plan: star, order } = plan(
      'cutter: { kind: router, bit: 3 mm, bed: { width: 200, length: 280 } }, jig-stock: { hands: 100 }',
    )
    const drawn = drawJig('arm-cradle', star, order)
    if (!drawn.ok) throw new Error(drawn.problems[0]?.advice)
    expect(drawn.value.sheets).toBeGreaterThan(1)
    const outer = (drawn.value.drawing.toCut ?? []).filter(
      (shape): shape is Path => shape.kind === 'path' && shape.layer === 'CUT-OUTSIDE',
    )
    expect(outer.length).toBe(4)
    for (const line of outer) {
      const { across, height } = outlineSize(line)
      expect(across).toBeLessThanOrEqual(280 - 3)
      expect(height).toBeLessThanOrEqual(200 - 3)
    }
  })

  it('refuses a part that does not go onto it, and says which', () => {
    const { plan: star, order } = plan('cutter: { kind: laser, bed: { width: 80, length: 100 } }')
    const drawn = drawJig('arm-cradle', star, order)
    expect(drawn.ok ? '' : drawn.problems[0]?.advice).toMatch(
      /^Its arm cradle, base, \d+\.\d × \d+\.\d mm, does not go onto 100\.0 × 80\.0 mm, the panel of that thickness or the cutter's bed\. Give a larger one, make the star smaller, or saw this jig by hand from its PDF: cutter: \{ kind: hand \}\.$/,
    )
  })
})
