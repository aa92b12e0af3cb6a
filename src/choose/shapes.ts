import { FEWEST_POINTS, MOST_POINTS, regularTipAngle, tipAngleLimit } from '../geometry/star.js'
import type { Saw } from '../order/order.js'
import { tipAnglesWithin } from '../plan/cuts.js'
import { markPairs } from '../plan/mark-pairs.js'
import type { Degrees } from '../units/brand.js'
import { degrees } from '../units/convert.js'
import { SAME_ANGLE } from '../units/tolerance.js'

/** A kind of star, before it has a size, and why it is offered. */
export interface Shape {
  readonly points: number
  readonly tipAngle: Degrees
  /** The k of the regular star {n/k}. */
  readonly step?: number
  /** The slenderest star with these points that the saw cuts without a wedge. */
  readonly slenderest: boolean
  /** Both settings fall on marks of the saw, and the star closes on them. */
  readonly onMarks: boolean
}

/** Between the tip angles at which stars on marks are looked for: nearer ones look alike. */
const COARSE = 5
const FINE = 1

export const ALL_POINTS: readonly number[] = Array.from(
  { length: MOST_POINTS - FEWEST_POINTS + 1 },
  (_, index) => FEWEST_POINTS + index,
)

/**
 * Every regular star, the slenderest and stars on marks, for these points; of the last one in every 5° of tip angle,
 * or in every degree where only one number of points is asked for. A star that is several of these comes once.
 */
export const shapesFor = (points: readonly number[], saw: Saw): Shape[] =>
  points.flatMap((count) =>
    joined([
      ...regular(count),
      ...slenderest(count, saw),
      ...onMarks(count, saw, points.length === 1 ? FINE : COARSE),
    ]),
  )

const regular = (points: number): Shape[] =>
  Array.from({ length: Math.max(0, Math.ceil(points / 2) - 2) }, (_, index) => index + 2).map((step) => ({
    points,
    tipAngle: regularTipAngle(points, step),
    step,
    slenderest: false,
    onMarks: false,
  }))

const slenderest = (points: number, saw: Saw): Shape[] => {
  const within = tipAnglesWithin(saw, points)
  return within ? [{ points, tipAngle: within.least, slenderest: true, onMarks: false }] : []
}

const onMarks = (points: number, saw: Saw, apart: number): Shape[] => {
  const wanted = Array.from({ length: Math.floor(tipAngleLimit(points) / apart) }, (_, index) =>
    degrees((index + 1) * apart),
  )
  return wanted.flatMap((tipAngle) =>
    markPairs(saw, points, tipAngle)
      .slice(0, 1)
      .filter((pair) => pair.closure === 0)
      .map((pair) => ({ points, tipAngle: pair.tipAngle, slenderest: false, onMarks: true })),
  )
}

/** Shapes of the same tip angle become one. */
const joined = (shapes: readonly Shape[]): Shape[] => {
  const found: Shape[] = []
  for (const shape of shapes) {
    const same = found.findIndex(({ tipAngle }) => Math.abs(tipAngle - shape.tipAngle) < SAME_ANGLE)
    const before = found[same]
    if (before) {
      found[same] = {
        ...shape,
        ...before,
        slenderest: before.slenderest || shape.slenderest,
        onMarks: before.onMarks || shape.onMarks,
      }
    } else found.push(shape)
  }
  return found
}
