import { describe, expect, it } from 'vitest'
import { loadSolver } from '../../src/stock/highs.js'
import { lightSolver } from '../../src/stock/light-solver.js'
import type { Column, Row } from '../../src/stock/solver.js'
import { seeded } from './seeded.js'

/** Rows that ask for something, rows that limit it, and columns that serve one or more of them. */
const program = (seed: number): { rows: Row[]; columns: Column[] } => {
  const { whole, one } = seeded(seed)
  const wanted = whole(1, 6)
  const limited = whole(0, 3)
  const rows = [
    ...Array.from({ length: wanted }, () => ({ lower: whole(1, 30), upper: Infinity })),
    ...Array.from({ length: limited }, () => {
      const lower = one([-Infinity, -Infinity, 1])
      return { lower, upper: whole(1, 8) }
    }),
  ]
  const dear = Array.from({ length: wanted }, (_, row) => ({
    cost: 100,
    upper: Infinity,
    parts: [[row, 1] as const],
  }))
  const columns = Array.from({ length: whole(2, 14) }, () => ({
    cost: one([0, 1.5, 3.25, 4, 7, 9.99]),
    upper: one([Infinity, Infinity, 3]),
    parts: rows.flatMap((_, row) => {
      const part = row < wanted ? one([0, 0, 1, 2, 5]) : one([0, 1])
      return part === 0 ? [] : [[row, part] as const]
    }),
  }))
  return { rows, columns: [...dear, ...columns] }
}

const costOf = (columns: readonly Column[], quantities: readonly number[]): number =>
  columns.reduce((sum, { cost }, index) => sum + cost * (quantities[index] ?? 0), 0)

const keeps = ({ rows, columns }: { rows: Row[]; columns: Column[] }, quantities: readonly number[]) => {
  const held = rows.map(() => 0)
  columns.forEach(({ parts }, index) => {
    for (const [row, part] of parts) held[row] = (held[row] ?? 0) + part * (quantities[index] ?? 0)
  })
  return (
    rows.every(
      ({ lower, upper }, row) => (held[row] ?? 0) >= lower - 1e-6 && (held[row] ?? 0) <= upper + 1e-6,
    ) && columns.every(({ upper }, index) => (quantities[index] ?? 0) <= upper + 1e-6)
  )
}

// HiGHS, the solver of the University of Edinburgh, is the judge: another program by other people.
describe('the small solver finds what HiGHS finds', async () => {
  const highs = await loadSolver()

  it('in parts, when columns are added and bounds are changed', () => {
    let answered = 0
    for (let seed = 1; seed <= 400; seed++) {
      const { rows, columns } = program(seed)
      const [first, more] = [columns.slice(0, -2), columns.slice(-2)]
      const answers = [lightSolver, highs].map((solver) =>
        solver.growing(rows, (growing) => {
          growing.add(first)
          const before = growing.solve(10)
          growing.add(more)
          growing.bound(0, { lower: (rows[0]?.lower ?? 0) + 2, upper: Infinity })
          return { before, after: growing.solve(10) }
        }),
      )
      const [light, heavy] = answers
      for (const when of ['before', 'after'] as const) {
        expect(light?.[when] === undefined, `seed ${seed}`).toBe(heavy?.[when] === undefined)
        const [a, b] = [light?.[when], heavy?.[when]]
        if (!a || !b) continue
        answered += 1
        expect(costOf(columns, a.quantities), `seed ${seed}`).toBeCloseTo(costOf(columns, b.quantities), 6)
      }
    }
    expect(answered).toBeGreaterThan(500)
  })

  it('with prices at which no column is worth more than it costs, and which make up the cost', () => {
    for (let seed = 1; seed <= 400; seed++) {
      // Without limits of columns, whose prices are not told.
      const { rows, columns } = program(seed)
      const free = columns.map((column) => ({ ...column, upper: Infinity }))
      const answer = lightSolver.growing(rows, (growing) => {
        growing.add(free)
        return growing.solve(10)
      })
      if (!answer) continue
      for (const { cost, parts } of free) {
        const worth = parts.reduce((sum, [row, part]) => sum + part * (answer.rowPrices[row] ?? 0), 0)
        expect(worth, `seed ${seed}`).toBeLessThanOrEqual(cost + 1e-6)
      }
      const made = rows.reduce((sum, { lower, upper }, row) => {
        const price = answer.rowPrices[row] ?? 0
        return price === 0 ? sum : sum + price * (price > 0 ? lower : upper)
      }, 0)
      expect(made, `seed ${seed}`).toBeCloseTo(costOf(free, answer.quantities), 6)
    }
  })

  it('in whole quantities', () => {
    let found = 0
    for (let seed = 1; seed <= 300; seed++) {
      const { rows, columns } = program(seed)
      const start = columns.map(() => 0)
      const [light, heavy] = [lightSolver, highs].map((solver) => solver.whole(rows, columns, start, 10))
      if (!light) continue
      expect(keeps({ rows, columns }, light.quantities), `seed ${seed}`).toBe(true)
      expect(light.bound).toBeLessThanOrEqual(costOf(columns, light.quantities) + 1e-6)
      if (!heavy || light.bound === 0) continue
      found += 1
      expect(costOf(columns, light.quantities), `seed ${seed}`).toBeCloseTo(
        costOf(columns, heavy.quantities),
        5,
      )
    }
    expect(found).toBeGreaterThan(150)
  })
})
