import { blankIsArm } from '../geometry/kite.js'
import type { Star } from '../geometry/star.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { chanceWithin, fallsTo } from './normal-law.js'

/** How unequal the two tip edges are that meet at a valley, from the slop at the stop. */
export interface ValleyStep {
  /** One standard deviation at one valley. */
  readonly usual: Mm
  /** What the largest step of a star stays below in 95 of 100 stars. */
  readonly largest: Mm
}

/** Of 100 stars. */
const STARS = 0.95

/**
 * Each valley joins the edges of two arms, each cut against the stop by itself, so their difference spreads √2 times
 * as far as one (GUM, JCGM 100:2008, equation 10). A rhombus arm has only one edge cut to the stop, the other comes
 * from the board's width, and at each valley one of either kind meet. The valleys share no edge: they are independent.
 */
export const valleyStep = (star: Star, stopRepeatsTo: Mm): ValleyStep => {
  const usual = stopRepeatsTo * (blankIsArm(star) ? 1 : Math.SQRT2)
  const within = (step: number) => 1 - maths.pow(chanceWithin(step, 0, usual), star.points)
  const largest = usual === 0 ? 0 : fallsTo(1 - STARS, 10 * usual, within)
  return { usual: mm(usual), largest: mm(largest) }
}
