import type { FilledPanel, PanelPlan, PanelStep, PanelUse } from '../panels/plan-panels.js'
import type { StarPlan } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { fixed, type LengthStyle, showLength } from '../units/show.js'
import { row } from './text-rows.js'

/** `2 panels of 2440.0 mm × 1220.0 mm, price 48.00; 62 % of them becomes plates`. */
export const useText = (use: PanelUse, lengths: LengthStyle): string => {
  const { panel, count } = use
  const show = (length: Mm) => showLength(length, lengths)
  const price = panel.price === undefined ? '' : `, price ${fixed(panel.price * count, 2)}`
  const thick = panel.thickness === undefined ? '' : ` × ${show(panel.thickness)}`
  return `${panels(count)} of ${show(panel.length)} × ${show(panel.width)}${thick}${price}; ${percent(use.yield)} of that becomes plates`
}

/** What the count is worth: beside rows of boxes, and beside what the area allows at best. */
export const worthText = ({ count, atLeast, inBoxes }: PanelUse): string => {
  const boxes =
    inBoxes > count
      ? `rows of boxes would take ${panels(inBoxes)}`
      : `rows of boxes would take ${inBoxes === 1 ? 'one too' : 'as many'}`
  const best =
    atLeast >= count ? 'no layout takes fewer' : `by the area alone it could not be fewer than ${atLeast}`
  return `${boxes}; ${best}`
}

/** `54 × Boathouse, 3 × Chapel`. */
export const platesText = ({ plates }: FilledPanel): string => {
  const counts = new Map<StarPlan, number>()
  for (const { star } of plates) counts.set(star, (counts.get(star) ?? 0) + 1)
  return [...counts].map(([star, count]) => `${count} × ${star.order.name}`).join(', ')
}

/** Plates over the panel, in words. */
export const yieldText = ({ panel, plates }: FilledPanel, areaOf: (star: StarPlan) => number): string => {
  const taken = plates.reduce((sum, { star }) => sum + areaOf(star), 0)
  return `${percent(taken / (panel.length * panel.width))} of it becomes plates`
}

/** Everything about the panels, for the terminal. */
export const panelText = (found: PanelPlan): string => {
  const { lengths } = found.plan.order
  let first = 1
  const each = found.panels.map((filled) => {
    const numbers = filled.times === 1 ? `${first}` : `${first}-${first + filled.times - 1}`
    first += filled.times
    return row(`Panel ${numbers}`, platesText(filled))
  })
  return [
    'Panels for the backings',
    ...found.uses.flatMap((use) => [...row('Buy', useText(use, lengths)), ...row('', worthText(use))]),
    ...each.flat(),
    ...found.unplaced.flatMap(({ order }) => row('Not on any', `${order.name}: no panel holds its backing`)),
    ...(found.stopped ? row('Stopped', STOPPED) : []),
    '',
  ].join('\n')
}

/** What the search for room is doing, for a person who waits. */
export const stepText = ({ star, most, step, steps }: PanelStep): string =>
  `${star}: ${most} backings on a panel, step ${step} of ${steps}`

export const STOPPED =
  'the search was ended before its last step: this is the best so far, and another run may come out otherwise'

const panels = (count: number): string => (count === 1 ? '1 panel' : `${count} panels`)
const percent = (share: number): string => `${fixed(share * 100, 0)} %`
