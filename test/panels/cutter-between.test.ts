import { expect, it } from 'vitest'
import { moved, type Outline, turnedOutline } from '../../src/geometry/outline.js'
import { planPanels } from '../../src/panels/plan-panels.js'
import { radians } from '../../src/units/convert.js'
import { area, type Jts } from '../geometry/jts.js'
import { planOf } from '../orders.js'

/* What a beam or bit takes beside a plate, by JTS: it must leave the neighbours whole. */

const STARS = `
stars:
  - { name: A, quantity: 12, points: 5, tip-angle: 45, across: 300, backing: { shape: star, inset: 12 } }
  - { name: B, quantity: 9, regular: 5/2, across: 220, backing: { shape: star, inset: 6 } }
  - { name: C, quantity: 9, points: 7, tip-angle: 25, across: 260, backing: { shape: star, inset: 6 } }
  - { name: D, quantity: 5, points: 8, tip-angle: 50, across: 200, backing: { shape: disc, inset: 6 } }
  - { name: E, quantity: 5, regular: 6/2, across: 200, backing: { shape: polygon, inset: 6 } }
`

const CUTTERS = [
  { cutter: 'kind: router, bit: 3', gap: '', removed: 3 },
  { cutter: 'kind: router, bit: 6.35', gap: ', gap: 6.5', removed: 6.35 },
  { cutter: 'kind: laser, kerf: 0.3', gap: ', gap: 0.5', removed: 0.3 },
  { cutter: 'kind: laser, kerf: 5', gap: '', removed: 5 },
]

it.each(CUTTERS)('$cutter: leaves the neighbours of every plate whole', ({ cutter, gap, removed }) => {
  const { panels } = planPanels(
    planOf(
      `shop: { cutter: { ${cutter} }, panels: [{ length: 1220, width: 1220, edge: 12${gap} }] }\n${STARS}`,
    ),
  )
  let near = 0
  for (const { plates } of panels) {
    const laid = plates.map(({ star: { backing }, turn, at }) => {
      const there = (outline: Outline): Outline => moved(turnedOutline(outline, radians(turn)), at)
      return { wood: area(there(backing.outline)), line: area(there(backing.cut.outer)).getBoundary() }
    })
    laid.forEach(({ line }, index) => {
      const others = laid.filter((_, other) => other !== index)
      const nearest = Math.min(...others.map(({ wood }: { wood: Jts }) => line.distance(wood)))
      expect(nearest).toBeGreaterThan(removed / 2)
      if (nearest < removed / 2 + 2) near++
    })
  }
  expect(near).toBeGreaterThan(10)
})
