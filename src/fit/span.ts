import { TOLD_APART } from '../units/tolerance.js'

/** How one measurement answers to the errors of tip angle and side angle, per degree, and of the tip edge, per mm. */
export type Row = readonly [tip: number, side: number, tipEdge: number]

const dot = (a: Row, b: Row): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]

const minus = (a: Row, b: Row, times: number): Row => [
  a[0] - times * b[0],
  a[1] - times * b[1],
  a[2] - times * b[2],
]

const scaled = (row: Row, by: number): Row => [row[0] * by, row[1] * by, row[2] * by]

/** What of a row lies outside the span of an orthonormal basis; taken off twice against rounding. */
const outside = (row: Row, basis: readonly Row[]): Row =>
  [...basis, ...basis].reduce((left, axis) => minus(left, axis, dot(left, axis)), row)

/** An orthonormal basis of what the rows can tell; its length is their rank. Gram and Schmidt, the largest rest first. */
export const spanOf = (rows: readonly Row[]): readonly Row[] => {
  const basis: Row[] = []
  const unit = rows.filter((row) => dot(row, row) > 0).map((row) => scaled(row, 1 / Math.sqrt(dot(row, row))))
  for (;;) {
    const rests = unit.map((row) => outside(row, basis))
    const most = rests.reduce<Row>(
      (best, rest) => (dot(rest, rest) > dot(best, best) ? rest : best),
      [0, 0, 0],
    )
    const size = Math.sqrt(dot(most, most))
    if (size <= TOLD_APART || basis.length === 3) return basis
    basis.push(scaled(most, 1 / size))
  }
}

/** Is a sum of errors, with these shares of each, told by what spans the basis? */
export const isTold = (share: Row, basis: readonly Row[]): boolean => {
  const rest = outside(share, basis)
  return Math.sqrt(dot(rest, rest)) <= TOLD_APART * Math.sqrt(dot(share, share))
}
