import { fewestPanels } from '../nest/area-bound.js'
import { nestSteps, type Wanted } from '../nest/nest.js'
import type { Placed, Panel as Sheet } from '../nest/panel.js'
import { lastOf, type Steps, toldAs } from '../nest/run-steps.js'
import type { Panel, Shop } from '../order/order.js'
import type { Plan } from '../plan/plan.js'
import { goesOnBed } from '../plan/plate-panels.js'
import { SHOP } from '../units/tolerance.js'
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
 * that cost alike the least area; one that does not go onto the cutter's bed only where no other holds the plate.
 */
export function* panelSteps(plan: Plan): PanelSteps {
  const backed = plan.stars.filter(isBacked)
  const { shop } = plan.order
  const filled: FilledPanel[] = []
  const uses: SharedPanels[] = []
  let stopped = false
  for (const stars of groupsOf(backed, shop)) {
    let best: Nested | undefined
    for (const panel of panelsFor(stars, shop)) {
      // Not even the fewest panels of this kind could be cheaper.
      const least = costOf(panel, fewestPanels(wantedOf(stars), sheetOf(panel)))
      if (best && !isCheaper(least, best.cost)) continue
      const nested: Nested = yield* nestOn(stars, panel, shop.panelSeed, stopped)
      stopped ||= nested.stopped
      if (nested.holdsAll && (!best || isCheaper(nested.cost, best.cost))) best = nested
    }
    if (best) {
      filled.push(...best.filled)
      uses.push(best.use)
    }
  }
  const unplaced = backed.filter((star) => !uses.some(({ stars }) => stars.includes(star)))
  return { plan, panels: filled, uses, unplaced, stopped }
}

/** All steps at once. */
export const planPanels = (plan: Plan): PanelPlan => lastOf(panelSteps(plan))

/** Panels to cut a star's plate from: those that go onto the bed, if one of them holds it. */
const panelsOf = ({ panels }: Backed, { cutter }: Shop): readonly Panel[] => {
  const onBed = panels.filter((panel) => goesOnBed(panel, cutter))
  return onBed.length > 0 ? onBed : panels
}

/** Panels to cut the plates of all these stars from. */
const panelsFor = (stars: readonly Backed[], shop: Shop): readonly Panel[] => {
  const each = stars.map((star) => panelsOf(star, shop))
  return shop.panels.filter((panel) => each.every((panels) => panels.includes(panel)))
}

/** Stars whose plates are equally thick, as many together as may be cut from one panel. */
const groupsOf = (stars: readonly Backed[], shop: Shop): Backed[][] => {
  const choices = new Map(stars.map((star) => [star, panelsOf(star, shop).length]))
  const groups: Backed[][] = []
  // A star that few panels hold has the first choice.
  for (const star of stars.toSorted((a, b) => (choices.get(a) ?? 0) - (choices.get(b) ?? 0))) {
    if (choices.get(star) === 0) continue
    const joined = groups.find(
      (group) =>
        group.every((each) => sameThickness(each, star)) && panelsFor([...group, star], shop).length > 0,
    )
    if (joined) joined.push(star)
    else groups.push([star])
  }
  const inOrder = groups.map((group) => stars.filter((star) => group.includes(star)))
  return inOrder.toSorted(([a], [b]) => (a && b ? stars.indexOf(a) - stars.indexOf(b) : 0))
}

/** One that tells no thickness goes with any. */
const sameThickness = ({ plateThickness: a }: Backed, { plateThickness: b }: Backed): boolean =>
  a === undefined || b === undefined || Math.abs(a - b) <= SHOP

interface Nested {
  readonly filled: readonly FilledPanel[]
  readonly use: SharedPanels
  readonly cost: Cost
  readonly holdsAll: boolean
  readonly stopped: boolean
}

/** Of so many panels: what is paid, and their area. One without a price is the maker's already and costs nothing. */
interface Cost {
  readonly money: number
  /** In mm². */
  readonly area: number
}

const costOf = ({ price = 0, length, width }: Panel, count: number): Cost => ({
  money: count * price,
  area: count * length * width,
})

/** Of two that cost alike the one of less area is the cheaper. */
const isCheaper = (one: Cost, other: Cost): boolean =>
  one.money === other.money ? one.area < other.area : one.money < other.money

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
