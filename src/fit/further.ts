import { blankIsArm } from '../geometry/kite.js'
import type { Star } from '../geometry/star.js'
import type { ArmErrors } from './arm.js'
import { type Measurable, rowOf } from './measurement.js'
import { foldedRow, type MostProbable, SIDE, TIP, TIP_EDGE } from './most-probable.js'
import { isTold, type Row, spanOf } from './span.js'

/** Something the measurements leave open, and the one further measurement that would settle it. */
export interface Untold {
  /** `apart`: the errors of the first cut and of the joint cuts; `closing`: whether the ring closes; `stop`. */
  readonly what: 'apart' | 'closing' | 'stop'
  readonly settledBy: Measurable
}

/** The easiest at the bench first. */
const EASE: readonly Measurable[] = ['gap', 'tip', 'tip-edge', 'side', 'across', 'centre']

/** Shares of tip and side error in the closure. */
const CLOSURE: Row = [1, 2, 0]

/** What is left open; each with the first measurement that settles it, or at least helps, where one alone cannot. */
export const untold = (star: Star, found: MostProbable): Untold[] => {
  const { arms, span } = found
  const rhombus = blankIsArm(star)
  const closing = isTold(foldedRow(star, CLOSURE), span)
  const apart = rhombus || (isTold(TIP, span) && isTold(SIDE, span))
  const settle = (...wanted: readonly Row[]): Measurable => settling(star, arms, span, wanted)
  return [
    ...(closing ? [] : [{ what: 'closing', settledBy: settle(foldedRow(star, CLOSURE)) } as const]),
    ...(closing && !apart ? [{ what: 'apart', settledBy: settle(TIP, SIDE) } as const] : []),
    ...(isTold(TIP_EDGE, span) ? [] : [{ what: 'stop', settledBy: settle(TIP_EDGE) } as const]),
  ]
}

const settling = (star: Star, arms: ArmErrors, span: readonly Row[], wanted: readonly Row[]): Measurable => {
  const withIt = (of: Measurable): readonly Row[] => spanOf([...span, foldedRow(star, rowOf(of, star, arms))])
  return (
    EASE.find((of) => wanted.every((row) => isTold(row, withIt(of)))) ??
    EASE.find((of) => withIt(of).length > span.length) ??
    'gap'
  )
}
