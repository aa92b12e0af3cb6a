import { fewestPanels } from '../nest/area-bound.js'
import { nestSteps, type Wanted } from '../nest/nest.js'
import type { Placed, Panel as Sheet } from '../nest/panel.js'
import { lastOf, type Steps, toldAs } from '../nest/run-steps.js'
import type { Panel, Shop } from '../order/order.js'
import type { Plan } from '../plan/plan.js'
import { type Cost, costOf, costTogether, isCheaper } from './panel-cost.js'
import { groupsOf, panelsFor, partedGroups } from './panel-groups.js'
import { type Backed, type FilledPanel, isBacked, type LaidPlate, type PanelPlan } from './panel-plan.js'
import { panelWorth, type SharedPanels, useOf } from './panel-worth.js'

/** How the search goes on, for a person who waits. */
export interface PanelStep {
  readonly star: string
  /** Most of its plates on one panel so far. */
  readonly most: number
  readonly step: number
  readonly steps: number
}

/** Tells every step; `true` given back ends the search with the best so far. */
export type PanelSteps = Steps<PanelStep, PanelPlan>

/**
 * Stars of one plate thickness share panels. Of the panels of it that hold all of them the cheapest is taken, of those
 * that cost alike the least area; one that does not go onto the cutter's bed only where no other holds the plate. Where
 * some of them come cheaper on panels of their own, they have those.
 */
export function* panelSteps(plan: Plan): PanelSteps {
  const backed = plan.stars.filter(isBacked)
  const { shop } = plan.order
  const laid: Nested[] = []
  let stopped = false
  for (const stars of groupsOf(backed, shop)) {
    const cheapest: Cheapest = yield* cheapestOf(stars, shop, stopped)
    stopped = cheapest.stopped
    laid.push(...cheapest.laid)
  }
  const unplaced = backed.filter((star) => !laid.some(({ use }) => use.stars.includes(star)))
  return {
    plan,
    panels: laid.flatMap(({ filled }) => filled),
    uses: laid.map(({ use }) => use),
    unplaced,
    stopped,
  }
}

interface Cheapest {
  readonly laid: readonly Nested[]
  readonly stopped: boolean
}

function* cheapestOf(stars: readonly Backed[], shop: Shop, ended: boolean): Steps<PanelStep, Cheapest> {
  let stopped = ended
  let best: Nested | undefined
  for (const panel of panelsFor(stars, shop)) {
    // Not even the fewest panels of this kind could be cheaper.
    if (best && !isCheaper(leastCost(stars, panel), best.cost)) continue
    const nested: Nested = yield* nestOn(stars, panel, shop.panelSeed, stopped)
    stopped ||= nested.stopped
    if (nested.holdsAll && (!best || isCheaper(nested.cost, best.cost))) best = nested
  }
  const together: Cheapest = { laid: best ? [best] : [], stopped }
  const parts = stopped ? [] : partedGroups(stars, shop)
  const least = costTogether(
    parts.map((part) => leastOf(panelsFor(part, shop).map((panel) => leastCost(part, panel)))),
  )
  if (parts.length === 0 || (best && !isCheaper(least, best.cost))) return together
  const apart: Nested[] = []
  for (const part of parts) {
    const found: Cheapest = yield* cheapestOf(part, shop, stopped)
    stopped = found.stopped
    apart.push(...found.laid)
  }
  const isAll = stars.every((star) => apart.some(({ use }) => use.stars.includes(star)))
  const isBetter = isAll && (!best || isCheaper(costTogether(apart.map(({ cost }) => cost)), best.cost))
  return isBetter ? { laid: apart, stopped } : { ...together, stopped }
}

const leastOf = (costs: readonly Cost[]): Cost =>
  costs.reduce((least, cost) => (isCheaper(cost, least) ? cost : least))

const leastCost = (stars: readonly Backed[], panel: Panel): Cost =>
  costOf(panel, fewestPanels(wantedOf(stars), sheetOf(panel)))

/** All steps at once. */
export const planPanels = (plan: Plan): PanelPlan => lastOf(panelSteps(plan))

interface Nested {
  readonly filled: readonly FilledPanel[]
  readonly use: SharedPanels
  readonly cost: Cost
  readonly holdsAll: boolean
  readonly stopped: boolean
}

function* nestOn(
  stars: readonly Backed[],
  panel: Panel,
  seed: number,
  stopped: boolean,
): Steps<PanelStep, Nested> {
  const sheet = sheetOf(panel)
  const {
    panels,
    unplaced,
    stopped: ended,
  } = yield* toldAs(
    nestSteps(wantedOf(stars), sheet, seed),
    ({ plate, ...told }) => ({ star: stars[plate]?.order.name ?? '', ...told }),
    stopped,
  )
  const filled = alike(
    panels.map((placed) => placed.map((each) => laidPlate(each, stars))),
    panel,
  )
  return {
    filled,
    use: useOf(stars, panel, sheet, panels.length),
    cost: costOf(panel, panels.length),
    holdsAll: unplaced.every((count) => count === 0),
    stopped: ended,
  }
}

const wantedOf = (stars: readonly Backed[]): Wanted[] =>
  stars.map(({ backing, order }) => ({ outline: backing.outline, count: order.quantity }))

/** As the panel lies: its length to the right. */
const sheetOf = ({ length, width, edge, gap }: Panel): Sheet => ({
  width: length,
  height: width,
  edge,
  gap,
})

const laidPlate = ({ plate, turn, at }: Placed, stars: readonly Backed[]): LaidPlate => {
  const star = stars[plate]
  if (!star) throw new RangeError(`there is no plate ${plate}`)
  return { star, turn, at }
}

/** Panels one after another with the same plates in the same places are told once. */
const alike = (panels: readonly (readonly LaidPlate[])[], panel: Panel): FilledPanel[] => {
  const filled: FilledPanel[] = []
  const sameAs = (one: readonly LaidPlate[], other: readonly LaidPlate[]): boolean =>
    one.length === other.length &&
    one.every(({ star, turn, at }, index) => {
      const twin = other[index]
      return twin?.star === star && twin.turn === turn && twin.at.x === at.x && twin.at.y === at.y
    })
  for (const plates of panels) {
    const last = filled.at(-1)
    if (last && sameAs(last.plates, plates)) filled[filled.length - 1] = { ...last, times: last.times + 1 }
    else filled.push({ panel, times: 1, plates, worth: panelWorth(plates, sheetOf(panel)) })
  }
  return filled
}
