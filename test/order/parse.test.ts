import { describe, expect, test } from 'vitest'
import type { OrderInput } from '../../src/order/parse.js'
import { JETTY_BLOCK, JETTY_FLOW, JETTY_JSON, JETTY_ORDER } from './jetty-order.js'
import { type AskedOrder, type AskedStar, orderOf } from './order-of.js'

const onlyStarOf = (input: OrderInput): AskedStar => {
  const [star, ...others] = orderOf(input).stars
  if (!star || others.length > 0) throw new Error('the order has not just one star')
  return star
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
