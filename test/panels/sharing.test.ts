import { describe, expect, it } from 'vitest'
import { moved, turnedOutline } from '../../src/geometry/outline.js'
import { planPanels } from '../../src/panels/plan-panels.js'
import { radians } from '../../src/units/convert.js'
import { area } from '../geometry/jts.js'
import { planOf } from '../orders.js'

/** What is bought: `1 of 600: S1 S2`. */
const bought = (text: string): string[] =>
  planPanels(planOf(text)).uses.map(
    ({ count, panel, stars }) =>
      `${count} of ${panel.length}: ${stars.map(({ order }) => order.name).join(' ')}`,
  )

describe('stars that no one panel serves all', () => {
  const small = (name: string) =>
    `  - { name: ${name}, quantity: 2, points: 5, tip-angle: 50, across: 190, backing: { shape: star } }`
  it('share panels as far as one serves several', () => {
    const order = `shop:
  panels: [{ length: 600, width: 600, thickness: 4, price: 6 }, { length: 1220, width: 610, thickness: 4, price: 11 }]
  cutter: { kind: laser, bed: { width: 620, length: 620 } }
stars:
${small('S1')}
  - { name: Big, points: 5, tip-angle: 50, across: 650, backing: { shape: star } }
${small('S2')}
${small('S3')}
`
    expect(bought(order)).toEqual(['1 of 600: S1 S2 S3', '1 of 1220: Big'])
  })

  it('are parted again where the small ones come cheaper on panels of their own', () => {
    const order = (dear: number) => `shop:
  panels: [{ length: 600, width: 600, thickness: 4, price: 6 }, { length: 1220, width: 1220, thickness: 4, price: ${dear} }]
stars:
  - { name: Big, points: 5, tip-angle: 50, across: 650, backing: { shape: star } }
${small('S').replace('quantity: 2', 'quantity: 200')}
`
    expect(bought(order(100))).toEqual(['1 of 1220: Big', '9 of 600: S'])
    expect(bought(order(1))).toEqual(['2 of 1220: Big S'])
  })

  it('share one that tells no thickness, whichever of them tells its own', () => {
    const order = `shop: { panels: [{ length: 600, width: 600, price: 7 }] }
stars:
  - { name: A, points: 5, tip-angle: 50, across: 190, backing: { thickness: 4 } }
  - { name: B, points: 5, tip-angle: 50, across: 190, backing: { inset: 12 } }
`
    expect(bought(order)).toEqual(['1 of 600: A B'])
  })
})

describe('of panels that hold the plates', () => {
  const order = (panels: string) =>
    `shop: { panels: [${panels}] }\nstars: [{ name: A, quantity: 4, points: 5, tip-angle: 50, board-width: 90, backing: { shape: star } }]\n`
  it('one without a price is the maker’s already and costs nothing', () =>
    expect(bought(order('{ length: 1220, width: 610, price: 2.5 }, { length: 2440, width: 1830 }'))).toEqual([
      '1 of 2440: A',
    ]))

  it('the one of less area is taken where they cost alike', () =>
    expect(bought(order('{ length: 2440, width: 1220 }, { length: 1220, width: 610 }'))).toEqual([
      '1 of 1220: A',
    ]))
})

it('what a plate that goes on only turned leaves is for the smaller ones', () => {
  const order = `shop: { panels: [{ length: 517, width: 479, edge: 5, thickness: 4, price: 7 }] }
stars:
  - { name: A, points: 4, tip-angle: 30, height: 700, backing: { shape: star, inset: 12 } }
  - { name: S, quantity: 3, points: 5, tip-angle: 50, across: 130, backing: { shape: star, inset: 12 } }
`
  expect(bought(order)).toEqual(['1 of 517: A S'])
})

it.each([
  ['six points', 'points: 6, tip-angle: 60, across: 300, backing: { shape: star, inset: 0 }'],
  ['a disc', 'points: 5, tip-angle: 50, across: 300, backing: { shape: disc, inset: 12 }'],
])('a plate as large as the free part of its panel goes on: %s', (_, keys) => {
  const size = planOf(`stars: [{ ${keys} }]\n`).stars[0]?.backing
  if (!size) throw new Error('the star has a backing')
  const [length, width] = [size.across + 20, size.height + 20]
  const plan = planOf(
    `shop: { panels: [{ length: ${length.toFixed(6)}, width: ${width.toFixed(6)}, edge: 10 }] }\nstars: [{ ${keys} }]\n`,
  )
  expect(plan.stars[0]?.panels).toHaveLength(1)
  expect(planPanels(plan).unplaced).toEqual([])
})

it('a plate is laid that goes on a panel only when it is turned', () => {
  // A long, slender star of four points: its box is 607 mm square, a diagonal of it far less.
  const plan =
    planOf(`shop: { panels: [{ length: 600, width: 600, edge: 5, thickness: 4, density: 680 kg/m³ }] }
stars: [{ name: A, quantity: 2, points: 4, tip-angle: 30, height: 700, thickness: 18, backing: { shape: star, inset: 12 } }]
`)
  expect(plan.stars[0]?.warnings.map(({ code }) => code)).not.toContain('panel-too-small')
  expect(plan.stars[0]?.plateThickness).toBe(4)
  const { panels, unplaced } = planPanels(plan)
  expect(unplaced).toEqual([])
  const laid = panels.flatMap(({ plates, times }) => Array.from({ length: times }, () => plates).flat())
  expect(laid).toHaveLength(2)
  for (const { star, turn, at } of laid) {
    const box = area(moved(turnedOutline(star.backing.outline, radians(turn)), at)).getEnvelopeInternal()
    expect(Math.min(box.getMinX(), box.getMinY())).toBeGreaterThan(5 - 1e-6)
    expect(Math.max(box.getMaxX(), box.getMaxY())).toBeLessThan(595 + 1e-6)
  }
})
