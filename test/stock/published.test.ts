import { describe, expect, it } from 'vitest'
import published from '../../shared/cutting-stock.json' with { type: 'json' }
import { cheapestCutting, quickCutting } from '../../src/stock/cheapest.js'
import { blanksOf, type CuttingProblem, fits } from '../../src/stock/cutting-problem.js'
import { loadSolver } from '../../src/stock/highs.js'
import { counted } from './clock.js'

/*
 * Instances of the cutting stock problem with proved optima; each names its source in shared/cutting-stock.json
 * (Gilmore and Gomory's example; a worked example of an encyclopedia; Falkenauer's u120 series of the OR-Library).
 */

interface Instance {
  readonly name: string
  readonly capacity: number
  readonly items?: readonly { readonly size: number; readonly demand: number }[]
  readonly sizes?: readonly number[]
  readonly optimum: number
  readonly ffd: number
}

const problemOf = ({ capacity, items, sizes = [] }: Instance): CuttingProblem => {
  const counted = [...new Set(sizes)].map((size) => ({
    size,
    demand: sizes.filter((each) => each === size).length,
  }))
  const demands = (items ?? counted).map(({ size, demand }) => ({ count: demand, length: size }))
  const placings = demands.map((_, blank) => ({ blank, slant: 0, spare: 0 }))
  return {
    demands,
    supplies: [{ cost: 1, limit: Infinity, rooms: [{ length: capacity, placings }], ways: [[0]] }],
  }
}

const instances: readonly Instance[] = published.instances

describe.each(instances.map((instance) => [instance.name, instance] as const))('%s', (_, instance) => {
  const problem = problemOf(instance)

  it('first-fit decreasing takes as many as published', () => {
    expect(quickCutting(problem).cost).toBe(instance.ffd)
  })

  it('the fewest are found and proved', async () => {
    const cutting = await cheapestCutting(problem, loadSolver, counted(20_000))
    expect(cutting).toMatchObject({ cost: instance.optimum, bound: instance.optimum, proved: true })
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
