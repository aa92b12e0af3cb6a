import type { DryFit } from '../fit/dry-fit.js'
import { blankIsArm } from '../geometry/kite.js'
import type { Order } from '../order/order.js'
import { showAngle } from '../units/show.js'
import { SAW_CAUTION } from './cautions.js'
import { findings, outcomes, recutSteps, type Words } from './dry-fit-words.js'
import { wrapColumns } from './wrap-columns.js'

const WIDTH = 84
const HEADING = 11

/** What a dry fit tells and what to do, as a card to read at the bench: plain text. */
export const dryFitCard = (fit: DryFit, order: Order): string => {
  const title = `${fit.plan.order.name}: dry fit`
  const steps = recutSteps(fit, order)
  return [
    title,
    '='.repeat(title.length),
    ...rows(findings(fit, order)),
    ...rows([{ heading: 'Cut at', text: cutAtText(fit) }]),
    ...(steps.length === 0
      ? []
      : [
          '',
          '  Do this, in this order:',
          ...steps.flatMap((text, index) => wrapColumns(`    ${index + 1}. ${text}`, WIDTH, 7)),
          '',
        ]),
    ...rows(outcomes(fit, order)),
    ...fit.plan.warnings
      .filter(({ code }) => code === 'short-arm' && steps.length > 0)
      .flatMap(({ text }) => wrapColumns(`  ! ${text}`, WIDTH, 4)),
    '',
    ...wrapColumns(`Safety: ${SAW_CAUTION}`, WIDTH, 0),
    '',
  ].join('\n')
}

const cutAtText = ({ terms, plan }: DryFit): string =>
  `${blankIsArm(plan.star) ? 'first cut' : 'joint cuts'} with the saw at ${showAngle(terms.reading)}; if it was set otherwise, say so with --cut-at`

const rows = (words: readonly Words[]): string[] =>
  words.flatMap(({ heading, text }) => wrapColumns(`  ${heading.padEnd(HEADING)}${text}`, WIDTH, HEADING + 2))
