import { blankIsArm } from '../geometry/kite.js'
import { DEFAULTS } from '../order/defaults.js'
import type { Saw } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { Degrees, Mm } from '../units/brand.js'
import { degrees, radians, toDegrees, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { standard } from './measurement.js'

/**
 * How the saw is set: between the marks as the plan tells, a learned bias made good; on the nearest marks; or to the
 * bare angles, so that a learned bias stays in every joint cut.
 */
export type SawSet = 'told' | 'marks' | 'bare'

export const SAW_SETS: readonly SawSet[] = ['told', 'marks', 'bare']

/** A learned bias is expanded (GUM, JCGM 100:2008, 6.2.1). */
const COVERAGE = 2

/**
 * What the closure of the stars of one batch comes to, in degrees: above zero the last joint gapes at the valley,
 * below zero at the centre.
 */
export interface ClosureLaw {
  /** The same in every star, as far as it is known: from the marks, or from a bias that is left in. */
  readonly mean: Degrees
  /** The same in every star, but not known: one standard deviation, from how true the scale is, or how sure the bias. */
  readonly shared: Degrees
  /** Another in every star: one standard deviation, from the spread of its cuts. */
  readonly own: Degrees
  /** How much of the mean square of the closure each input brings, 0 to 1; all 0 when nothing is off. */
  readonly shares: ClosureShares
}

export interface ClosureShares {
  readonly setting: number
  readonly bias: number
  readonly firstCuts: number
  readonly jointCuts: number
}

/** Cuts whose errors add up to the closure of one star, and how many degrees of closure a degree in each brings. */
export const cutsOf = ({
  star,
}: Pick<StarPlan, 'star'>): { readonly first: number; readonly joint: number } =>
  // The corner at the centre of a rhombus arm is its first cut's; any other arm has one first and two joint cuts.
  blankIsArm(star) ? { first: star.points, joint: 0 } : { first: star.points, joint: 2 * star.points }

/**
 * The law of the closure by GUM (JCGM 100:2008), equation 10: every cut is an independent input and its sensitivity is
 * 1 degree a degree, so the variances add; what all cuts share adds up before it is squared (5.2.2, note 1).
 */
export const closureLaw = (plan: StarPlan, saw: Saw, set: SawSet): ClosureLaw => {
  const { first, joint } = cutsOf(plan)
  const closing = joint === 0 ? first : joint
  const mean = {
    told: 0,
    marks: plan.firstCut.closureAtMark + plan.jointCut.closureAtMark,
    bare: closing * (saw.bias?.miter ?? 0),
  }[set]
  // A learned bias is that of the whole ring; before, the scale is off at the first cut and at the joint cut by themselves.
  const shared =
    (saw.bias ? closing * saw.bias.uncertainty : maths.hypot(first, joint) * saw.trueTo) / COVERAGE
  const variance = maths.square(saw.repeatsTo)
  const whole = maths.square(mean) + maths.square(shared) + (first + joint) * variance
  const share = (part: number) => (whole === 0 ? 0 : part / whole)
  return {
    mean: degrees(mean),
    shared: degrees(shared),
    own: degrees(Math.sqrt((first + joint) * variance)),
    shares: {
      setting: share(maths.square(mean)),
      bias: share(maths.square(shared)),
      firstCuts: share(first * variance),
      jointCuts: share(joint * variance),
    },
  }
}

/** The largest closure, either way, whose gap at the open end of the last joint is still accepted. */
export const acceptedClosure = (jointEdge: Mm, gap: Mm): Degrees =>
  toDegrees(radians(2 * maths.asin(Math.min(1, gap / (2 * jointEdge)))))

/** The gap of a closure, above zero at the valley and below zero at the centre. */
export const signedGap = (jointEdge: Mm, closure: number): number =>
  2 * jointEdge * maths.sin(toRadians(degrees(Math.max(-180, Math.min(180, closure)) / 2)))

/** What a closure read from the gap of one star may be off, one standard deviation: the rule's own share. */
export const readingOf = (jointEdge: Mm): Degrees => toDegrees(radians(standard(DEFAULTS.rule) / jointEdge))
