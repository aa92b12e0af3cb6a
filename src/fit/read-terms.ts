import { blankIsArm } from '../geometry/kite.js'
import { DEFAULTS } from '../order/defaults.js'
import type { Shop } from '../order/order.js'
import { done, type Outcome, type Problem, refused, showGiven } from '../order/problem.js'
import { MOST_BIAS } from '../order/schema.js'
import type { StarPlan } from '../plan/plan.js'
import { degrees, mm } from '../units/convert.js'
import { readAngle } from '../units/read-angle.js'
import { readLength } from '../units/read-length.js'
import { type LengthStyle, showAngle, showAtMost } from '../units/show.js'
import type { DryFitTerms } from './dry-fit.js'

/** What a maker wrote of how the star was cut. */
export interface WrittenTerms {
  readonly cutAt?: string | undefined
  readonly cleanUp?: string | undefined
}

const MOST_CLEAN_UP = mm(5)

/** As planned where nothing is written: the arms were cut at the plan's own reading. */
export const readTerms = (
  { cutAt, cleanUp }: WrittenTerms,
  plan: StarPlan,
  { saw, stop, acceptedGap }: Shop,
  lengths: LengthStyle,
): Outcome<DryFitTerms> => {
  const planned = (blankIsArm(plan.star) ? plan.firstCut : plan.jointCut).reading
  const problems: Problem[] = []
  const reading = cutAt === undefined ? { angle: planned } : readAngle(cutAt)
  if ('refused' in reading || reading.angle > saw.limit || Math.abs(reading.angle - planned) > MOST_BIAS) {
    problems.push({
      place: '--cut-at',
      given: showGiven(cutAt),
      advice: `Allowed: what the saw's scale showed, within ${showAngle(degrees(MOST_BIAS))} of the planned ${showAngle(planned)} and up to the saw's ${showAngle(saw.limit)}.`,
    })
  }
  const least = cleanUp === undefined ? { length: DEFAULTS.cleanUp } : readLength(cleanUp, lengths.units)
  if ('refused' in least || least.length > MOST_CLEAN_UP) {
    problems.push({
      place: '--clean-up',
      given: showGiven(cleanUp),
      advice: `Allowed: from 0 to ${showAtMost(MOST_CLEAN_UP, lengths)}, written like 0.5 mm.`,
    })
  }
  if ('refused' in reading || 'refused' in least || problems.length > 0) return refused(problems)
  return done({
    reading: reading.angle,
    cleanUp: least.length,
    accepted: acceptedGap,
    spread: { angle: saw.repeatsTo, stop: stop.repeatsTo },
  })
}
