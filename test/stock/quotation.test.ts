import { describe, expect, it } from 'vitest'
import { planOf } from '../orders.js'
import { stockOf } from './stock-of.js'

/* Sums worked out by hand from prices and measures. */

const shop = (rest: string) => `saw: { limit: 45, kerf: 2.4 }, ${rest}`
const JETTY = 'name: Jetty, points: 5, tip-angle: 45, board-width: 70'

describe('what a star costs', () => {
  it('is its boards, its share of a panel and its hardware', async () => {
    const stock = await stockOf(
      `{ shop: { ${shop('boards: [{ width: 70, length: 600, price: 4 }], panels: [{ length: 1010, width: 520, price: 24, thickness: 4, edge: 10 }]')} }, stars: [{ ${JETTY}, quantity: 3, hardware: 1.25, backing: { shape: disc, inset: 10, thickness: 4 } }] }`,
    )
    // One star a board: 581.9 mm of 600. The disc is 2 × (valley radius − inset) across: 2 × (64.5 − 10) = 109 mm. Three
    // go on one panel, which must be bought whole: 24 / 3 each.
    expect(stock.cost).toBe(12)
    const [jetty] = stock.stars
    expect(jetty?.plan.backing?.across).toBeCloseTo(109, 0)
    expect(jetty).toMatchObject({ boards: 4, hardware: 1.25, panel: 8 })
    expect(jetty?.total).toBeCloseTo(4 + 1.25 + 8, 9)
    expect(jetty?.wood).toBeCloseTo(70 * 600, 6)
  })

  it('on a shared board goes by the area of the blanks, and all stars together pay all boards', async () => {
    const stock = await stockOf(
      `{ shop: { ${shop('boards: [{ width: 80, length: 2400, price: 9 }]')} }, stars: [{ ${JETTY} }, { name: Mill, points: 6, tip-angle: 50, board-width: 80 }] }`,
    )
    const [jetty, mill] = stock.stars
    const area = (points: number, tip: number, width: number): number =>
      points * width * ((width + 2.4) / Math.sin((tip * Math.PI) / 180))
    const [a, b] = [area(5, 45, 70), area(6, 50, 80)]
    expect(jetty?.boards).toBeCloseTo((9 * a) / (a + b), 9)
    expect(mill?.boards).toBeCloseTo((9 * b) / (a + b), 9)
  })

  it('is not told where no board has a price; then the least wood is taken', async () => {
    const stock = await stockOf(
      `{ shop: { ${shop('boards: [{ width: 90, length: 2000 }, { width: 72, length: 600 }]')} }, stars: [{ ${JETTY} }] }`,
    )
    expect(stock.priced).toBe(false)
    expect(stock.boards.map(({ number }) => number)).toEqual([2])
    expect(stock.cost).toBeCloseTo(0.0432, 9)
    expect(stock.stars[0]).not.toHaveProperty('boards')
  })

  it('is nothing for boards that are the maker’s already', async () => {
    const stock = await stockOf(
      `{ shop: { ${shop('boards: [{ width: 70, length: 600, price: 4 }, { width: 70, length: 700, count: 1 }]')} }, stars: [{ ${JETTY}, quantity: 2 }] }`,
    )
    expect(stock.cost).toBe(4)
    expect(stock.stars[0]?.boards).toBe(2)
  })
})

describe('the rack', () => {
  it('gives as many blanks as the plan says, whatever the tip angle, the end allowance and the defects', async () => {
    for (const tip of [24, 36, 45, 60, 90, 110]) {
      for (const extra of [
        '',
        ', defects: [{ from: 500, to: 540 }]',
        ', defects: [{ from: 0, to: 9 }, { from: 1190, to: 1200 }]',
      ]) {
        const text = `{ shop: { saw: { limit: 70, kerf: 3 }, end-allowance: 12, boards: [{ width: 75, length: 1200, price: 5${extra} }] }, stars: [{ points: 9, quantity: 6, tip-angle: ${tip}, board-width: 70 }] }`
        const needed = planOf(text).stars[0]?.boardUse?.boardsNeeded ?? 0
        const stock = await stockOf(text)
        expect(stock.boards.reduce((sum, { times }) => sum + times, 0)).toBe(needed)
        expect(stock.proved).toBe(true)
      }
    }
  })
})
