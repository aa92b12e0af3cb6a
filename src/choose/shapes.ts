import { FEWEST_POINTS, MOST_POINTS, regularTipAngle } from '../geometry/star.js'
import type { Saw } from '../order/order.js'
import { tipAnglesWithin } from '../plan/cuts.js'
import { exactPairs } from '../plan/mark-pairs.js'
import type { Degrees } from '../units/brand.js'
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

/** Between stars on marks where all points are offered: nearer ones look alike, and there are thousands. */
const APART = 5

export const ALL_POINTS: readonly number[] = Array.from(
  { length: MOST_POINTS - FEWEST_POINTS + 1 },
  (_, index) => FEWEST_POINTS + index,
)

/**
 * Every regular star, the slenderest and stars on marks, for these points; of the last every one where one number of
 * points is asked for, else one in every 5° of tip angle. A star that is several of these comes once.
 */
export const shapesFor = (points: readonly number[], saw: Saw): Shape[] =>
  points.flatMap((count) =>
    joined([
      ...regular(count),
      ...slenderest(count, saw),
      ...(points.length === 1 ? onMarks(count, saw) : thinned(onMarks(count, saw))),
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

const onMarks = (points: number, saw: Saw): Shape[] =>
  exactPairs(saw, points).map(({ tipAngle }) => ({ points, tipAngle, slenderest: false, onMarks: true }))

/** The nearest to each multiple of APART. */
const thinned = (shapes: readonly Shape[]): Shape[] => {
  const nearest = new Map<number, Shape>()
  const off = ({ tipAngle }: Shape, step: number): number => Math.abs(tipAngle - step * APART)
  for (const shape of shapes) {
    const step = Math.round(shape.tipAngle / APART)
    const before = nearest.get(step)
    if (!before || off(shape, step) < off(before, step)) nearest.set(step, shape)
  }
  return [...nearest.values()]
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
