import type { Highs, HighsOptions, Model } from 'highs'
import type { Column, GrowingProgram, Row, Solver, WholeAnswer } from './solver.js'

/** HiGHS, loaded when an order needs it: 1.2 MB and some 40 ms. */
export const loadSolver = async (): Promise<Solver> => {
  const loaded: unknown = await import('highs')
  const load = (loaded as { readonly default: () => Promise<Highs> }).default
  const highs = await load()
  return {
    growing: (rows, use) => highs.withModel(modelOf(rows, []), (model) => use(growing(model, rows))) as never,
    whole: (rows, columns, start, seconds) => {
      const data = { ...modelOf(rows, columns), integrality: new Int32Array(columns.length).fill(1) }
      return highs.withModel(data, (model) => wholeAnswer(model, start, seconds, highs)) as
        | WholeAnswer
        | undefined
    },
  }
}

const QUIET: HighsOptions = { output_flag: false, random_seed: 1 }

const modelOf = (rows: readonly Row[], columns: readonly Column[]) => ({
  numCols: columns.length,
  numRows: rows.length,
  ...boundsOf(columns, 'colCost', 'colLower', 'colUpper'),
  rowLower: Float64Array.from(rows, ({ lower }) => lower),
  rowUpper: Float64Array.from(rows, ({ upper }) => upper),
  matrix: matrixOf(rows, columns),
})

const boundsOf = <Cost extends string, Lower extends string, Upper extends string>(
  columns: readonly Column[],
  cost: Cost,
  lower: Lower,
  upper: Upper,
) =>
  ({
    [cost]: Float64Array.from(columns, (column) => column.cost),
    [lower]: new Float64Array(columns.length),
    [upper]: Float64Array.from(columns, (column) => column.upper),
  }) as Record<Cost | Lower | Upper, Float64Array>

const matrixOf = (rows: readonly Row[], columns: readonly Column[]) => {
  const starts = [0]
  for (const { parts } of columns) starts.push((starts.at(-1) ?? 0) + parts.length)
  const entries = columns.flatMap(({ parts }) => parts)
  return {
    format: 'csc' as const,
    numRows: rows.length,
    numCols: columns.length,
    starts: Int32Array.from(starts),
    indices: Int32Array.from(entries, ([row]) => row),
    values: Float64Array.from(entries, ([, part]) => part),
  }
}

const growing = (model: Model, rows: readonly Row[]): GrowingProgram => {
  model.options.set({ ...QUIET, presolve: 'off' })
  return {
    add: (columns) => {
      model.addCols({ ...boundsOf(columns, 'cost', 'lower', 'upper'), matrix: matrixOf(rows, columns) })
    },
    bound: (row, { lower, upper }) => {
      model.changeRowBounds(row, lower, upper)
    },
    solve: (seconds) => {
      model.zeroAllClocks()
      model.options.set('time_limit', seconds)
      model.run()
      if (model.getModelStatus() !== OPTIMAL) return undefined
      const { colValue, rowDual } = model.getSolution()
      return { quantities: [...colValue], rowPrices: [...rowDual] }
    },
  }
}

/** HiGHS: kHighsModelStatusOptimal. */
const OPTIMAL = 7

const wholeAnswer = (
  model: Model,
  start: readonly number[],
  seconds: number,
  highs: Highs,
): WholeAnswer | undefined => {
  model.options.set({ ...QUIET, time_limit: seconds, mip_rel_gap: 0, mip_abs_gap: 1e-6 })
  model.setSolution({ colValue: Float64Array.from(start) })
  model.run()
  const { colValue } = model.getSolution()
  if (colValue.length !== start.length || model.getObjectiveValue() === highs.infinity) return undefined
  const bound = Number(model.info.get('mip_dual_bound'))
  return { quantities: [...colValue].map(Math.round), bound }
}
