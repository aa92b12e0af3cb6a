import { describe, expect, test } from 'vitest'
import type { OrderInput } from '../../src/order/parse.js'
import { JIG_STOCK } from './jig-stock.js'
import { type AskedOrder, type AskedStar, orderOf } from './order-of.js'

const onlyStarOf = (input: OrderInput): AskedStar => {
  const [star, ...others] = orderOf(input).stars
  if (!star || others.length > 0) throw new Error('the order has not just one star')
  return star
}

const JETTY_BLOCK = `
# for the stall by the boat sheds
title: Winter fair by the lake
units: mm
nearest: 1/16
shop:
  saw:
    limit: 50°
    kerf: 2,4
    reads-to: 0.25
    detents: [0, 15, "22,5", 45 deg]
    crosscut: 30 cm
  boards:
    - width: 70
      thickness: 19
      length: 2.4 m
      price: 6.80
      count: 12
      defects:
        - from: 400
          to: 46 cm
  panels:
    - length: 1500
      width: 750 mm
      thickness: 4
      price: 24
      edge: 15
  cutter:
    kind: laser
    kerf: 0.2
    bit: 1/8 in
    dxf: r2000
  paper:
    size: a3
    margin: 8
    overlap: 12
  end-allowance: 20
stars:
  - name: Jetty
    quantity: 6
    points: 5
    tip-angle: 45
    board-width: 70
    chamfer: 3
    thickness: 19
    backing:
      shape: polygon
      inset: 1/2 in
      thickness: 4
  - name: Straight line
    regular: 5 / 2
    across: 300
`

const JETTY_FLOW = `
title: Winter fair by the lake
units: mm
nearest: 1/16
shop:
  saw: { limit: 50, kerf: 2.4 mm, reads-to: 0.25, detents: [0, 15, 22.5, 45], crosscut: 300 }
  boards: [{ width: 7 cm, thickness: 19, length: 2400, price: 6.8, count: 12, defects: [{ from: 400, to: 460 }] }]
  panels: [{ length: 1.5 m, width: 750, thickness: 4, price: 24, edge: 15 }]
  cutter: { kind: laser, kerf: 0.2, bit: 3.175, dxf: r2000 }
  paper: { size: A3, margin: 8, overlap: 12 }
  end-allowance: 2 cm
stars:
  - { name: Jetty, quantity: "6", points: "5", tip-angle: 45°, board-width: 70 mm, chamfer: 3, thickness: 19,
      backing: { shape: polygon, inset: 12.7, thickness: 4 } }
  - { name: " Straight line ", regular: 5/2, across: 300 }
`

const JETTY_JSON = {
  title: 'Winter fair by the lake',
  units: 'mm',
  nearest: '1/16',
  shop: {
    saw: { limit: 50, kerf: 2.4, 'reads-to': 0.25, detents: [0, 15, 22.5, 45], crosscut: 300 },
    boards: [
      { width: 70, thickness: 19, length: 2400, price: 6.8, count: 12, defects: [{ from: 400, to: 460 }] },
    ],
    panels: [{ length: 1500, width: 750, thickness: 4, price: 24, edge: 15 }],
    cutter: { kind: 'laser', kerf: 0.2, bit: 3.175, dxf: 'r2000' },
    paper: { size: 'A3', margin: 8, overlap: 12 },
    'end-allowance': 20,
  },
  stars: [
    {
      name: 'Jetty',
      quantity: 6,
      points: 5,
      'tip-angle': 45,
      'board-width': 70,
      chamfer: 3,
      thickness: 19,
      backing: { shape: 'polygon', inset: 12.7, thickness: 4 },
    },
    { name: 'Straight line', regular: '5/2', across: 300 },
  ],
}

const JETTY_ORDER = {
  title: 'Winter fair by the lake',
  lengths: { units: 'mm', nearest: 16 },
  jigs: { names: ['blank-stop', 'arm-cradle', 'angle-gauge'], asked: false },
  shop: {
    saw: { limit: 50, kerf: 2.4, readsTo: 0.25, detents: [0, 15, 22.5, 45], crosscut: 300 },
    boards: [
      { width: 70, thickness: 19, length: 2400, price: 6.8, count: 12, defects: [{ from: 400, to: 460 }] },
    ],
    panels: [{ length: 1500, width: 750, thickness: 4, price: 24, edge: 15 }],
    cutter: { kind: 'laser', kerf: 0.2, bit: 3.175, dxf: 'r2000' },
    paper: { sheet: { size: 'A3' }, margin: 8, overlap: 12 },
    endAllowance: 20,
    jigStock: JIG_STOCK,
  },
  stars: [
    {
      name: 'Jetty',
      fileName: 'jetty',
      quantity: 6,
      points: 5,
      shape: { by: 'tip-angle', tipAngle: 45 },
      size: { by: 'board-width', length: 70 },
      chamfer: 3,
      thickness: 19,
      backing: { shape: 'polygon', inset: 12.7, thickness: 4 },
    },
    {
      name: 'Straight line',
      fileName: 'straight-line',
      quantity: 1,
      points: 5,
      shape: { by: 'regular', step: 2 },
      size: { by: 'across', length: 300 },
    },
  ],
  assumed: [],
  overridden: [],
}

/** 12.7 and 1/2 in are one length but for the last bit. */
const rounded = (order: AskedOrder): unknown =>
  JSON.parse(JSON.stringify(order), (_, value) =>
    typeof value === 'number' ? Number(value.toFixed(9)) : value,
  )

describe('one order, written in different ways, is one order:', () => {
  test.each([
    ['YAML in blocks', JETTY_BLOCK],
    ['YAML with Windows line ends and a byte order mark', `\ufeff${JETTY_BLOCK.replaceAll('\n', '\r\n')}`],
    ['YAML between braces', JETTY_FLOW],
    ['JSON on one line', JSON.stringify(JETTY_JSON)],
    ['JSON on many lines', JSON.stringify(JETTY_JSON, null, 2)],
  ])('%s', (_, text) => {
    expect(rounded(orderOf({ text }))).toEqual(JETTY_ORDER)
  })
})

const MINIMAL_STAR = {
  name: 'Star',
  fileName: 'star',
  quantity: 1,
  points: 5,
  shape: { by: 'tip-angle', tipAngle: 45 },
}

describe('what an order leaves open', () => {
  test('in millimetres', () => {
    expect(orderOf({ text: 'stars: [{ points: 5, tip-angle: 45, board-width: 70 }]' })).toEqual({
      title: 'Star',
      lengths: { units: 'mm', nearest: 32 },
      jigs: { names: ['blank-stop', 'arm-cradle', 'angle-gauge'], asked: false },
      shop: {
        saw: { limit: 45, kerf: (3 / 32) * 25.4, readsTo: 0.5, detents: [] },
        boards: [],
        panels: [],
        cutter: { kind: 'hand', dxf: 'r12', kerf: 0.2, bit: 3.175 },
        paper: { sheet: { size: 'A4' }, margin: 10, overlap: 10 },
        endAllowance: 0,
        jigStock: JIG_STOCK,
      },
      stars: [{ ...MINIMAL_STAR, size: { by: 'board-width', length: 70 } }],
      assumed: [
        'the saw stops at 45° (saw-limit)',
        'the blade removes 2.4 mm (kerf)',
        'the scale can be set to 0.5° (reads-to)',
      ],
      overridden: [],
    })
  })

  test('in inches', () => {
    const text = `
units: in
shop: { saw: { limit: 50 }, boards: [{ width: 3.5, length: 96 }], panels: [{ length: 48, width: 24 }], paper: {} }
stars: [{ points: 5, tip-angle: 45, tip-edge: 5, backing: {} }]`
    expect(orderOf({ text })).toEqual({
      title: 'Star',
      lengths: { units: 'in', nearest: 32 },
      jigs: { names: ['blank-stop', 'arm-cradle', 'angle-gauge'], asked: false },
      shop: {
        saw: { limit: 50, kerf: (3 / 32) * 25.4, readsTo: 0.5, detents: [] },
        boards: [{ width: 3.5 * 25.4, length: 96 * 25.4, defects: [] }],
        panels: [{ length: 48 * 25.4, width: 24 * 25.4, edge: 10 }],
        cutter: { kind: 'hand', dxf: 'r12', kerf: 0.2, bit: 3.175 },
        paper: { sheet: { size: 'Letter' }, margin: 10, overlap: 10 },
        endAllowance: 0,
        jigStock: JIG_STOCK,
      },
      stars: [
        {
          ...MINIMAL_STAR,
          size: { by: 'tip-edge', length: 5 * 25.4 },
          backing: { shape: 'star', inset: 12 },
        },
      ],
      assumed: [
        'the blade removes 3/32 in (kerf)',
        'the scale can be set to 0.5° (reads-to)',
        'the backing stays 15/32 in inside the star (inset)',
      ],
      overridden: [],
    })
  })

  test('stars without a name are counted, one alone is just a star', () => {
    const star = '{ regular: 5/2, across: 300 }'
    const names = (text: string) => orderOf({ text }).stars.map(({ name, fileName }) => [name, fileName])
    expect(names(`stars: [${star}]`)).toEqual([['Star', 'star']])
    expect(names(`stars: [${star}, { name: Mill, regular: 6/2, radius: 150 }, ${star}]`)).toEqual([
      ['Star 1', 'star-1'],
      ['Mill', 'mill'],
      ['Star 3', 'star-3'],
    ])
  })
})

test.each([
  ['board-width: 3 1/2', 'board-width', 3.5],
  ['board-width: 3-1/2', 'board-width', 3.5],
  ['across: 12', 'across', 12],
  ['height: "½"', 'height', 0.5],
  ['radius: 6.25', 'radius', 6.25],
  ['tip-edge: 4 7/8 in', 'tip-edge', 4.875],
  ['across: 2 ft', 'across', 24],
  [`across: 1' 2 3/8"`, 'across', 14.375],
])('in an inch order, %s is %s of %f inches', (written, by, inches) => {
  const { size } = onlyStarOf({ text: `units: in\nstars:\n  - regular: 5/2\n    ${written}` })
  expect(size.by).toBe(by)
  expect(size.length).toBeCloseTo(inches * 25.4, 9)
})

test('in an inch order, a length with its unit keeps it', () => {
  const { size } = onlyStarOf({ text: 'units: in\nstars: [{ regular: 5/2, across: 300 mm }]' })
  expect(size.length).toBe(300)
})

test('a price with a decimal comma', () => {
  const board = ['shop:', '  boards:', '    - width: 70', '      length: 2400', '      price: 6,80']
  const text = [...board, 'stars: [{ regular: 5/2, across: 300 }]'].join('\n')
  expect(orderOf({ text }).shop.boards).toMatchObject([{ price: 6.8 }])
})

test.each([
  ['0,125 m', 125],
  ['0,250', 0.25],
  ['12,5', 12.5],
])('a decimal comma that cannot mean thousands: %s is %f mm', (written, length) => {
  const text = `stars:\n  - { regular: 5/2, across: 20 m, chamfer: 40, backing: { inset: "${written}" } }`
  expect(onlyStarOf({ text }).backing).toMatchObject({ inset: length })
})

test.each([
  ['A4', { size: 'A4' }],
  ['a0', { size: 'A0' }],
  ['letter', { size: 'Letter' }],
  ['Legal', { size: 'Legal' }],
  ['tabloid', { size: 'Tabloid' }],
  ['ansi-d', { size: 'ANSI-D' }],
])('paper of size %s', (size, sheet) => {
  const text = `shop: { paper: { size: ${size} } }\nstars: [{ regular: 5/2, across: 300 }]`
  expect(orderOf({ text }).shop.paper.sheet).toEqual(sheet)
})

test('paper from a roll', () => {
  const text = 'shop: { paper: { roll: 610 mm } }\nstars: [{ regular: 5/2, across: 300 }]'
  expect(orderOf({ text }).shop.paper.sheet).toEqual({ roll: 610, longest: 5080 })
})

test.each([
  ['5/2', 5, 2],
  ['6/2', 6, 2],
  ['8/3', 8, 3],
  ['24/11', 24, 11],
  ['7 / 3', 7, 3],
])('regular: %s has %i points and joins every %i-th', (regular, points, step) => {
  const star = onlyStarOf({ text: `stars: [{ regular: "${regular}", across: 300 }]` })
  expect(star).toMatchObject({ points, shape: { by: 'regular', step } })
})

test.each([
  ['Jetty', 'jetty'],
  ['Bakery window', 'bakery-window'],
  ['Café by the lake', 'cafe-by-the-lake'],
  ['Große Äpfel', 'grosse-apfel'],
  ['Ærøskøbing', 'aeroskobing'],
  ['No. 3 (left) + right', 'no-3-left-right'],
  ["St. Mary's #2", 'st-mary-s-2'],
  ['a'.repeat(60), 'a'.repeat(60)],
  // ICAO Doc 9303, part 3, section 6 (Latin and Cyrillic), ISO 843 type 2 (Greek), BGN/PCGN 1981 (Armenian), Georgia's
  // national system of 2002: from memory.
  ['Łódź', 'lodz'],
  ['Œuvre', 'oeuvre'],
  ['Þingvellir', 'thingvellir'],
  ['Избушка у озера', 'izbushka-u-ozera'],
  ['Щука', 'shchuka'],
  ['Ґанок', 'ganok'],
  ['Љубав', 'ljubav'],
  ['Қазақ', 'qazaq'],
  ['Λιμνοθάλασσα', 'limnothalassa'],
  ['Ψαράς', 'psaras'],
  ['Սևան', 'sevan'],
  ['წყალი', 'tsqali'],
  ['Mill ½', 'mill-1-2'],
  ['Щ'.repeat(60), 'shch'.repeat(15)],
  ['ʘ ǂ', 'star-1'],
  // Names that Windows keeps for devices (Microsoft, Naming Files, Paths, and Namespaces; from memory).
  ['CON', 'con-star'],
  ['com1', 'com1-star'],
  ['Con. 1', 'con-1'],
])('the files of %s begin with %s', (name, fileName) => {
  const star = onlyStarOf({ text: `stars: [{ name: "${name}", regular: 5/2, across: 300 }]` })
  expect(star).toMatchObject({ name, fileName })
})
