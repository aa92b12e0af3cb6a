import type { BatchRisk } from '../fit/batch-risk.js'
import type { Estimate } from '../fit/simulate.js'
import { DEFAULTS } from '../order/defaults.js'
import type { Order } from '../order/order.js'
import { closureGap } from '../plan/closure.js'
import type { Degrees, Mm } from '../units/brand.js'
import { degrees } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { fixed, showAngle, showSmall } from '../units/show.js'
import { SAME_ANGLE } from '../units/tolerance.js'
import { countOf, fine, grouped, percent, SET_TEXTS } from './chance-words.js'
import type { Words } from './dry-fit-words.js'
import { gapBars } from './gap-bars.js'
import { wrapColumns } from './wrap-columns.js'

const WIDTH = 84
const HEADING = 11
/** Coverage factor of an expanded uncertainty: GUM (JCGM 100:2008), 6.2.1. */
const COVERAGE = 2

/** What may happen to each batch of an order, as plain text: one block a star. */
export const riskReport = (risks: readonly BatchRisk[], order: Order): string =>
  [
    order.title,
    '='.repeat(order.title.length),
    '',
    ...risks.flatMap((risk) => [...batchBlock(risk, order), '']),
    ...wrapColumns(
      'A chance is for the numbers it was given: measure how your own saw and stop repeat (repeats-to, stop-repeats-to), and dry-fit the first star before you cut the rest.',
      WIDTH,
      0,
    ),
    '',
  ].join('\n')

const row = (heading: string, text: string): string[] =>
  wrapColumns(`  ${heading.padEnd(HEADING)}${text}`, WIDTH, HEADING + 2)

const batchBlock = (risk: BatchRisk, order: Order): string[] => {
  const { plan, quantity, simulated } = risk
  const { star } = plan
  const small = (length: Mm) => showSmall(length, order.lengths)
  const title = `${plan.order.name}: ${countOf(quantity, 'star')}, ${star.points} points, ${countOf(plan.arms, 'arm')}`
  return [
    title,
    '-'.repeat(title.length),
    ...row('Saw', `set ${SET_TEXTS[risk.set]}`),
    ...row(
      'Repeats',
      `each cut to ${fine(risk.repeatsTo)} (repeats-to), each piece at the stop to ${small(risk.stopRepeatsTo)} (stop-repeats-to), one standard deviation`,
    ),
    ...row('True', trueText(order)),
    ...row('Accepted', `a gap of ${small(risk.acceptedGap)} at the last joint (accepted-gap)`),
    '',
    ...chanceTable(risk),
    '',
    ...riskWords(risk, order).flatMap(({ heading, text }) => row(heading, text)),
    '',
    ...wrapColumns(
      `  Gap at the last joint, ${grouped(simulated.stars)} simulated stars, seed ${risk.seed}:`,
      WIDTH,
      2,
    ),
    ...gapBars(risk, order),
  ]
}

/** What the chances come from and what would better them. */
export const riskWords = (risk: BatchRisk, order: Order): Words[] => {
  const small = (length: Mm) => showSmall(length, order.lengths)
  return [
    { heading: 'Closure', text: closureText(risk, small) },
    { heading: 'Comes from', text: sharesText(risk.law.shares) },
    { heading: 'Needed', text: neededText(risk) },
    ...correctedWords(risk, small),
    {
      heading: 'Valleys',
      text: `neighbouring edges differ by ${small(risk.step.usual)} (one standard deviation); in 95 of 100 stars no step is more than ${small(risk.step.largest)} (simulated: ${percent(risk.simulated.stepWithin.value)})`,
    },
    { heading: 'Wasted', text: wastedText(risk) },
  ]
}

const simulatedText = ({ value, error }: Estimate): string => `${percent(value)}, ± ${fixed(200 * error, 1)}`

/** One star and all of them, below a row of headings: worked out and simulated. */
export const chanceRows = ({
  quantity,
  star,
  batch,
  simulated,
}: BatchRisk): readonly (readonly string[])[] => [
  ['chance to close', 'worked out', 'simulated'],
  ['one star', percent(star), simulatedText(simulated.star)],
  ...(quantity === 1 ? [] : [[`all ${quantity} stars`, percent(batch), simulatedText(simulated.batch)]]),
]

const chanceTable = (risk: BatchRisk): string[] =>
  chanceRows(risk).map((cells) => `    ${cells.map((cell) => cell.padEnd(17)).join('')}`.trimEnd())

/** How far all cuts may be off together, before and after a dry fit has taught it. */
const trueText = ({ shop }: Order): string => {
  const { bias, trueTo } = shop.saw
  return bias
    ? `the learned bias of ${showAngle(bias.miter)} is sure to ${fine(bias.uncertainty)}`
    : `the scale to ${fine(trueTo)} (true-to), two standard deviations; no bias learned yet`
}

/** The statement of an uncertainty in the manner of GUM (JCGM 100:2008), 7.2.4. */
const closureText = ({ law, plan, accepted }: BatchRisk, small: (length: Mm) => string): string => {
  const expanded = COVERAGE * maths.hypot(law.shared, law.own)
  const side =
    law.mean > SAME_ANGLE ? ' (open at the valley)' : law.mean < -SAME_ANGLE ? ' (open at the centre)' : ''
  const gap = closureGap(plan.star.jointEdge, degrees(expanded))
  return `${fine(law.mean)}${side} ± ${fine(degrees(expanded))}, which is ${small(gap)} of gap: about 95 of 100 stars lie within that ± (called an expanded uncertainty: ${COVERAGE} standard deviations). Up to ${fine(accepted)} is accepted`
}

const SHARE_TEXTS = {
  setting: 'what the setting leaves open',
  bias: 'how true the scale is',
  firstCuts: 'spread of the first cuts',
  jointCuts: 'spread of the joint cuts',
} as const

const sharesText = (shares: BatchRisk['law']['shares']): string => {
  const parts = (Object.keys(SHARE_TEXTS) as (keyof typeof SHARE_TEXTS)[])
    .filter((part) => shares[part] > 0)
    .sort((a, b) => shares[b] - shares[a])
  const [first, ...rest] = parts
  if (first === undefined) return 'nothing: no input is off'
  const told = (part: keyof typeof SHARE_TEXTS) => `${SHARE_TEXTS[part]}, ${fixed(shares[part] * 100, 0)} %`
  return `mostly ${told(first)}${rest.map((part) => `; ${told(part)}`).join('')}`
}

const neededText = ({ needed, quantity }: Pick<BatchRisk, 'needed' | 'quantity'>): string => {
  const told = (wanted: string, repeats: Degrees | undefined) =>
    repeats === undefined
      ? `${wanted} is out of reach, however well they repeat`
      : `${wanted} takes cuts that repeat to ${fine(repeats)}`
  const stars = quantity === 1 ? 'the star' : `all ${quantity} stars`
  if (needed.for95 === undefined) {
    return `however well the cuts repeat, ${stars} will not close with a chance of 95 %: what the cuts share must be made good first`
  }
  return `for ${stars} to close, ${told('95 %', needed.for95)}; ${told('99 %', needed.for99)}`
}

/** What dry fits are worth: the chances after one, and of a saw that many have taught all that can be taught. */
const correctedWords = (risk: BatchRisk, small: (length: Mm) => string): Words[] => {
  const { law, corrected, settled, quantity } = risk
  if (law.mean === 0 && law.shared === 0) return []
  const told = ({ star, batch }: BatchRisk['corrected']): string =>
    `one star closes with a chance of ${percent(star)}${quantity === 1 ? '' : `, all ${quantity} with ${percent(batch)}`}`
  return [
    {
      heading: 'Corrected',
      text: `after one dry fit, its gap read to ± ${small(DEFAULTS.rule)}, ${told(corrected)}. After many, with nothing but the spread of the cuts left, ${told(settled)}; ${neededText({ needed: settled.needed, quantity })}`,
    },
  ]
}

const wastedText = ({ wasted, simulated, plan, quantity }: BatchRisk): string => {
  const told = (arms: number, estimate: Estimate) =>
    `${fixed(arms, 1)} of ${countOf(plan.arms, 'arm')} (simulated ${fixed(estimate.value, 1)})`
  const saved = wasted.cutAll - wasted.cutOneFitOne
  const verdict =
    quantity === 1
      ? 'no difference: there is no second star that the first could teach'
      : saved < 0.05
        ? 'no difference: the stars share nothing that a fit could teach'
        : `${fixed(saved, 1)} saved`
  return `cut all: ${told(wasted.cutAll, simulated.wasted.cutAll)}; cut one, fit one and correct the saw: ${told(wasted.cutOneFitOne, simulated.wasted.cutOneFitOne)}; ${verdict}`
}

/** Kept apart from {@link riskReport} for the drawing's notes. */
export const riskNotes = (risk: BatchRisk, order: Order): string[] => [
  `One star closes within ${showSmall(risk.acceptedGap, order.lengths)} with a chance of ${percent(risk.star)}${risk.quantity === 1 ? '' : `, all ${risk.quantity} with ${percent(risk.batch)}`}.`,
  `Each cut repeats to ${fine(risk.repeatsTo)}; set ${SET_TEXTS[risk.set]}.`,
  `Bars: ${grouped(risk.simulated.stars)} simulated stars, seed ${risk.seed}. Line: worked out.`,
]
