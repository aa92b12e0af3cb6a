import { expect, test } from 'vitest'
import { planPanels } from '../../src/panels/plan-panels.js'
import { planOf } from '../orders.js'

const THIN = { length: 1200, width: 600, thickness: 3, price: 20 }
const THIN_TOO = { length: 1000, width: 600, thickness: 3.05, price: 15 }
const THICK = { length: 1200, width: 600, thickness: 6, price: 5 }
const UNTOLD = { length: 1200, width: 600, price: 1 }
const SMALL = { length: 100, width: 100, thickness: 9, price: 1 }

/** Which panels are bought, by price, and how thick the plate is. */
const bought = (panels: readonly object[], backing: object = {}) => {
  const star = {
    points: 5,
    'tip-angle': 45,
    'board-width': 70,
    backing: { shape: 'star', inset: 9, ...backing },
  }
  const plan = planOf(JSON.stringify({ shop: { panels }, stars: [star] }))
  const { panels: filled } = planPanels(plan)
  return [plan.stars[0]?.plateThickness, ...filled.map(({ panel }) => panel.price)]
}

test.each<[what: string, panels: readonly object[], expected: readonly unknown[], backing?: object]>([
  ['the first that holds it decides, though another is cheaper', [THIN, THICK], [3, 20]],
  ['whichever comes first', [THICK, THIN], [6, 5]],
  ['one that does not hold it decides nothing', [SMALL, THIN, THICK], [3, 20]],
  ['of those so thick the cheapest is taken', [THIN, THICK, THIN_TOO], [3, 15]],
  ['one that tells no thickness counts as so thick', [UNTOLD, THICK, THIN], [6, 1]],
  ['the order\u2019s own thickness goes before', [THIN, THICK], [6, 5], { thickness: 6 }],
])('a backing has one thickness: %s', (_, panels, expected, backing) => {
  expect(bought(panels, backing)).toEqual(expected)
})
