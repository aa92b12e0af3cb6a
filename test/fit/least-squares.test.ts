import { Matrix, pseudoInverse, SingularValueDecomposition } from 'ml-matrix'
import { describe, expect, it } from 'vitest'
import { type Equation, leastSquares } from '../../src/fit/least-squares.js'
import { type Measurable, rowOf, wouldMeasure } from '../../src/fit/measurement.js'
import { isTold, type Row, spanOf } from '../../src/fit/span.js'
import { solveStar } from '../../src/geometry/star.js'
import { randomFrom } from '../../src/nest/random.js'
import { degrees, mm } from '../../src/units/convert.js'

// ml-matrix (pseudo-inverse and rank by singular values) shares no code with ours.

const KINDS: readonly Measurable[] = ['gap', 'tip', 'side', 'centre', 'tip-edge', 'across']

const pick = <Value>(random: () => number, from: readonly Value[]): Value => {
  const found = from[Math.floor(random() * from.length)]
  if (found === undefined) throw new Error('nothing to pick from')
  return found
}

/** Random sets of measurements on random stars. */
const cases = (count: number, seed: number) => {
  const random = randomFrom(seed)
  return Array.from({ length: count }, () => {
    const points = 3 + Math.floor(random() * 22)
    const tip = (0.1 + 0.8 * random()) * (180 - 360 / points)
    const star = solveStar(points, degrees(tip), 'radius', mm(60 + 300 * random()))
    const share = Math.min(0.5, 60 / points)
    const errors = {
      tip: degrees((random() - 0.5) * share),
      side: degrees((random() - 0.5) * share),
      tipEdge: mm((random() - 0.5) * 4),
    }
    const kinds = Array.from({ length: 1 + Math.floor(random() * 6) }, () => pick(random, KINDS))
    const equations = kinds.map(
      (of): Equation => ({
        row: rowOf(of, star, errors),
        value: random() - 0.5,
        variance: 0.01 + random(),
      }),
    )
    return { star, errors, kinds, equations }
  })
}

const rankOf = (rows: readonly Row[]): number =>
  new SingularValueDecomposition(
    new Matrix(rows.map((row) => row.map((entry) => entry / Math.hypot(...row)))),
    { autoTranspose: true },
  ).diagonal.filter((value) => value > 1e-6).length

describe('weighted least squares', () => {
  it('agree with ml-matrix on 200 random cases: errors and covariances', () => {
    const full = cases(1000, 11).filter(({ equations }) => rankOf(equations.map(({ row }) => row)) === 3)
    expect(full.length).toBeGreaterThan(200)
    for (const { equations } of full.slice(0, 200)) {
      const weights = equations.map(({ variance }) => 1 / Math.sqrt(variance))
      const design = new Matrix(equations.map(({ row }, i) => row.map((entry) => entry * (weights[i] ?? 0))))
      const right = Matrix.columnVector(equations.map(({ value }, i) => value * (weights[i] ?? 0)))
      const theirs = pseudoInverse(design).mmul(right).to1DArray()
      const covariance = pseudoInverse(design.transpose().mmul(design)).to2DArray()
      const ours = leastSquares(equations, [true, true, true])
      for (const i of [0, 1, 2] as const) {
        expect(ours.errors[i]).toBeCloseTo(theirs[i] ?? Number.NaN, 6)
        for (const j of [0, 1, 2] as const) {
          const scale = Math.sqrt((covariance[i]?.[i] ?? 0) * (covariance[j]?.[j] ?? 0))
          expect(ours.covariance[i][j] / scale).toBeCloseTo((covariance[i]?.[j] ?? Number.NaN) / scale, 6)
        }
      }
    }
  })

  it('of fewer unknowns agree too', () => {
    for (const { equations } of cases(200, 12)) {
      const edges = equations.filter(({ row }) => row[2] !== 0)
      if (edges.length === 0) continue
      const [top, bottom] = [0, 1].map((power) =>
        edges.reduce(
          (sum, { row, value, variance }) => sum + (row[2] * (power ? row[2] : value)) / variance,
          0,
        ),
      )
      expect(leastSquares(edges, [false, false, true]).errors[2]).toBeCloseTo((top ?? 0) / (bottom ?? 1), 9)
    }
  })
})

describe('what measurements tell', () => {
  it('has the rank that singular values give, on 400 random sets', () => {
    const ranks = new Set<number>()
    for (const { equations } of cases(400, 13)) {
      const rows = equations.map(({ row }) => row)
      const rank = rankOf(rows)
      ranks.add(rank)
      expect(spanOf(rows)).toHaveLength(rank)
    }
    expect([...ranks].sort()).toEqual([1, 2, 3])
  })

  it('tells an error exactly when its row does not raise the rank', () => {
    for (const { equations } of cases(200, 14)) {
      const rows = equations.map(({ row }) => row)
      for (const error of [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
        [1, 2, 0],
      ] as const) {
        expect(isTold(error, spanOf(rows))).toBe(rankOf([...rows, error]) === rankOf(rows))
      }
    }
  })
})

describe('how measurements answer to the errors', () => {
  it('is the slope of what would be measured, by differences', () => {
    for (const { star, errors } of cases(100, 15)) {
      for (const of of KINDS) {
        const row = rowOf(of, star, errors)
        for (const [index, name] of (['tip', 'side', 'tipEdge'] as const).entries()) {
          const step = 1e-4
          const at = (by: number) => wouldMeasure(of, star, { ...errors, [name]: errors[name] + by })
          expect(row[index]).toBeCloseTo((at(step) - at(-step)) / (2 * step), 4)
        }
      }
    }
  })
})
