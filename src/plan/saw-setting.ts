import type { Saw } from '../order/order.js'
import type { Degrees } from '../units/brand.js'
import { degrees } from '../units/convert.js'
import { SAME_ANGLE } from '../units/tolerance.js'

/** One angle to set at the saw. */
export interface SawSetting {
  /** The exact miter angle from a square crosscut; negative when the cut leans the other way. */
  readonly miter: Degrees
  /** The saw's bias that the reading makes good; absent when there is none. */
  readonly bias?: Degrees
  /** A wedge between fence and work takes what the saw cannot; absent within the saw's limit. */
  readonly wedge?: FenceWedge
  /** What to read at the saw: the miter's size, less the bias and the wedge. Never negative. */
  readonly reading: Degrees
  /** The nearest scale line or detent to that reading. */
  readonly mark: Degrees
  /** The signed miter that the nearest mark gives. */
  readonly miterAtMark: Degrees
}

export interface FenceWedge {
  /** Whole degrees. */
  readonly angle: Degrees
}

/** @param bias what the cut comes out at less what the scale reads, for a cut that closes the ring */
export const sawSetting = (saw: Saw, miter: Degrees, bias = degrees(0)): SawSetting => {
  const dialled = degrees(miter - bias)
  const wedge = fenceWedge(saw, dialled)
  const reading = degrees(Math.abs(dialled) - (wedge?.angle ?? 0))
  const mark = nearestMark(saw, reading)
  const miterAtMark = degrees((dialled < 0 ? -1 : 1) * (mark + (wedge?.angle ?? 0)) + bias)
  return { miter, reading, mark, miterAtMark, ...(bias === 0 ? {} : { bias }), ...(wedge ? { wedge } : {}) }
}

/** The bias of the cuts that close the ring; 0 when none was learned. */
export const biasOf = ({ bias }: Saw): Degrees => bias?.miter ?? degrees(0)

/** Within the saw's own reach, without a wedge? */
export const withinLimit = (saw: Saw, miter: Degrees): boolean => Math.abs(miter) <= saw.limit + SAME_ANGLE

const fenceWedge = (saw: Saw, miter: Degrees): FenceWedge | undefined =>
  withinLimit(saw, miter)
    ? undefined
    : { angle: degrees(Math.ceil(Math.abs(miter) - saw.limit - SAME_ANGLE)) }

/** Scale lines and detents from 0 to the limit. Of two that are equally near, the shallower. */
export const nearestMark = (saw: Saw, reading: Degrees): Degrees => {
  const line = Math.round(reading / saw.readsTo)
  const lines = [line - 1, line, line + 1].map((index) => degrees(index * saw.readsTo))
  const reachable = [...lines, ...saw.detents]
    .filter((mark) => mark >= 0 && mark <= saw.limit + SAME_ANGLE)
    .sort((a, b) => a - b)
  return reachable.reduce(
    (best, mark) => (Math.abs(mark - reading) < Math.abs(best - reading) - SAME_ANGLE ? mark : best),
    degrees(0),
  )
}

/** Every mark of the saw from 0 to its limit, in order. */
export const sawMarks = (saw: Saw): Degrees[] => {
  const count = Math.floor((saw.limit + SAME_ANGLE) / saw.readsTo)
  const lines = Array.from({ length: count + 1 }, (_, index) => degrees(index * saw.readsTo))
  const marks = [...lines, ...saw.detents.filter((detent) => detent <= saw.limit + SAME_ANGLE)]
  return marks
    .sort((a, b) => a - b)
    .filter((mark, index, sorted) => index === 0 || mark - (sorted[index - 1] ?? 0) > SAME_ANGLE)
}
