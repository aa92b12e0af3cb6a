import { describe, expect, it } from 'vitest'
import { cuttingList } from '../../src/compose/cutting-list.js'
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
      // From left to right: the first end is on the right.
      const marks = stock.boards.flatMap(({ strips }) => strips.flatMap(({ cuts }) => cuts.toReversed()))
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
    // 1800 mm on 180 mm: drawn 1 : 10, from the right. From the fence's edge above, a 45° cut runs 7 mm down over the
    // width and 7 mm to the left, as cut 1 does on the shop card.
    const slants = cuttingSheet(stock).shapes.flatMap((shape) => {
      if (shape.kind !== 'path' || shape.closed || shape.layer !== 'PATTERN') return []
      const [from, to] = shape.vertices
      return from && to ? [[183 - from.x, from.x - to.x, from.y - to.y]] : []
    })
    const side = 7 * Math.SQRT2
    const pitch = side + 0.24 * Math.SQRT2
    expect(slants).toHaveLength(6)
    slants.forEach(([x = 0, across, down], index) => {
      expect(x).toBeCloseTo(index === 0 ? 0 : side + (index - 1) * pitch, 9)
      expect(across).toBeCloseTo(7, 9)
      expect(down).toBeCloseTo(7, 9)
    })
  })

  it('ends with what each star costs, the same figures as the list in words', async () => {
    const stock = await stockOf(
      '{ shop: { saw: { kerf: 2.4 }, boards: [{ width: 70, length: 2400, price: 6.80 }] }, stars: [{ name: Jetty, quantity: 2, points: 5, tip-angle: 45, board-width: 70, hardware: 0.35 }, { name: Pier, points: 5, tip-angle: 50, board-width: 70 }] }',
    )
    const words = cuttingList(stock)
    const told = words.slice(words.indexOf('What a star costs'))
    for (const drawing of [cuttingSheet(stock), ...cuttingPages(stock).slice(-1)]) {
      const cells = labelsOf(drawing).map(({ text }) => text)
      const table = cells.slice(cells.indexOf('Star'))
      expect(table.slice(0, 8).join(' ')).toBe('Star stars wood boards panel hardware one star all of them')
      for (const cell of table) expect(told, cell).toContain(cell)
    }
    // One board for both; the stars together pay for it and for two hangers.
    expect(told).toMatch(/Together +7\.50/)
  })

  it('breaks a table of many stars between pages', async () => {
    const stars = Array.from(
      { length: 60 },
      (_, index) =>
        `{ name: Lantern ${index + 1} of the long pier by the lake, points: 5, tip-angle: 45, board-width: 70, hardware: 0.37 }`,
    )
    const stock = await stockOf(
      `{ shop: { saw: { kerf: 2.4 }, boards: [{ width: 70, length: 2400, price: 6.80 }] }, stars: [${stars.join(', ')}] }`,
    )
    const pages = cuttingPages(stock)
    const figures = pages.flatMap((page) => labelsOf(page).filter(({ text }) => text === '0.37'))
    expect(figures).toHaveLength(60)
    for (const page of pages) expect(shapeExtents(page.shapes).min.y).toBe(0)
  })
})
