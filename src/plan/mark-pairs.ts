import { tipAngleLimit } from '../geometry/star.js'
import type { Saw } from '../order/order.js'
import type { Degrees } from '../units/brand.js'
import { degrees } from '../units/convert.js'
import { SAME_ANGLE } from '../units/tolerance.js'
import { closureOfJointCut } from './closure.js'
import { jointMiter } from './cuts.js'
import { biasOf, nearestMark, sawMarks } from './saw-setting.js'

/** A star near the wanted one whose two settings both lie on marks of this saw. */
export interface MarkPair {
  readonly tipAngle: Degrees
  /** Mark of the first cut; negative when it leans the other way. */
  readonly first: Degrees
  readonly joint: Degrees
  /** What the pair leaves open; 0 when it closes exactly. */
  readonly closure: Degrees
}

const OFFERED = 3
/** A star further off than this looks like another star. */
const FURTHEST = 5

/**
 * Tip angles near the wanted one for which both settings fall on marks: the nearest ones that close exactly, or,
 * when these points have none within 5°, the ones that leave least open.
 */
export const markPairs = (saw: Saw, points: number, tipAngle: Degrees): MarkPair[] => {
  const near = allPairs(saw, points).filter((pair) => Math.abs(pair.tipAngle - tipAngle) <= FURTHEST)
  const nearness = (pair: MarkPair) => Math.abs(pair.tipAngle - tipAngle)
  const exact = near.filter(({ closure }) => closure === 0)
  return exact.length > 0
    ? exact.sort((a, b) => nearness(a) - nearness(b)).slice(0, OFFERED)
    : near
        .sort((a, b) => Math.abs(a.closure) - Math.abs(b.closure) || nearness(a) - nearness(b))
        .slice(0, OFFERED)
}

/** All tip angles for which both settings fall on marks and the star closes on them, the slimmest first. */
export const exactPairs = (saw: Saw, points: number): MarkPair[] =>
  allPairs(saw, points)
    .filter(({ closure }) => closure === 0)
    .sort((a, b) => a.tipAngle - b.tipAngle)

/** The first cut on each of the saw's marks, and the joint cuts on the mark that is nearest then. */
const allPairs = (saw: Saw, points: number): MarkPair[] => {
  const marks = sawMarks(saw)
  const signed = [...marks.filter((mark) => mark > 0).map((mark) => degrees(-mark)), ...marks]
  return signed.flatMap((first): MarkPair[] => {
    const pairTip = degrees(90 - first)
    if (!(pairTip > 0 && pairTip < tipAngleLimit(points))) return []
    const exact = degrees(jointMiter(points, pairTip) - biasOf(saw))
    if (exact > saw.limit + SAME_ANGLE) return []
    const joint = nearestMark(saw, exact)
    const open = closureOfJointCut(points, exact, joint)
    return [
      { tipAngle: pairTip, first, joint, closure: Math.abs(joint - exact) < SAME_ANGLE ? degrees(0) : open },
    ]
  })
}
