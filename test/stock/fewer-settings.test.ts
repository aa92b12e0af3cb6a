import { expect, it } from 'vitest'
import { parseOrder } from '../../src/order/parse.js'
import { planOrder } from '../../src/plan/plan.js'
import { quickCutting } from '../../src/stock/cheapest.js'
import { blanksOf, type CutSupply, costOf, fits } from '../../src/stock/cutting-problem.js'
import { fewerSettings } from '../../src/stock/fewer-settings.js'
import { stockProblem } from '../../src/stock/stock-problem.js'
import { smallOrder } from './small-order.js'
import { stockOf } from './stock-of.js'

const kindsOn = (cuts: readonly CutSupply[]): number =>
  cuts.reduce((sum, { fillings, times }) => {
    const kinds = new Set(
      fillings.flatMap((filling) => filling.flatMap((count, blank) => (count > 0 ? [blank] : []))),
    )
    return sum + times * kinds.size
  }, 0)

it('gives the same blanks for no more money, none past its room, and never sets the saw more often', () => {
  let fewer = 0
  for (let seed = 1; seed <= 150; seed++) {
    const order = parseOrder({ text: smallOrder(seed, seed % 4 === 0 ? 3 : undefined) })
    const plan = order.ok ? planOrder(order.value) : order
    const stock = plan.ok ? stockProblem(plan.value) : plan
    if (!stock.ok) continue
    const { problem } = stock.value
    const { cuts } = quickCutting(problem)
    const tidy = fewerSettings(cuts, problem)
    expect(blanksOf(tidy, problem)).toEqual(blanksOf(cuts, problem))
    expect(costOf(tidy, problem)).toBeLessThanOrEqual(costOf(cuts, problem) + 1e-9)
    expect(kindsOn(tidy)).toBeLessThanOrEqual(kindsOn(cuts))
    if (kindsOn(tidy) < kindsOn(cuts)) fewer += 1
    for (const { supply, way, fillings } of tidy) {
      const { rooms = [], ways = [] } = problem.supplies[supply] ?? {}
      fillings.forEach((filling, place) => {
        const room = rooms[ways[way]?.[place] ?? -1]
        expect(room && fits(filling, room, problem.demands)).toBe(true)
        const may = room?.placings.map(({ blank }) => blank) ?? []
        expect(filling.every((count, blank) => count === 0 || may.includes(blank))).toBe(true)
      })
    }
  }
  expect(fewer).toBeGreaterThan(2)
})

it('gives each star a board of its own where two boards are needed for two stars anyway', async () => {
  const { boards } = await stockOf(`{ shop: { boards: [{ width: 88.9, length: 2438.4, price: 7.5 }] },
    stars: [{ name: Jetty, points: 5, tip-angle: 45, quantity: 3, board-width: 88.9 }, { name: Pier, points: 5, tip-angle: 40, board-width: 88.9 }] }`)
  const kinds = boards.map(({ strips }) =>
    strips.flatMap(({ blanks }) => blanks.map(({ kind }) => kind.letter)),
  )
  expect(kinds.map((letters) => [new Set(letters).size, letters.length])).toEqual(
    expect.arrayContaining([
      [1, 15],
      [1, 5],
    ]),
  )
})
