import { blankIsArm } from '../geometry/kite.js'
import type { Star } from '../geometry/star.js'
import { DEFAULTS } from '../order/defaults.js'
import { degrees, mm } from '../units/convert.js'
import { SAME_ANGLE } from '../units/tolerance.js'
import type { ArmErrors } from './arm.js'
import { type Equation, type Estimate, leastSquares } from './least-squares.js'
import { type Doubt, equationOf, type Measurement, type Spread, standard } from './measurement.js'
import { isTold, type Row, spanOf } from './span.js'

/** The most probable errors of the arms, and which of them the measurements do not tell. */
export interface MostProbable extends Estimate {
  readonly arms: ArmErrors
  readonly measured: readonly Measurement[]
  /** One a measurement, for what the errors still lack. */
  readonly equations: readonly Equation[]
  /** How many of the three errors, or sums of them, are told. */
  readonly rank: number
  /** An orthonormal basis of what is told. */
  readonly span: readonly Row[]
  /** Errors taken for none because nothing tells them. */
  readonly assumed: readonly [tip: boolean, side: boolean, tipEdge: boolean]
}

export const TIP: Row = [1, 0, 0]
export const SIDE: Row = [0, 1, 0]
export const TIP_EDGE: Row = [0, 0, 1]

/** The gap depends on the joint edge, and that on the errors, so it is solved again with what was found. */
const MOST_ROUNDS = 60

/** How sure tips and stop are where nothing measured tells them. */
const UNTOLD: Doubt = {
  tip: degrees(standard(DEFAULTS.bevelGauge)),
  tipEdge: mm(standard(DEFAULTS.tape)),
}

/** A rhombus arm has one cut angle: what its tips have too much its sides have too little. */
export const foldedRow = (star: Star, row: Row): Row =>
  blankIsArm(star) ? [row[0] - row[1], 0, row[2]] : row

/**
 * The errors under which the measurements are most probable. The closure condition is built in: in every arm tip, sides
 * and centre make 360°, so the centre angle is no error of its own.
 *
 * What cannot be told is taken for right: first the tips, for that cut is made at a detent or a stop more often, then
 * the sides, then the stop.
 */
export const mostProbable = (star: Star, measured: readonly Measurement[], spread: Spread): MostProbable => {
  let arms: ArmErrors = { tip: degrees(0), side: degrees(0), tipEdge: mm(0) }
  let doubt: Doubt = UNTOLD
  for (let round = 1; ; round++) {
    const equations = measured.map((each): Equation => {
      const equation = equationOf(each, star, arms, spread, doubt)
      return { ...equation, row: foldedRow(star, equation.row) }
    })
    const rows = equations.map(({ row }) => row)
    const free = freeErrors(rows, blankIsArm(star))
    const estimate = leastSquares(equations, free)
    const [tip, ownSide, tipEdge] = estimate.errors
    doubt = {
      tip: free[0] ? degrees(Math.sqrt(estimate.covariance[0][0])) : UNTOLD.tip,
      tipEdge: free[2] ? mm(Math.sqrt(estimate.covariance[2][2])) : UNTOLD.tipEdge,
    }
    const side = blankIsArm(star) ? -tip : ownSide
    arms = {
      tip: degrees(arms.tip + tip),
      side: degrees(arms.side + side),
      tipEdge: mm(arms.tipEdge + tipEdge),
    }
    if (Math.max(...estimate.errors.map(Math.abs)) < SAME_ANGLE || round === MOST_ROUNDS) {
      const assumed = [!free[0], !free[1] && !blankIsArm(star), !free[2]] as const
      const span = spanOf(rows)
      return { ...estimate, arms, measured, equations, rank: span.length, span, assumed }
    }
  }
}

/** Rows without the errors that are taken for right. */
const freeErrors = (rows: readonly Row[], rhombus: boolean): readonly [boolean, boolean, boolean] => {
  const told = (error: Row, free: readonly [boolean, boolean, boolean]): boolean =>
    isTold(
      error,
      spanOf(rows.map((row) => [free[0] ? row[0] : 0, free[1] ? row[1] : 0, free[2] ? row[2] : 0])),
    )
  const tip = told(TIP, [true, true, true])
  const side = !rhombus && told(SIDE, [tip, true, true])
  return [tip, side, told(TIP_EDGE, [tip, side, true])]
}
