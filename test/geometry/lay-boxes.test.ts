import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Box, layBoxes } from '../../src/geometry/lay-boxes.js'

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
          const room = { across: 420, height: 300 }
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
    const room = { across: 420, height: 300 }
    expect(layBoxes([{ across: 100, height: 400 }], 5, room)).toEqual([
      { sheet: 0, x: 0, y: 0, turned: true },
    ])
    expect(layBoxes([{ across: 310, height: 310 }], 5, room)).toBeUndefined()
  })
})
