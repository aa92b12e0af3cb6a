import { DEFAULTS } from '../order/defaults.js'
import { sentence } from '../order/problem.js'
import type { FilledPanel, PanelPlan } from '../panels/panel-plan.js'
import type { SharedPanels } from '../panels/panel-worth.js'
import type { PanelStep } from '../panels/plan-panels.js'
import type { StarPlan } from '../plan/plan.js'
import { goesOnBed } from '../plan/plate-panels.js'
import type { Mm } from '../units/brand.js'
import { fixed, type LengthStyle, showLength } from '../units/show.js'
import { numberedPanels } from './panel-drawing.js'
import { row } from './text-rows.js'

/** `2 panels of 2440.0 mm × 1220.0 mm, price 48.00; 62 % of them becomes plates`. */
export const useText = (use: SharedPanels, lengths: LengthStyle): string => {
  const { panel, count, stars } = use
  // A panel that tells no thickness is bought as thick as the plates.
  const thickness =
    panel.thickness ?? stars.find(({ plateThickness }) => plateThickness !== undefined)?.plateThickness
  const show = (length: Mm) => showLength(length, lengths)
  const price = panel.price === undefined ? '' : `, price ${fixed(panel.price * count, 2)}`
  const thick = thickness === undefined ? '' : ` × ${show(thickness)}`
  return `${panels(count)} of ${show(panel.length)} × ${show(panel.width)}${thick}${price}; ${percent(use.yield)} of that becomes plates`
}

/** What the count is worth: beside rows of boxes, and beside what the area allows at best. */
export const worthText = ({ count, atLeast, inBoxes, bestYield, boxYield }: SharedPanels): string => {
  const boxes =
    inBoxes > count
      ? `rows of boxes would take ${panels(inBoxes)}, ${percent(boxYield)} plates`
      : `rows of boxes would take ${inBoxes === 1 ? 'one too' : 'as many'}`
  const best =
    atLeast >= count
      ? 'no layout takes fewer'
      : `their area alone would fill ${panels(atLeast)}, ${percent(bestYield)} plates, which no layout betters`
  return `${boxes}; ${best}`
}

const namesIn = ({ stars }: SharedPanels): string => stars.map(({ order }) => order.name).join(', ')

/** What to buy for the stars that share panels, and what that is worth. */
const buyLines = (use: SharedPanels, lengths: LengthStyle): string[] => [
  `${namesIn(use)}: ${useText(use, lengths)}.`,
  sentence(worthText(use)),
]

/** Panels that must be cut in pieces before they go onto the cutter. */
const bedLines = ({ uses, plan }: PanelPlan): string[] => {
  const { lengths, shop } = plan.order
  const { bed } = shop.cutter
  if (!bed) return []
  const show = (length: Mm) => showLength(length, lengths)
  return uses
    .filter(({ panel }) => !goesOnBed(panel, shop.cutter))
    .map(
      ({ panel }) =>
        `A panel of ${show(panel.length)} × ${show(panel.width)} does not go onto the cutter's bed of ${show(bed.width)} × ${show(bed.length)}. Have it sawn to go on and give the pieces as panels of the order; or leave the bed out, if the cutter lets a panel through.`,
    )
}

/** Plates that tabs cannot hold, for who cuts a panel may not see the star's plan. */
const tabLines = ({ uses }: PanelPlan): string[] =>
  uses.flatMap(({ stars }) =>
    stars.flatMap(({ order, warnings }) =>
      warnings.filter(({ code }) => code === 'tabs-missing').map(({ text }) => `${order.name}: ${text}`),
    ),
  )

const unplacedLines = ({ unplaced }: PanelPlan): string[] =>
  unplaced.map(({ order }) => `No panel of the order holds the backing of ${order.name}.`)

const stoppedLines = ({ stopped }: PanelPlan): string[] => (stopped ? [`Stopped: ${STOPPED}.`] : [])

/** Which seed laid the plates, where it is not the usual one. */
const seedLines = ({ plan, uses }: PanelPlan): string[] => {
  const { panelSeed } = plan.order.shop
  return panelSeed === DEFAULTS.panelSeed || uses.length === 0 ? [] : [`begun with panel-seed ${panelSeed}`]
}

/** What plates are lettered with in a picture that shows those of several stars; '' where there is no room. */
export type PlateLetters = ReadonlyMap<StarPlan, string>

/**
 * `54 × Boathouse (rows of boxes hold 32, the area alone 61 at most), 3 × Chapel; 56 % of it becomes plates`, or with
 * letters `a: 54 × Boathouse`.
 */
export const filledText = ({ worth }: FilledPanel, letters?: PlateLetters): string => {
  const plates = worth.stars.map(({ star, count, beside }) => {
    const more = beside
      ? ` (rows of boxes hold ${beside.inBoxes}, the area alone ${beside.areaBound} at most)`
      : ''
    const letter = letters?.get(star)
    const small = letter === '' ? ' (too small for a letter)' : ''
    return `${letter ? `${letter}:\u00a0` : ''}${count} × ${star.order.name}${more}${small}`
  })
  return `${plates.join(', ')}; ${percent(worth.yield)} of it becomes plates`
}

/** What is told of all panels together, on paper and on the page: groups of lines that stand apart. */
export const panelNotes = (found: PanelPlan): string[][] => [
  ...found.uses.map((use) => buyLines(use, found.plan.order.lengths)),
  unplacedLines(found),
  [...bedLines(found), ...tabLines(found)],
  seedLines(found).map((text) => `Search ${text}.`),
  stoppedLines(found),
]

/** Everything about the panels, for the terminal. */
export const panelText = (found: PanelPlan): string => {
  const { lengths } = found.plan.order
  const each = numberedPanels(found).map(({ first, last, filled }) =>
    row(`Panel ${first === last ? first : `${first}-${last}`}`, filledText(filled)),
  )
  return [
    'Panels for the backings',
    ...found.uses.flatMap((use) => [
      ...row('Buy', `${found.uses.length > 1 ? `${namesIn(use)}: ` : ''}${useText(use, lengths)}`),
      ...row('', worthText(use)),
    ]),
    ...each.flat(),
    ...found.unplaced.flatMap(({ order }) => row('Not on any', `${order.name}: no panel holds its backing`)),
    ...[...bedLines(found), ...tabLines(found)].flatMap((text) => row('!', text)),
    ...seedLines(found).flatMap((text) => row('Search', text)),
    ...(found.stopped ? row('Stopped', STOPPED) : []),
    '',
  ].join('\n')
}

/** What the search for room is doing, for a person who waits. */
export const stepText = ({ star, most, step, steps }: PanelStep): string =>
  `${star}: ${most} backings on a panel, step ${step} of ${steps}`

const STOPPED =
  'the search was ended before its last step: this is the best so far, and another run may come out otherwise'

const panels = (count: number): string => (count === 1 ? '1 panel' : `${count} panels`)
const percent = (share: number): string => `${fixed(share * 100, 0)} %`
