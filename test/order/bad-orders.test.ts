import { describe, expect, test } from 'vitest'
import { type OrderInput, parseOrder } from '../../src/order/parse.js'
import { showProblem } from '../../src/order/problem.js'
import { planOrder } from '../../src/plan/plan.js'
import { A_STAR, type BadOrder, TOO_DEEP } from './bad-orders/bad-order.js'
import { FILES } from './bad-orders/files.js'
import { FLAGS } from './bad-orders/flags.js'
import { JIGS } from './bad-orders/jigs.js'
import { KEYS } from './bad-orders/keys.js'
import { NAMES } from './bad-orders/names.js'
import { NUMBERS } from './bad-orders/numbers.js'
import { PLANS, PLANS_OF_FLAGS } from './bad-orders/plans.js'
import { PLATE_PLANS, PLATES } from './bad-orders/plates.js'
import { SHAPE_AND_SIZE } from './bad-orders/shape-and-size.js'
import { SHOP } from './bad-orders/shop.js'
import { WOOD } from './bad-orders/wood.js'

// Common practice, no published source: what a person is told is judged by reading it. The texts are written out in
// full, so that a change of wording is seen and read again.

const textOf = (lines: BadOrder[1]): string => (typeof lines === 'string' ? lines : lines.join('\n'))

/** What the reader tells of an order it refuses. */
const toldByReader = (input: OrderInput): string[] => {
  const order = parseOrder(input)
  return order.ok ? ['nothing: the order was read'] : order.problems.map(showProblem)
}

/** What the plan tells of an order that reads well. */
const toldByPlan = (input: OrderInput): string[] => {
  const order = parseOrder(input)
  if (!order.ok) return ['nothing: the reader refused the order']
  const plan = planOrder(order.value)
  return plan.ok ? ['nothing: the order was planned'] : plan.problems.map(showProblem)
}

describe.each([
  ['shape and size', SHAPE_AND_SIZE],
  ['numbers', NUMBERS],
  ['the shop', SHOP],
  ['jig stock', JIGS],
  ['wood, air and products', WOOD],
  ['backings and panels', PLATES],
  ['keys and groups', KEYS],
  ['files', FILES],
  ['names', NAMES],
])('%s:', (_, orders) => {
  test.each(orders)('%s', (_what, lines, told) => {
    expect(toldByReader({ text: textOf(lines) })).toEqual(told)
  })
})

describe('stars that cannot be made:', () => {
  test.each([...PLANS, ...PLATE_PLANS])('%s', (_, lines, told) => {
    expect(toldByPlan({ text: textOf(lines) })).toEqual(told)
  })

  test.each(PLANS_OF_FLAGS)('from flags: %s', (_, input, told) => {
    expect(toldByPlan(input)).toEqual(told)
  })
})

describe('flags:', () => {
  test.each(FLAGS)('%s', (_, input, told) => {
    expect(toldByReader(input)).toEqual(told)
  })
})

test('brackets nested behind closing ones in a comment are seen', () => {
  const text = `# ${']'.repeat(5000)}\nstars: ${'['.repeat(5000)}`
  expect(toldByReader({ text })).toEqual([TOO_DEEP])
})

describe("told at its place, in words that are the parser's, a guess or still to be improved:", () => {
  test.each([
    ['JSON with something after it', '{ "stars": [] } and more', 'order file, line 1'],
    [
      'a line out of step',
      ['stars:', '  - points: 5', '     tip-angle: 45', '    board-width: 70'],
      'order file, line 2',
    ],
    ['two documents', [A_STAR, '---', A_STAR], 'order file, line 2'],
    ['a key twice in JSON', ['{ "title": "Winter fair",', '"title": "Lantern walk" }'], 'order file, line 2'],
    ['a comma left out between braces', 'stars: [{ points: 5 tip-angle: 45 }]', 'order file, line 1'],
    [
      'a price with a comma that may mean thousands',
      ['shop:', '  boards:', '    - width: 70', '      length: 2400', '      price: 1,250', A_STAR],
      'shop.boards[0].price, line 5',
    ],
    [
      'a count with a comma that means thousands',
      ['shop: { boards: [{ width: 70, length: 2400, count: "1,000" }] }', A_STAR],
      'shop.boards[0].count, line 1',
    ],
    [
      'units in a star',
      ['stars:', '  - regular: 5/2', '    across: 300', '    units: in'],
      'stars[0].units, line 4',
    ],
    ['a saw without its shop', ['saw: { limit: 50 }', A_STAR], 'saw, line 1'],
    ['paper without its shop', ['paper: { size: A4 }', A_STAR], 'paper, line 1'],
    ['a size in a star', 'stars: [{ regular: 5/2, across: 300, size: 300 }]', 'stars[0].size, line 1'],
    ['tenths of an inch', ['nearest: 1/10', A_STAR], 'nearest, line 1'],
  ] as const)('%s', (_, lines, place) => {
    const told = toldByReader({ text: textOf(lines) })
    expect(told.filter((line) => !line.startsWith(`${place}: given `))).toEqual([])
    expect(told.length).toBeGreaterThan(0)
  })
})

/** Control characters, line breaks, direction marks and signs nobody sees (Unicode categories Cc, Cf, Cs, Zl, Zp). */
const HOSTILE = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u

test('every refusal says something, each on one line, with nothing in it that can act', () => {
  const inputs = [
    ...[SHAPE_AND_SIZE, NUMBERS, SHOP, WOOD, KEYS, FILES, NAMES]
      .flat()
      .map(([, lines]) => ({ text: textOf(lines) })),
    ...FLAGS.map(([, input]) => input),
  ]
  expect(inputs.length).toBeGreaterThan(75)
  for (const input of inputs) {
    const told = toldByReader(input)
    expect(told.length).toBeGreaterThan(0)
    for (const line of told) {
      expect(line).not.toMatch(HOSTILE)
      expect(line.length).toBeLessThan(600)
    }
  }
})

describe('hostile signs are never told raw, wherever they stand:', () => {
  const SIGNS = [
    '\u001b[31m',
    '\u202e',
    '\u2066',
    '\u061c',
    '\u200b',
    '\u0007',
    '\u009b',
    '\u2028',
    '\ufeff',
    '\u00ad',
  ]
  const PLACES: readonly (readonly [where: string, text: (sign: string) => string])[] = [
    ['a value in quotes', (sign) => `title: ${JSON.stringify(`a${sign}b`)}`],
    ['a raw value', (sign) => `title: a${sign}b`],
    ['a key', (sign) => `${JSON.stringify(`ti${sign}tle`)}: 1`],
    ['a raw key', (sign) => `ti${sign}tle: 1`],
    ['a tag', (sign) => `title: !a${sign}b c`],
    ['an escaped tag', (sign) => `title: !!a${encodeURIComponent(sign)}b c`],
    ['an alias', (sign) => `title: *a${sign}b`],
    ['an anchor twice', (sign) => `title: &a${sign} &b${sign} c`],
    ['a directive', (sign) => `%A${sign}B\n---\ntitle: a`],
    ['a version', (sign) => `%YAML 1.${sign}\n---\ntitle: a`],
    ['the head of a block', (sign) => `title: |${sign}\n  a`],
    [
      'a length that is told again as a limit',
      (sign) =>
        `stars: [{ regular: 5/2, across: 300, chamfer: 9, thickness: ${JSON.stringify(`5${sign}`)} }]`,
    ],
    [
      'a defect',
      (sign) =>
        `shop: { boards: [{ width: 70, length: 900, defects: [{ from: ${JSON.stringify(`9${sign}`)}, to: 5 }] }] }`,
    ],
    [
      'a name that is taken',
      (sign) => `stars: [{ name: ${JSON.stringify(`a${sign}`)} }, { name: ${JSON.stringify(`${sign}a`)} }]`,
    ],
  ]

  test.each(PLACES)('%s', (_, text) => {
    for (const sign of SIGNS) {
      const told = toldByReader({ text: text(sign) })
      expect(told.length).toBeGreaterThan(0)
      for (const line of told) expect(line).not.toMatch(HOSTILE)
    }
  })
})
