import type { DryFit } from '../fit/dry-fit.js'
import { type Measurable, type Measurement, wouldMeasure } from '../fit/measurement.js'
import type { Recut } from '../fit/recut.js'
import { blankIsArm } from '../geometry/kite.js'
import type { Order } from '../order/order.js'
import { biasAsWritten, writtenBias } from '../order/save-bias.js'
import { closureGap } from '../plan/closure.js'
import type { SawSetting } from '../plan/saw-setting.js'
import type { Degrees, Mm } from '../units/brand.js'
import { degrees, mm } from '../units/convert.js'
import { showAngle, showLength, showMovement, showSetting } from '../units/show.js'
import { SAME_ANGLE, SHOP } from '../units/tolerance.js'
import { closureText, settingText } from './cut-steps.js'

/** A heading and what stands behind it. */
export interface Words {
  readonly heading: string
  readonly text: string
}

/** A recut that leaves more of the gap than this is not worth the wood. */
const HARDLY_BETTER = 0.7

const positive = (angle: Degrees): Degrees => degrees(Math.abs(angle))
const size = (length: Mm): Mm => mm(Math.abs(length))

const MEASURED: Readonly<Record<Exclude<Measurable, 'gap'>, string>> = {
  tip: 'tip angle',
  side: 'side angle',
  centre: 'centre angle',
  'tip-edge': 'tip edge',
  across: 'tip to tip at the widest',
}

/** What was measured, what it means, and what it leaves open; measurements to come go by their flag, or by name alone. */
export const findings = (fit: DryFit, order: Order, by: 'flag' | 'name' = 'flag'): Words[] => [
  ...fit.found.measured.map((each, index) => ({
    heading: index === 0 ? 'Measured' : '',
    text: measuredText(each, fit, order),
  })),
  { heading: 'Closing', text: closingText(fit, order) },
  ...errorWords(fit, order),
  ...fit.untold.map(({ what, settledBy }, index) => ({
    heading: index === 0 ? 'Not told' : '',
    text: `${UNTOLD[what](fit)} ${SETTLES[settledBy]} would settle it${by === 'flag' ? ` (${FLAGS[settledBy]})` : ''}.`,
  })),
]

const measuredText = ({ of, value, within }: Measurement, { plan }: DryFit, { lengths }: Order): string => {
  const length = (written: number): string => showLength(mm(written), lengths)
  if (of === 'gap') {
    const end =
      value === 0 ? '' : value > 0 ? ' at the valley' : ' at the centre, or the last arm too wide by it'
    return `gap ${showMovement(mm(Math.abs(value)), lengths)}${end} (± ${showMovement(mm(within), lengths)})`
  }
  const isLength = of === 'tip-edge' || of === 'across'
  const show = isLength ? length : (angle: number) => showAngle(degrees(angle))
  const sure = isLength ? showMovement(mm(within), lengths) : showAngle(degrees(within))
  const wanted = wouldMeasure(of, plan.star, { tip: degrees(0), side: degrees(0), tipEdge: mm(0) })
  return `${MEASURED[of]} ${show(value)} (± ${sure}; wanted ${show(wanted)})`
}

const closingText = (fit: DryFit, order: Order): string => {
  const { closure, closureUncertainty, gap, verdict, plan } = fit
  if (verdict === 'unknown') return 'nothing measured tells whether the last joint closes.'
  const { lengths } = order
  const full = `all ${plan.star.points} arms together ${showAngle(positive(closure))} ${closure > 0 ? 'less' : 'more'} than a full turn, give or take ${showAngle(closureUncertainty)}`
  const joint = `${showMovement(gap, lengths)} at the last joint`
  if (verdict === 'closes') return `it closes: ${full}, ${joint}.`
  if (verdict === 'unsure') {
    return `not told apart from closing: ${full}, ${joint}. Measure the gap more finely before you turn the saw.`
  }
  return `the arms are too ${closure > 0 ? 'slim' : 'fat'}: ${full}, ${joint}.`
}

const errorWords = (fit: DryFit, { lengths }: Order): Words[] => {
  const { errors, uncertainty, found, plan } = fit
  const [tip, side, tipEdge] = found.assumed
  const angle = (error: Degrees, sure: Degrees, more: string, less: string): string =>
    `${showAngle(positive(error))} ± ${showAngle(sure)} too ${error > 0 ? more : less}`
  const texts = [
    ...(tip ? [] : [`tips ${angle(errors.tip, uncertainty.tip, 'fat', 'slim')}`]),
    ...(side || blankIsArm(plan.star)
      ? []
      : [`joint cuts ${angle(errors.side, uncertainty.side, 'steep', 'shallow')}`]),
    ...(tipEdge
      ? []
      : [
          `tip edges ${showMovement(size(errors.tipEdge), lengths)} ± ${showMovement(uncertainty.tipEdge, lengths)} too ${errors.tipEdge > 0 ? 'long' : 'short'}`,
        ]),
  ]
  const taken = [...(tip ? ['tips'] : []), ...(side ? ['joint cuts'] : []), ...(tipEdge ? ['stop'] : [])]
  const rest = taken.length === 0 ? '' : `; ${taken.join(' and ')} taken for right`
  return texts.length === 0 ? [] : [{ heading: 'Errors', text: `most probably ${texts.join(', ')}${rest}.` }]
}

const UNTOLD: Readonly<Record<DryFit['untold'][number]['what'], (fit: DryFit) => string>> = {
  apart: () =>
    'The first cut and the joint cuts cannot be told apart; the joint cuts can make good for both.',
  closing: () => 'Whether the ring closes.',
  stop: () => 'Whether the stop stood right.',
}

const SETTLES: Readonly<Record<Measurable, string>> = {
  gap: 'The gap at the last joint',
  tip: 'The tip angle of one arm',
  side: 'A side angle of one arm',
  centre: 'The centre angle of one arm',
  'tip-edge': 'A tip edge',
  across: 'The width, tip to tip,',
}

const FLAGS: Readonly<Record<Measurable, string>> = {
  gap: '--gap',
  tip: '--measured-tip',
  side: '--measured-side',
  centre: '--measured-centre',
  'tip-edge': '--measured-tip-edge',
  across: '--measured-across',
}

/** What to do, in this order; nothing when the saw stays as it is. */
export const recutSteps = (fit: DryFit, order: Order): string[] => {
  if (fit.verdict !== 'turn') return []
  const { setting, recut, plan } = fit
  if (!recut) {
    return [
      turnStep('Saw', fit, order),
      'The arms cannot be recut: too little would be left. Cut new ones at that setting.',
    ]
  }
  const mending = setting.mending ? jointStep(setting.mending, recut, order) : undefined
  const [one, other, onAll] = mending
    ? ['face side up', 'turned over', 'face side up on all, then turned over on all']
    : ['as at cut 2', 'turned over, as at cut 3', 'cut 2 on all, then cut 3 on all']
  const stop = `Stop: move it toward the blade by ${showSetting(recut.stopMove, order.lengths)}.`
  return [
    ...(mending === undefined ? [turnStep('Saw', fit, order), stop] : [mending]),
    `Recut one arm first, both joint faces: the tip at the stop, ${one}, then ${other}. Arm clamped, offcut free; lower the blade slowly, for so thin a slice pushes it aside.`,
    `Check that arm: centre ${showAngle(recut.star.centreAngle)}, sides ${showAngle(recut.star.sideAngle)}, tip edges ${showSetting(recut.star.tipEdge, order.lengths)}.`,
    `Then the other ${plan.star.points - 1} arms with nothing moved: ${onAll}. Both faces of all ${plan.star.points} arms, or they no longer match.`,
    'Dry-fit again before any glue.',
    ...(mending === undefined ? [] : [turnStep('New arms', fit, order)]),
  ]
}

const turnStep = (whose: string, { setting, terms, plan }: DryFit, order: Order): string => {
  const cut = blankIsArm(plan.star) ? 'first cut' : 'joint cuts'
  const planned = blankIsArm(plan.star) ? plan.firstCut : plan.jointCut
  const from = terms.reading + (planned.wedge?.angle ?? 0)
  const way = setting.reading + (setting.wedge?.angle ?? 0) > from ? 'steeper' : 'shallower'
  const open = setting.closureAtMark
  const left =
    Math.abs(open) < SAME_ANGLE
      ? 'leaves nothing open'
      : `leaves ${closureText(open, closureGap(plan.star.jointEdge, open), order)}: set it between the marks`
  return `${whose}, ${cut}: turn the reading from ${settingText({ ...planned, reading: terms.reading })} to ${settingText(setting)}, ${way}. Nearest mark ${showAngle(setting.mark)}, which ${left}.`
}

/** Arms that are done with their first cuts get joint cuts, as those of any other star. */
const jointStep = (mending: SawSetting, { star }: Recut, order: Order): string =>
  `These arms get joint cuts, though the plan has none. Saw ${settingText(mending)}, its handle swung away from the stop; one edge beside a tip on the ${mending.wedge ? 'wedge' : 'fence'}, that tip against a stop ${showSetting(star.tipEdge, order.lengths)} along it from the near side of the blade. Then the arm turned over, the other edge of that tip there, the tip at the stop again.`

/** What the recut costs, what to expect, and what this saw has taught. */
export const outcomes = (fit: DryFit, order: Order, by: 'flag' | 'name' = 'flag'): Words[] => {
  const { lengths } = order
  const { recut, terms, verdict } = fit
  const show = (length: Mm): string => showLength(length, lengths)
  const small = (length: Mm): string => showMovement(length, lengths)
  if (verdict === 'unknown' || verdict === 'unsure') return []
  const bias = {
    heading: 'Saw bias',
    text: by === 'flag' ? `${biasFound(fit)} ${biasWritten(fit)}` : biasFound(fit),
  }
  if (verdict !== 'turn' || !recut) return [...newArmsWords(fit), bias]
  const { star } = fit.plan
  const expected = closureGap(recut.star.jointEdge, fit.recutUncertainty)
  const doubt =
    expected < HARDLY_BETTER * fit.gap
      ? ''
      : '. That is hardly better than now: with so many cuts their spread leaves it open, not the setting. Measure the gap more finely and make the cuts repeat better before you recut'
  return [
    {
      heading: 'Comes off',
      text: `${small(recut.off.valley)} at the valley and ${small(recut.off.centre)} at the centre of each joint face: ${small(terms.cleanUp)} all over, so that the face is cut fresh${by === 'flag' ? ' (--clean-up)' : ''}, and the rest for the turn`,
    },
    {
      heading: 'New star',
      text: `${show(recut.star.across)} across, ${show(recut.star.height)} high; tip edge ${showSetting(recut.star.tipEdge, lengths)}, joint edge ${show(recut.star.jointEdge)}`,
    },
    ...(star.tipEdge - recut.star.tipEdge > SHOP
      ? [
          {
            heading: 'Wood',
            text: `too short to be recut at the size ordered: ${small(mm(star.tipEdge - recut.star.tipEdge))} is missing on each tip edge, and the star comes out ${small(mm(star.across - recut.star.across))} narrower. For the full width cut new arms.`,
          },
        ]
      : []),
    {
      heading: 'Expect',
      text: `the last joint closes within ${small(expected)} (${showAngle(fit.recutUncertainty)}) in about 95 of 100 stars (coverage factor 2), if the saw is set exactly; a tenth of a degree more or less is ${small(fit.plan.gapPerTenth)}${doubt}`,
    },
    ...newArmsWords(fit),
    bias,
  ]
}

/** Tips that are off stay so in recut arms; new ones can be cut true. */
const newArmsWords = ({ newArms, errors, plan }: DryFit): Words[] =>
  newArms
    ? [
        {
          heading: 'New arms',
          text: `recut arms keep their tips, ${showAngle(positive(errors.tip))} too ${errors.tip > 0 ? 'fat' : 'slim'}. For new ones turn the first cut from ${settingText(plan.firstCut)} to ${settingText(newArms.firstCut)} and the joint cuts to ${settingText(newArms.jointCut)}.`,
        },
      ]
    : []

/** How this saw cuts, and how surely. */
const biasFound = ({ setting, newArms }: DryFit): string => {
  const { miter, uncertainty } = writtenBias({ miter: setting.learned, uncertainty: setting.uncertainty })
  const way = miter < 0 ? 'shallower' : 'steeper'
  const kept = newArms
    ? ' That makes good for the tips too, so it holds while the first cut stays as it was, and not for stars without joint cuts.'
    : ''
  return `cuts come out ${showAngle(degrees(Math.abs(miter)))} ± ${showAngle(degrees(uncertainty))} ${way} than the scale says.${kept}`
}

const biasWritten = ({ setting }: DryFit): string =>
  `For the order, under shop: saw: (or --save writes it): bias: ${biasAsWritten({ miter: setting.learned, uncertainty: setting.uncertainty })}`
