import { insetLimit, insetOutline } from '../geometry/inset.js'
import { outlineSize } from '../geometry/outline.js'
import { FEWEST_POINTS, MOST_POINTS, regularTipAngle, tipAngleLimit } from '../geometry/star.js'
import { inBoxes } from '../nest/in-boxes.js'
import { DEFAULTS } from '../order/defaults.js'
import { didYouMean } from '../order/did-you-mean.js'
import type { Order, Panel } from '../order/order.js'
import { done, type Outcome, type Problem, refused, sentences, showGiven } from '../order/problem.js'
import type { StarPlan } from '../plan/plan.js'
import { marginOf } from '../plate/plate-shape.js'
import type { Mm } from '../units/brand.js'
import { degrees } from '../units/convert.js'
import { type Choice, type ChoiceAsked, choiceOf, labelOf, starOf } from './choices.js'
import type { Shape } from './shapes.js'
import { sizesFor } from './sizes.js'

/** The backing that a star has, or could have, and how many of it the first panel gives. */
export interface PanelUse {
  readonly across: Mm
  readonly height: Mm
  /** Counted in plain rows, each in its own box: a nest of turned ones holds more. */
  readonly perPanel?: number
}

/** A star without a backing of its own gets one of its own shape, by the usual inset behind the chamfer. */
export const panelUse = (
  { star, order, backing }: StarPlan,
  panels: readonly Panel[],
): PanelUse | undefined => {
  const margin = marginOf(DEFAULTS, order.chamfer)
  if (!backing && insetLimit(star, 'star') <= margin) return undefined
  const size = outlineSize(backing?.outline ?? insetOutline(star, 'star', margin))
  const [panel] = panels
  return panel
    ? { ...size, perPanel: inBoxes(size, { ...panel, width: panel.length, height: panel.width }) }
    : size
}

/**
 * The star a person means: its number in the ranked list, its label, the name it has in the order, or any `n/k` or
 * `n@tip angle`, on the first board that carries it.
 */
export const meant = (
  word: string,
  listed: readonly Choice[],
  order: Order,
  asked: ChoiceAsked,
): Outcome<Choice> => {
  const text = word.trim()
  const byNumber = /^\d{1,4}$/.test(text) ? listed[Number(text) - 1] : undefined
  const byLabel = listed.find(({ label }) => label.toLowerCase() === text.toLowerCase())
  const found = byNumber ?? byLabel
  if (found) return done(found)
  const shape = shapeOf(text)
  const isOwn = asked.own && order.stars.some(({ name }) => name.toLowerCase() === text.toLowerCase())
  if (!shape) return refused([isOwn ? notMade(word) : unknown(word, listed)])
  const [made] = sizesFor(shape, order, asked.size, false).flatMap((sized) =>
    choiceOf(labelOf(shape), shape, starOf(shape, sized, asked.quantity, order.climate.wall), sized, order),
  )
  return made ? done(made) : refused([notMade(word)])
}

const notMade = (word: string): Problem => ({
  place: '--compare',
  given: showGiven(word),
  advice:
    'This star cannot be made with this saw without a wedge, these boards and this room. starwright plan tells what stands in the way.',
})

/** Reads `5/2` and `5@45`. */
const shapeOf = (text: string): Shape | undefined => {
  const [, count = '', sign, rest = ''] = /^(\d{1,2}) ?([/@]) ?(\d{1,3}(?:[.,]\d{1,4})?)°?$/.exec(text) ?? []
  const points = Number(count)
  if (sign === undefined || points < FEWEST_POINTS || points > MOST_POINTS) return undefined
  const value = Number(rest.replace(',', '.'))
  const none = { slenderest: false, onMarks: false }
  if (sign === '/') {
    const regular = Number.isInteger(value) && value >= 2 && value < points / 2
    return regular ? { points, tipAngle: regularTipAngle(points, value), step: value, ...none } : undefined
  }
  return value > 0 && value < tipAngleLimit(points)
    ? { points, tipAngle: degrees(value), ...none }
    : undefined
}

const unknown = (word: string, listed: readonly Choice[]): Problem => ({
  place: '--compare',
  given: showGiven(word),
  advice: sentences(
    didYouMean(
      word,
      listed.map(({ label }) => label),
    ),
    `Allowed: a number from the list (1 to ${listed.length}), n/k such as 5/2, points@tip angle such as 5@45, or the name of a star in the order.`,
  ),
})
