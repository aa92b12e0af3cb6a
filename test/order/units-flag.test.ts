import { describe, expect, test } from 'vitest'
import { orderOf } from './order-of.js'

// A flag for units must not change what is cut: the lengths of the file stay what they were without the flag.

const IN_MM = `
shop:
  saw: { limit: 50, kerf: 2.4, reads-to: 0.5, detents: [0, 15, 22.5], crosscut: 300 }
  boards:
    - { width: 70, thickness: 19, length: 2400, price: 6, count: 3 }
    - width: "70,5"
      length: 2.4 m
      defects: [{ from: 400, to: 460 }, { from: "1200", to: 48 in }]
  panels: [{ length: 600, width: 400, thickness: 4, price: 14, edge: 15 }]
  cutter: { kind: router, kerf: 0.2, bit: 3 }
  paper: { roll: 610, margin: 8, overlap: 12 }
  end-allowance: 20
stars:
  - { name: Jetty, quantity: 6, points: 5, tip-angle: 45, board-width: 70, chamfer: 3, thickness: 19,
      backing: { shape: disc, inset: 9, thickness: 4 } }
  - { name: Mill, regular: 6/2, radius: 150 }`

const IN_INCHES = `
units: in
shop:
  saw: { kerf: 3/32, crosscut: 12 }
  boards:
    - width: 3 1/2
      thickness: ".75"
      length: 96
      defects: [{ from: 1-1/2, to: "2½" }, { from: "1,5", to: 2 1/4 in }]
  panels: [{ length: 48, width: 24, thickness: 1/4, edge: ½ }]
  cutter: { kerf: 1/128, bit: 1/8 }
  paper: { size: Letter, margin: 3/8, overlap: 1/2 }
  end-allowance: 1 1/4
stars:
  - { name: Jetty, points: 5, tip-angle: 45, board-width: 3-1/2, chamfer: ⅛, thickness: 3/4,
      backing: { inset: 1/2, thickness: 1/4 } }
  - { name: Mill, regular: 6/2, across: 1 ft }
  - { name: Weir, regular: 5/2, tip-edge: 120 mm }`

describe.each([
  ['a millimetre order', IN_MM, 'mm', 'in'],
  ['an inch order', IN_INCHES, 'in', 'mm'],
] as const)('%s', (_, text, units, others) => {
  test(`with --units ${others} keeps every length, and shows it in ${others}`, () => {
    const order = orderOf({ text, flags: { units: others } })
    const without = orderOf({ text })
    expect(order.shop).toEqual(without.shop)
    expect(order.stars).toEqual(without.stars)
    expect(order.lengths).toEqual({ ...without.lengths, units: others })
  })

  test(`with --units ${units} is read as without`, () => {
    const order = orderOf({ text, flags: { units } })
    expect({ ...order, overridden: [] }).toEqual(orderOf({ text }))
  })
})

test('a bare flag is read in the units of the flag, the file in its own', () => {
  const { shop, stars } = orderOf({
    text: IN_MM,
    star: 'Mill',
    flags: { units: 'in', radius: '6', kerf: '1/8' },
  })
  expect(stars).toMatchObject([{ size: { by: 'radius', length: 6 * 25.4 } }])
  expect(shop.saw.kerf).toBeCloseTo(25.4 / 8, 9)
  expect(shop.saw.crosscut).toBe(300)
  expect(shop.boards).toMatchObject([{ width: 70 }, { width: 70.5 }])
})

test('what a flag replaces is told with its unit', () => {
  const text = 'stars: [{ regular: 5/2, across: 300, chamfer: 3 }]'
  expect(orderOf({ text, flags: { units: 'in', across: '12' } }).overridden).toEqual([
    '--across 12 in (the order says 300)',
    '--units in (the order leaves it open)',
  ])
})

test('a group that is written once and meant twice keeps its lengths', () => {
  const text = `
stars:
  - { name: Jetty, regular: 5/2, across: 300, backing: &plate { shape: disc, inset: 9 } }
  - { name: Mill, regular: 6/2, across: 300, backing: *plate }`
  const backing = { shape: 'disc', inset: 9 }
  expect(orderOf({ text, flags: { units: 'in' } }).stars).toMatchObject([{ backing }, { backing }])
})
