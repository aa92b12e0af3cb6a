import { describe, expect, it } from 'vitest'
import { cuttingPages, cuttingSheet } from '../../src/compose/cutting-sheet.js'
import { shapeExtents } from '../../src/drawing/bounds.js'
import type { Drawing, Label } from '../../src/drawing/model.js'
import { smallOrder } from '../stock/small-order.js'
import { boardProblems, stockOf } from '../stock/stock-of.js'

const labelsOf = ({ shapes }: Drawing): Label[] => shapes.filter((shape) => shape.kind === 'label')

/** Do two labels cover each other? By their upright boxes. */
const meet = (a: Label, b: Label): boolean => {
  const [p, q] = [shapeExtents([a]), shapeExtents([b])]
  return p.min.x < q.max.x && q.min.x < p.max.x && p.min.y < q.max.y && q.min.y < p.max.y
}

const orders = async () => {
  const served: string[] = []
  for (let seed = 1; served.length < 12; seed++) {
    const text = smallOrder(seed, seed % 2 === 0 ? 3 : undefined)
    if ((await boardProblems(text)).length === 0) served.push(text)
  }
  return Promise.all(served.map(stockOf))
}

describe('the drawn cutting list', () => {
  it('keeps within its frame, on pages and as one sheet', async () => {
    for (const stock of await orders()) {
      for (const page of [...cuttingPages(stock), cuttingSheet(stock)]) {
        const { min, max } = shapeExtents(page.shapes)
        expect([min.x, min.y]).toEqual([0, 0])
        expect(max.x).toBeLessThanOrEqual(page.trueSize.across + 1e-9)
        expect(max.y).toBeLessThanOrEqual(page.trueSize.height + 1e-9)
        expect(page.trueSize.across).toBe(190)
      }
      for (const page of cuttingPages(stock)) expect(page.trueSize.height).toBe(268)
    }
  })

  it('letters every mark of every board, clear of one another', async () => {
    for (const stock of await orders()) {
      const labels = labelsOf(cuttingSheet(stock))
      const marks = stock.boards.flatMap(({ strips }) => strips.flatMap(({ cuts }) => cuts))
      const upright = labels.filter(({ turn }) => turn > 1)
      expect(upright).toHaveLength(marks.length)
      expect(upright.map(({ text }) => Number(text.replace('T ', '')))).toEqual(
        marks.map(({ at }) => Number(at.toFixed(1))),
      )
      upright.forEach((label, index) => {
        for (const other of upright.slice(index + 1)) expect(meet(label, other), label.text).toBe(false)
      })
    }
  })

  it('draws each cut where it runs, to scale', async () => {
    const stock = await stockOf(
      '{ shop: { saw: { kerf: 2.4 }, boards: [{ width: 70, length: 1800 }] }, stars: [{ points: 5, tip-angle: 45, board-width: 70 }] }',
    )
    // 1800 mm on 180 mm: drawn 1 : 10, and a 45° cut reaches 7 mm further over 7 mm of width.
    const slants = cuttingSheet(stock).shapes.flatMap((shape) => {
      if (shape.kind !== 'path' || shape.closed || shape.layer !== 'PATTERN') return []
      const [from, to] = shape.vertices
      return from && to ? [[from.x - 3, to.x - from.x, to.y - from.y]] : []
    })
    const side = 7 * Math.SQRT2
    const pitch = side + 0.24 * Math.SQRT2
    expect(slants).toHaveLength(6)
    slants.forEach(([x = 0, across, up], index) => {
      expect(x).toBeCloseTo(index === 0 ? 0 : side + (index - 1) * pitch, 9)
      expect(across).toBeCloseTo(7, 9)
      expect(up).toBeCloseTo(7, 9)
    })
  })
})
