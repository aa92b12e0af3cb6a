import { describe, expect, it } from 'vitest'
import { branchNumbers } from '../../src/stock/branch-numbers.js'
import type { CuttingProblem } from '../../src/stock/cutting-problem.js'
import { firstFit } from '../../src/stock/first-fit.js'
import { loadSolver } from '../../src/stock/highs.js'
import { anyNumber, withPricer } from '../../src/stock/price-boards.js'
import { stockProblem } from '../../src/stock/stock-problem.js'
import { planOf } from '../orders.js'
import { leastCost } from './brute-force.js'
import { counted } from './clock.js'
import { smallOrder } from './small-order.js'

const solver = await loadSolver()
const unproved = () => false

const bounds = (problem: CuttingProblem): { parts: number; whole: number } =>
  withPricer(problem, firstFit(problem), solver, (price) => {
    const root = price(anyNumber(problem), unproved, counted(10_000))
    const branched = branchNumbers(problem, root, price, unproved, counted(10_000))
    return { parts: root.bound, whole: branched.bound }
  })

/** One kind of blank on boards of given prices and lengths, as many as wanted. */
const alike = (
  count: number,
  boards: readonly (readonly [cost: number, blanks: number])[],
): CuttingProblem => ({
  demands: [{ count, length: 100 }],
  supplies: boards.map(([cost, blanks]) => ({
    cost,
    limit: Infinity,
    rooms: [{ length: 100 * blanks, placings: [{ blank: 0, slant: 0, spare: 0 }] }],
    ways: [[0]],
  })),
})

describe('the bound with boards taken whole', () => {
  // 13 blanks: 1.3 boards of 10, or 10 + 6.6 (16 blanks), 3 of 6.6 (18), 2 of 10 (20).
  it('is the cheapest sum of whole boards where all blanks are alike', () => {
    const { parts, whole } = bounds(
      alike(13, [
        [10, 10],
        [6.6, 6],
      ]),
    )
    expect(parts).toBeCloseTo(13, 6)
    expect(whole).toBeCloseTo(16.6, 6)
  })

  it('is never more than trying everything finds, and never less than with parts of boards', () => {
    let [served, raised] = [0, 0]
    for (let seed = 1; served < 150; seed++) {
      const plan = planOf(smallOrder(seed))
      const least = leastCost(plan)
      const problem = stockProblem(plan)
      if (least === undefined || !problem.ok) continue
      served += 1
      const { parts, whole } = bounds(problem.value.problem)
      expect(whole, `seed ${seed}`).toBeLessThanOrEqual(least + 1e-6)
      expect(whole, `seed ${seed}`).toBeGreaterThanOrEqual(parts)
      if (whole > parts + 1e-6) raised += 1
    }
    expect(raised).toBeGreaterThan(50)
  }, 60_000)
})
