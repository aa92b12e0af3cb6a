import type { Order, Saw } from '../order/order.js'
import { type MovedStar, type SeasonState, worstGap } from '../season/season.js'
import type { AdvisedStar } from '../season/season-plan.js'
import { speciesNamed } from '../tables/species.js'
import type { Mm } from '../units/brand.js'
import { degrees, mm } from '../units/convert.js'
import type { LengthStyle } from '../units/show.js'
import { showAngle, showLength, showMovement, trimmed } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'

/** `1.9 mm at the valley`, by which the last joint gapes when all joints are free. */
export const gapText = ({ closure, gap }: MovedStar, lengths: LengthStyle): string =>
  gap < SHOP ? 'nothing' : `${showMovement(gap, lengths)} at the ${closure > 0 ? 'valley' : 'centre'}`

/** `western larch, flat-sawn: 0.323 % across the grain for 1 % of moisture (not checked in a handbook)`. */
export const woodText = ({ wood, coefficient, plan }: AdvisedStar): string => {
  const seen = speciesNamed(wood.name)?.seen[wood.rings === 'flat' ? 'tangential' : 'radial']
  const mark = seen === 'memory' ? ' (not checked in a handbook: look it up)' : ''
  const noBoard = plan.warnings.some(({ code }) => code === 'board-too-narrow')
    ? '; no board of the order carries these arms, so this is the wood under shop'
    : ''
  return `${wood.name}, ${wood.rings}-sawn: ${trimmed(coefficient * 100, 3)} % across the grain for 1 % of moisture${mark}${noBoard}`
}

/** What free joints show beside the gap: the two edges of a joint are no longer equally long. */
export const stepText = ({ winter, summer }: AdvisedStar, lengths: LengthStyle): string | undefined => {
  const step = mm(Math.max(winter.byGrain.edge.step, summer.byGrain.edge.step))
  return step < SHOP
    ? undefined
    : `the grain follows one tip edge of each arm, so its two joint edges no longer match: a step of up to ${showMovement(step, lengths)} at each valley`
}

/** Where the stress goes when the joints cannot give. */
export const stressText = (season: AdvisedStar, lengths: LengthStyle): string => {
  const { plan } = season
  const names = ['winter', 'summer'] as const
  const parts = names.flatMap((name) => {
    const { closure, gap } = season[name].byGrain.edge
    const each = mm(gap / plan.star.points)
    if (gap < SHOP) return []
    const [pulled, pressed] = closure > 0 ? ['valley', 'centre'] : ['centre', 'valley']
    return `in ${name} every joint wants to open by ${showMovement(each, lengths)} at the ${pulled}: it is pulled there and pressed at the ${pressed}`
  })
  if (parts.length === 0)
    return 'nothing pulls at the joints: between workshop and wall the wood moves no angle'
  const plate = plan.backing
    ? ` A backing glued all over takes that pull into its glue, out to ${showLength(plan.backing.covers, lengths)} from the centre, and the star bends: its tips come forward as it dries and go back as it swells.`
    : ''
  return `${parts.join('; ')}.${plate}`
}

/** Both ways to lay the kite on the board, side by side. */
export const layoutText = (season: AdvisedStar, saw: Saw, lengths: LengthStyle): string => {
  const { layout } = season
  const show = (length: typeof layout.width) => showLength(length, lengths)
  const board =
    layout.boardAllows === false
      ? `a board ${show(layout.width)} wide, which the order does not have,`
      : `a board ${show(layout.width)} wide`
  const cuts = `cuts at ${showAngle(layout.tipMiter)} and ${showAngle(layout.jointMiter)}`
  const reach = layout.sawReaches
    ? ''
    : `, past the saw's ${showAngle(degrees(saw.limit))}: a band saw or a hand saw`
  return `along one tip edge, as planned: ${showMovement(worstGap(season, 'edge'), lengths)} at worst. Along the arm's axis: ${showMovement(worstGap(season, 'axis'), lengths)} and no steps, from ${board} with ${cuts}${reach}`
}

export const changeText = ({ change }: SeasonState): string =>
  `${change > 0 ? '+' : ''}${trimmed(change * 100, 2)} %`

/** Is what free joints would open more than the shop accepts? */
export const acceptedText = (season: AdvisedStar, { shop, lengths }: Order): string => {
  const worst = worstGap(season, 'edge')
  const show = (length: Mm): string => showMovement(length, lengths)
  return worst > shop.acceptedGap
    ? `no: free joints would open ${show(worst)} at worst, and you accept ${show(shop.acceptedGap)}`
    : `yes: free joints would open ${show(worst)} at worst, within the ${show(shop.acceptedGap)} you accept`
}
