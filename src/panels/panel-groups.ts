import type { Panel, Shop } from '../order/order.js'
import { goesOnBed } from '../plan/plate-panels.js'
import { SHOP } from '../units/tolerance.js'
import type { Backed } from './panel-plan.js'

/** Panels to cut a star's plate from: those that go onto the bed, if one of them holds it. */
const panelsOf = ({ panels }: Backed, { cutter }: Shop): readonly Panel[] => {
  const onBed = panels.filter((panel) => goesOnBed(panel, cutter))
  return onBed.length > 0 ? onBed : panels
}

/** Panels to cut the plates of all these stars from. */
export const panelsFor = (stars: readonly Backed[], shop: Shop): readonly Panel[] => {
  const each = stars.map((star) => panelsOf(star, shop))
  return shop.panels.filter((panel) => each.every((panels) => panels.includes(panel)))
}

/** Stars whose plates are equally thick, as many together as may be cut from one panel. */
export const groupsOf = (stars: readonly Backed[], shop: Shop): Backed[][] => {
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

/**
 * The same stars where some of them have panels that do not serve all: those that have none such, and the others in
 * groups of their own. Empty where there is nothing to part.
 */
export const partedGroups = (stars: readonly Backed[], shop: Shop): Backed[][] => {
  const shared = panelsFor(stars, shop)
  const hasOthers = (star: Backed): boolean => panelsOf(star, shop).some((panel) => !shared.includes(panel))
  const [bound, free] = [stars.filter((star) => !hasOthers(star)), stars.filter(hasOthers)]
  return bound.length === 0 || free.length === 0 ? [] : [bound, ...groupsOf(free, shop)]
}
