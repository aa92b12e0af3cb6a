import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drawJig } from '../../src/compose/jigs.js'
import type { Path } from '../../src/drawing/model.js'
import { outlineSize } from '../../src/geometry/outline.js'
import { cuttingRoom } from '../../src/jigs/cutting-room.js'
import { type Box, layBoxes } from '../../src/jigs/lay-parts.js'
import { mm } from '../../src/units/convert.js'
import { sweptPlans } from './sweep-plans.js'

const side = fc.double({ min: 1, max: 300, noNaN: true })
const box = fc.record({ across: side, height: side })

const laidSize = ({ across, height }: Box, turned: boolean): Box =>
  turned ? { across: height, height: across } : { across, height }

describe('boxes in rows', () => {
  it('lie inside the room, at least the gap apart on one sheet, each once', () => {
    fc.assert(
      fc.property(
        fc.array(box, { minLength: 1, maxLength: 25 }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (boxes, gap) => {
          const room = { width: mm(300), length: mm(420) }
          const laid = layBoxes(boxes, gap, room)
          if (!laid) throw new Error('every box goes into the room')
          expect(laid.length).toBe(boxes.length)
          const lying = laid.map((place, index) => ({
            ...place,
            ...laidSize(boxes[index] ?? { across: 0, height: 0 }, place.turned),
          }))
          for (const [index, a] of lying.entries()) {
            expect(a.x).toBeGreaterThanOrEqual(0)
            expect(a.y).toBeGreaterThanOrEqual(0)
            expect(a.x + a.across).toBeLessThanOrEqual(420)
            expect(a.y + a.height).toBeLessThanOrEqual(300)
            for (const b of lying.slice(index + 1).filter(({ sheet }) => sheet === a.sheet)) {
              const apart = Math.max(
                b.x - a.x - a.across,
                a.x - b.x - b.across,
                b.y - a.y - a.height,
                a.y - b.y - b.height,
              )
              expect(apart).toBeGreaterThanOrEqual(gap - 1e-9)
            }
          }
          const sheets = new Set(lying.map(({ sheet }) => sheet))
          expect(Math.max(...sheets)).toBe(sheets.size - 1)
        },
      ),
    )
  })

  it('are turned where only that goes, and refused where nothing does', () => {
    const room = { width: mm(300), length: mm(420) }
    expect(layBoxes([{ across: 100, height: 400 }], 5, room)).toEqual([
      { sheet: 0, x: 0, y: 0, turned: true },
    ])
    expect(layBoxes([{ across: 310, height: 310 }], 5, room)).toBeUndefined()
  })
})

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
      'cutter: { kind: router, bit: 3 mm, bed: { width: 230, length: 340 } }, jig-stock: { hands: 100 }',
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
      expect(across).toBeLessThanOrEqual(340 - 3)
      expect(height).toBeLessThanOrEqual(230 - 3)
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
