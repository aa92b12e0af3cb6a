import type { Order } from '../order/order.js'
import type { SeasonState, WoodState } from '../season/season.js'
import type { AdvisedStar, SeasonPlan } from '../season/season-plan.js'
import { showAngle, trimmed } from '../units/show.js'
import { showAirShort } from '../units/show-measure.js'
import { starTitle } from './cut-plan.js'
import {
  acceptedText,
  changeText,
  gapText,
  layoutText,
  stepText,
  stressText,
  woodText,
} from './season-words.js'
import { columns, listing, row, WIDTH } from './text-rows.js'
import { wrapColumns } from './wrap-columns.js'

/** How the stars move with the seasons, as a text to read: one block a star. */
export const seasonCard = ({ plan: { order }, stars }: SeasonPlan): string => {
  const title = `${order.title}: how the wood moves`
  return [
    title,
    '='.repeat(title.length),
    ...wrapColumns(
      'Moisture by the air, and movement by the moisture: Wood Handbook (FPL-GTR-282), eq. 4-5 and table 13-5. Boards differ; take the figures for the size of the thing.',
      WIDTH,
      0,
    ),
    '',
    ...stars.flatMap((star) => [...starBlock(star, order), '']),
    ...listing('Taken for granted, as the order does not say', order.climate.assumed),
  ].join('\n')
}

const starBlock = (star: AdvisedStar, order: Order): string[] => {
  const { lengths } = order
  const title = starTitle(star.plan)
  const step = stepText(star, lengths)
  return [
    title,
    '-'.repeat(title.length),
    ...row('Wood', woodText(star)),
    '',
    ...columns(seasonRows(star, order), [8, 0, 6, 7, 6, 6, 0]),
    '',
    ...row('Closed', `${acceptedText(star, order)} (accepted-gap)`),
    ...(step === undefined ? [] : row('Valleys', step)),
    ...row('Glued', stressText(star, lengths)),
    ...row('Grain', layoutText(star, order.shop.saw, lengths)),
    ...star.advice.flatMap(({ code, text }) =>
      code === 'coefficients-do-not-hold' || code === 'equation-only'
        ? wrapColumns(`  ! ${text}`, WIDTH, 4)
        : wrapColumns(`  - ${text}`, WIDTH, 4),
    ),
  ]
}

/** Workshop, winter and summer below a row of headings: air, wood, change across the grain, angles, last joint. */
export const seasonRows = (
  { plan, workshop, winter, summer }: AdvisedStar,
  order: Order,
): readonly (readonly string[])[] => {
  const { star } = plan
  const air = (state: WoodState) => [
    showAirShort(state.air, order.lengths.units),
    `${trimmed(state.moisture, 1)} %`,
  ]
  const moved = (name: string, state: SeasonState) => {
    const { edge } = state.byGrain
    const angles = [showAngle(edge.arm.tipAngle), showAngle(edge.arm.centreAngle)]
    return [name, ...air(state), changeText(state), ...angles, gapText(edge, order.lengths)]
  }
  return [
    ['', 'air', 'wood', 'across', 'tip', 'centre', 'free joints leave open'],
    ['workshop', ...air(workshop), '', showAngle(star.tipAngle), showAngle(star.centreAngle), 'nothing'],
    moved('winter', winter),
    moved('summer', summer),
  ]
}
