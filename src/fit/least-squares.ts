import type { Row } from './span.js'

/** One equation: `row` times the errors is `value`, with a variance. */
export interface Equation {
  readonly row: Row
  readonly value: number
  readonly variance: number
}

/** The most probable errors and how sure they are. */
export interface Estimate {
  readonly errors: Row
  /** Covariances of the errors; rows and columns of errors that were not free are 0. */
  readonly covariance: readonly [Row, Row, Row]
}

/**
 * Weighted least squares, each equation by one over its variance: normal equations, solved by Gauss and Jordan.
 *
 * @param free which errors are looked for; the others stay 0. The equations must tell every free one; it throws if not.
 */
export const leastSquares = (
  equations: readonly Equation[],
  free: readonly [boolean, boolean, boolean],
): Estimate => {
  const unknowns = [0, 1, 2].filter((index) => free[index])
  const sum = (term: (equation: Equation) => number): number =>
    equations.reduce((total, equation) => total + term(equation) / equation.variance, 0)
  const normal = unknowns.map((i) => unknowns.map((j) => sum(({ row }) => at(row, i) * at(row, j))))
  const inverse = invert(normal)
  const right = unknowns.map((i) => sum(({ row, value }) => at(row, i) * value))
  const found = inverse.map((line) =>
    line.reduce((total, entry, index) => total + entry * at(right, index), 0),
  )
  const place = (values: readonly number[]): Row => {
    const placed = (index: number): number => at(values, unknowns.indexOf(index))
    return [placed(0), placed(1), placed(2)]
  }
  const covariance = (index: number): Row => place(inverse[unknowns.indexOf(index)] ?? [])
  return { errors: place(found), covariance: [covariance(0), covariance(1), covariance(2)] }
}

/** The variance of a sum of errors, with these shares of each: GUM (JCGM 100:2008), equation 13. */
export const varianceOf = (share: Row, { covariance }: Estimate): number =>
  share.reduce(
    (total, a, i) => total + share.reduce((inner, b, j) => inner + a * b * at(covariance[i] ?? [], j), 0),
    0,
  )

const at = (values: readonly number[], index: number): number => values[index] ?? 0

const invert = (matrix: readonly (readonly number[])[]): number[][] => {
  const size = matrix.length
  const work = matrix.map((line, i) => [...line, ...line.map((_, j) => (i === j ? 1 : 0))])
  for (let column = 0; column < size; column++) {
    const below = work.slice(column)
    const pivot = below.reduce((best, line) =>
      Math.abs(at(line, column)) > Math.abs(at(best, column)) ? line : best,
    )
    const head = at(pivot, column)
    if (!(Math.abs(head) > 0)) throw new RangeError('the equations do not tell every free error')
    const row = work.indexOf(pivot)
    work[row] = work[column] ?? []
    work[column] = pivot.map((entry) => entry / head)
    const unit = work[column] ?? []
    work.forEach((line, index) => {
      const times = at(line, column)
      if (index !== column) work[index] = line.map((entry, k) => entry - times * at(unit, k))
    })
  }
  return work.map((line) => line.slice(size))
}
