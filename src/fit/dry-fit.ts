import { blankIsArm } from '../geometry/kite.js'
import type { Saw } from '../order/order.js'
import { done, type Outcome } from '../order/problem.js'
import { closureGap, closureOfJointCut, closureOfRhombus } from '../plan/closure.js'
import { jointMiter } from '../plan/cuts.js'
import type { StarPlan } from '../plan/plan.js'
import { type SawSetting, sawSetting, withinLimit } from '../plan/saw-setting.js'
import type { Degrees, Mm } from '../units/brand.js'
import { degrees, mm } from '../units/convert.js'
import * as maths from '../units/maths.js'
import type { LengthStyle } from '../units/show.js'
import { type ArmErrors, armAsCut, type CutArm, closureOf } from './arm.js'
import { contradictions } from './contradictions.js'
import { type Untold, untold } from './further.js'
import { varianceOf } from './least-squares.js'
import type { Measurement, Spread } from './measurement.js'
import { foldedRow, type MostProbable, mostProbable } from './most-probable.js'
import { type Recut, recutArms } from './recut.js'

/** How the star was cut, and what the maker accepts. */
export interface DryFitTerms {
  /** What the saw read at the cuts that close the ring: the joint cuts, of a rhombus arm the first cut. */
  readonly reading: Degrees
  /** Least thickness a new joint face takes off. */
  readonly cleanUp: Mm
  /** A gap that is accepted. */
  readonly accepted: Mm
  readonly spread: Spread
}

/** What a dry-fitted star tells, and what to do. */
export interface DryFit {
  readonly plan: StarPlan
  readonly terms: DryFitTerms
  readonly found: MostProbable
  readonly errors: ArmErrors
  /** Expanded uncertainties, coverage factor 2 (GUM, JCGM 100:2008, 6.2.1). */
  readonly uncertainty: { readonly tip: Degrees; readonly side: Degrees; readonly tipEdge: Mm }
  readonly arm: CutArm
  readonly closure: Degrees
  readonly closureUncertainty: Degrees
  /** At the last joint, by that closure. */
  readonly gap: Mm
  readonly untold: readonly Untold[]
  /**
   * `turn` the saw; it `closes` as it is; `unsure`: the closure is not told apart from none; `unknown`: nothing measured
   * bears on it.
   */
  readonly verdict: 'turn' | 'closes' | 'unsure' | 'unknown'
  readonly setting: NewSetting
  /** For new arms, where the tips are told to be off: both cuts as they come out true. */
  readonly newArms?: NewArms
  /** Absent when the arms are too short, or their tips too fat, to be recut. */
  readonly recut?: Recut
  /** What the recut star's closure may be off, with the saw set exactly; coverage factor 2. */
  readonly recutUncertainty: Degrees
}

export interface NewArms {
  readonly firstCut: SawSetting
  readonly jointCut: SawSetting
}

export interface NewSetting extends SawSetting {
  readonly withinLimit: boolean
  /** What the star's closure becomes at the nearest mark. */
  readonly closureAtMark: Degrees
  /** What the cut comes out at less what the scale reads. */
  readonly learned: Degrees
  readonly uncertainty: Degrees
  /** Of a rhombus arm: the joint cuts that mend the arms that are there; they had none before. */
  readonly mending?: SawSetting
}

/** GUM (JCGM 100:2008), 6.2.1: about 95 % of a normal distribution. */
const COVERAGE = 2

export const dryFit = (
  plan: StarPlan,
  saw: Saw,
  measured: readonly Measurement[],
  terms: DryFitTerms,
  lengths: LengthStyle,
): Outcome<DryFit> => {
  const { star } = plan
  const found = mostProbable(star, measured, terms.spread)
  const agreed = contradictions(star, found, measured, lengths)
  if (!agreed.ok) return agreed
  const { arms: errors } = found
  const arm = armAsCut(star, errors)
  const closure = closureOf(star.points, errors)
  const variance = varianceOf(foldedRow(star, [star.points, 2 * star.points, 0]), found)
  const closureUncertainty = degrees(COVERAGE * Math.sqrt(variance))
  const expanded = (share: readonly [number, number, number]): number =>
    COVERAGE * Math.sqrt(varianceOf(share, found))
  const recut = recutArms(star.points, arm, terms.cleanUp)
  const sure = { closure, uncertainty: closureUncertainty }
  const open = untold(star, found)
  const setting = newSetting(plan, saw, errors, sure, terms.reading)
  const tipDoubt = degrees(expanded([1, 0, 0]))
  const tipsOff = !found.assumed[0] && !blankIsArm(star) && Math.abs(errors.tip) > tipDoubt
  return done({
    plan,
    terms,
    found,
    errors,
    uncertainty: {
      tip: tipDoubt,
      side: degrees(expanded(blankIsArm(star) ? [1, 0, 0] : [0, 1, 0])),
      tipEdge: mm(expanded([0, 0, 1])),
    },
    arm,
    closure,
    closureUncertainty,
    gap: closureGap(arm.jointEdge, closure),
    untold: open,
    verdict: open.some(({ what }) => what === 'closing') ? 'unknown' : verdictOf(arm, sure, terms.accepted),
    setting,
    ...(tipsOff ? { newArms: newArms(plan, saw, errors, setting) } : {}),
    ...(recut ? { recut } : {}),
    recutUncertainty: degrees(
      COVERAGE * Math.sqrt(variance + 2 * star.points * maths.square(terms.spread.angle)),
    ),
  })
}

interface SureClosure {
  readonly closure: Degrees
  readonly uncertainty: Degrees
}

const verdictOf = (
  { jointEdge }: CutArm,
  { closure, uncertainty }: SureClosure,
  accepted: Mm,
): Exclude<DryFit['verdict'], 'unknown'> => {
  const gap = closureGap(jointEdge, closure)
  if (Math.abs(closure) > uncertainty) return gap <= accepted ? 'closes' : 'turn'
  return gap <= accepted && closureGap(jointEdge, uncertainty) <= 2 * accepted ? 'closes' : 'unsure'
}

/** The reading that closes the ring, from the one the arms were cut at and the closure they came to. */
const newSetting = (
  { star, firstCut, jointCut }: StarPlan,
  saw: Saw,
  errors: ArmErrors,
  { closure, uncertainty }: SureClosure,
  reading: Degrees,
): NewSetting => {
  const rhombus = blankIsArm(star)
  const { miter, wedge } = rhombus ? firstCut : jointCut
  const cuts = rhombus ? star.points : 2 * star.points
  const learned = degrees(miter + closure / cuts - (reading + (wedge?.angle ?? 0)))
  const setting = sawSetting(saw, miter, learned)
  const closureAt = rhombus ? closureOfRhombus : closureOfJointCut
  return {
    ...setting,
    withinLimit: withinLimit(saw, degrees(miter - learned)),
    closureAtMark: closureAt(star.points, miter, setting.miterAtMark),
    learned,
    uncertainty: degrees(uncertainty / cuts),
    ...(rhombus
      ? { mending: sawSetting(saw, jointMiter(star.points, degrees(star.tipAngle + errors.tip)), learned) }
      : {}),
  }
}

/** The learned bias makes good for tips that are off by turning the joint cuts; without that it is the joint cuts' own. */
const newArms = (
  { firstCut, jointCut }: StarPlan,
  saw: Saw,
  { tip }: ArmErrors,
  { learned }: NewSetting,
): NewArms => ({
  firstCut: sawSetting(saw, firstCut.miter, degrees(-tip)),
  jointCut: sawSetting(saw, jointCut.miter, degrees(learned - tip / 2)),
})
