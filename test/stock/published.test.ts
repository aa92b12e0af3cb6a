import { describe, expect, it } from 'vitest'
import { cheapestCutting, quickCutting } from '../../src/stock/cheapest.js'
import { blanksOf, fits } from '../../src/stock/cutting-problem.js'
import { loadSolver } from '../../src/stock/highs.js'
import { counted } from './clock.js'
import { publishedProblems } from './published-problems.js'

/*
 * Instances of the cutting stock problem with proved optima; each names its source in shared/cutting-stock.json
 * (Gilmore and Gomory's example; a worked example of an encyclopedia; Falkenauer's u120 series of the OR-Library).
 */

const instances = publishedProblems()

describe.each(instances.map((instance) => [instance.name, instance] as const))('%s', (_, instance) => {
  const { problem, optimum, ffd } = instance

  it('first-fit decreasing takes as many as published', () => {
    expect(quickCutting(problem).cost).toBe(ffd)
  })

  it('the fewest are found and proved', async () => {
    const cutting = await cheapestCutting(problem, loadSolver, counted(20_000))
    expect(cutting).toMatchObject({ cost: optimum, bound: optimum, proved: true })
    expect(blanksOf(cutting.cuts, problem)).toEqual(problem.demands.map(({ count }) => count))
    const [supply] = problem.supplies
    const [room] = supply?.rooms ?? []
    for (const { fillings } of cutting.cuts)
      for (const filling of fillings) expect(room && fits(filling, room, problem.demands)).toBe(true)
  }, 60_000)
})

it('all five optima are here, and first-fit decreasing misses each', () => {
  expect(instances.map(({ optimum }) => optimum)).toEqual([453, 73, 48, 50, 49])
  for (const { optimum, ffd } of instances) expect(ffd).toBeGreaterThan(optimum)
})
