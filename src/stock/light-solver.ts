import { type Coefficients, type Constraint, type Options, solve } from 'yalps'
import type { Column, LinearAnswer, Row, Solver, WholeAnswer } from './solver.js'

/**
 * YALPS, a simplex and branch and cut of 6 kB that the page can hold: enough for most orders. It counts its work and
 * looks at no clock, so that it finds the same boards everywhere.
 */
export const lightSolver: Solver = {
  growing: (rows, use) => {
    const columns: Column[] = []
    const bounds = [...rows]
    return use({
      add: (more) => {
        columns.push(...more)
      },
      bound: (row, next) => {
        bounds[row] = next
      },
      solve: () => linearAnswer(bounds, columns),
    })
  },
  whole: (rows, columns) => wholeAnswer(rows, columns),
}

const OPTIONS: Options = { precision: 1e-9, maxPivots: 100_000 }

/** The row of the cost. */
const COST = 'cost'

type Parts = readonly (readonly [row: number | typeof COST, part: number])[]

/**
 * Quantities from the program, prices from its dual: the solver tells only quantities. The prices take columns for
 * unlimited, as those of a growing program are.
 */
const linearAnswer = (rows: readonly Row[], columns: readonly Column[]): LinearAnswer | undefined => {
  const least = solve(programOf(rows, columns), OPTIONS)
  const dual = solve(dualOf(rows, columns), OPTIONS)
  if (least.status !== 'optimal' || dual.status !== 'optimal') return undefined
  const rowPrices = rows.map(() => 0)
  for (const [bound, price] of dual.variables) {
    const row = Math.floor(bound / 2)
    rowPrices[row] = (rowPrices[row] ?? 0) + (bound % 2 === LOWER ? price : -price)
  }
  return { quantities: quantitiesOf(least.variables, columns), rowPrices }
}

const programOf = (rows: readonly Row[], columns: readonly Column[]) => ({
  direction: 'minimize' as const,
  objective: COST,
  constraints: [...rows.map(constraintOf), ...columns.flatMap(limitOf(rows.length))],
  variables: columns.map(
    ({ cost, parts, upper }, index): readonly [number, Coefficients<number | string>] => {
      const all: Parts = [[COST, cost], ...parts]
      return [index, Number.isFinite(upper) ? [...all, [rows.length + index, 1]] : all]
    },
  ),
})

const constraintOf = ({ lower, upper }: Row, row: number): readonly [number, Constraint] => [
  row,
  { ...(Number.isFinite(lower) ? { min: lower } : {}), ...(Number.isFinite(upper) ? { max: upper } : {}) },
]

/** A column's own limit is a row behind the others. */
const limitOf =
  (rows: number) =>
  ({ upper }: Column, index: number): (readonly [number, Constraint])[] =>
    Number.isFinite(upper) ? [[rows + index, { max: upper }]] : []

/** A row has two variables in the dual: an even one for its lower bound, an odd one for its upper. */
const LOWER = 0
const UPPER = 1

/** What the bounds are worth together, at prices at which no column is worth more than it costs. */
const dualOf = (rows: readonly Row[], columns: readonly Column[]) => {
  const held: [number, number][][] = rows.map(() => [])
  columns.forEach(({ parts }, column) => {
    for (const [row, part] of parts) held[row]?.push([column, part])
  })
  return {
    direction: 'maximize' as const,
    objective: COST,
    constraints: columns.map(({ cost }, column): readonly [number, Constraint] => [column, { max: cost }]),
    variables: rows.flatMap(({ lower, upper }, row) =>
      [
        { bound: lower, side: LOWER, sign: 1 },
        { bound: upper, side: UPPER, sign: -1 },
      ]
        .filter(({ bound }) => Number.isFinite(bound))
        .map(({ bound, side, sign }): readonly [number, Coefficients<number | string>] => [
          2 * row + side,
          [
            [COST, sign * bound],
            ...(held[row] ?? []).map(([column, part]) => [column, sign * part] as const),
          ],
        ]),
    ),
  }
}

/** Cells of the simplex tableau that branching may go over: about a tenth of a second. */
const CELLS = 3e6

const wholeAnswer = (rows: readonly Row[], columns: readonly Column[]): WholeAnswer | undefined => {
  const maxIterations = Math.ceil(CELLS / (rows.length * columns.length))
  const best = solve({ ...programOf(rows, columns), integers: true }, { ...OPTIONS, maxIterations })
  if (Number.isNaN(best.result)) return undefined
  const quantities = quantitiesOf(best.variables, columns).map(Math.round)
  return { quantities, bound: best.status === 'optimal' ? best.result : 0 }
}

const quantitiesOf = (
  found: readonly (readonly [number, number])[],
  columns: readonly Column[],
): number[] => {
  const quantities = columns.map(() => 0)
  for (const [index, quantity] of found) quantities[index] = quantity
  return quantities
}
