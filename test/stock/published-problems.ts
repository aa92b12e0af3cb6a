import published from '../../shared/cutting-stock.json' with { type: 'json' }
import type { CuttingProblem } from '../../src/stock/cutting-problem.js'

/** An instance of the cutting stock problem with its proved optimum and what first-fit decreasing finds. */
export interface PublishedProblem {
  readonly name: string
  readonly problem: CuttingProblem
  readonly optimum: number
  readonly ffd: number
}

interface Instance {
  readonly name: string
  readonly capacity: number
  readonly items?: readonly { readonly size: number; readonly demand: number }[]
  readonly sizes?: readonly number[]
  readonly optimum: number
  readonly ffd: number
}

/** Each names its source in shared/cutting-stock.json. */
export const publishedProblems = (): PublishedProblem[] =>
  (published.instances as readonly Instance[]).map(({ name, capacity, items, sizes = [], optimum, ffd }) => {
    const counted = [...new Set(sizes)].map((size) => ({
      size,
      demand: sizes.filter((each) => each === size).length,
    }))
    const demands = (items ?? counted).map(({ size, demand }) => ({ count: demand, length: size }))
    const placings = demands.map((_, blank) => ({ blank, slant: 0, spare: 0 }))
    const rooms = [{ length: capacity, placings }]
    return {
      name,
      optimum,
      ffd,
      problem: { demands, supplies: [{ cost: 1, limit: Infinity, rooms, ways: [[0]] }] },
    }
  })
