import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ORDER_FLAGS } from '../../src/order/flags.js'
import { type OrderInput, parseOrder } from '../../src/order/parse.js'
import { planOrder } from '../../src/plan/plan.js'

// Whatever is written, the answer is an order or a refusal that says something; an order gives a plan or a refusal.

const answered = (input: OrderInput): 'refused' | 'planned' | 'not planned' => {
  const order = parseOrder(input)
  if (!order.ok) {
    expect(order.problems.length).toBeGreaterThan(0)
    return 'refused'
  }
  const plan = planOrder(order.value)
  if (plan.ok) {
    const numbers = JSON.stringify(plan.value, (_, value) =>
      typeof value === 'number' && !Number.isFinite(value) ? 'NOT FINITE' : value,
    )
    expect(numbers).not.toContain('NOT FINITE')
    return 'planned'
  }
  expect(plan.problems.length).toBeGreaterThan(0)
  return 'not planned'
}

const oneOf = (...values: readonly unknown[]): fc.Arbitrary<unknown> => fc.constantFrom(...values)
const strange = oneOf(
  null,
  true,
  false,
  [],
  [[]],
  [1],
  {},
  { a: 1 },
  '',
  ' ',
  '5',
  -1,
  -0,
  0,
  1e308,
  '½',
  '0x5',
  '1e5',
)
const mostly = (...usual: readonly unknown[]): fc.Arbitrary<unknown> =>
  fc.oneof({ weight: 150, arbitrary: oneOf(...usual) }, { weight: 1, arbitrary: strange })

const group = (keys: Record<string, fc.Arbitrary<unknown>>, needed: string[] = []): fc.Arbitrary<unknown> =>
  fc.oneof(
    { weight: 150, arbitrary: fc.record(keys, { requiredKeys: needed }) },
    { weight: 1, arbitrary: strange },
  )
const list = (entry: fc.Arbitrary<unknown>, least = 0): fc.Arbitrary<unknown> =>
  fc.oneof(
    { weight: 150, arbitrary: fc.array(entry, { minLength: least, maxLength: 3 }) },
    { weight: 1, arbitrary: strange },
  )

const angle = mostly(45, '22,5°', 30, 60, '54 deg', 10)
const count = mostly(1, 2, 5, '7', 24)
const thickness = mostly('19 mm', '3/4 in', '60 mm')
const wood = group({
  species: mostly('western larch', 'white oak'),
  rings: mostly('flat', 'quarter'),
  density: mostly('590 kg/m³'),
})
const air = fc.oneof(
  group({ humidity: mostly(30, '60 %'), temperature: mostly('20 °C', '68 °F') }, ['humidity']),
  group({ moisture: mostly(8, '11,5 %') }, ['moisture']),
)
const wall = group({ winter: air, summer: air })
const board = {
  width: mostly('70 mm', '3 1/2 in', '300 mm'),
  thickness,
  length: mostly('2.4 m', '8 ft', '900 mm'),
  price: count,
  count,
  wood,
  defects: list(group({ from: mostly('0 mm', '200 mm'), to: mostly('260 mm', '10 1/2 in') }, ['from', 'to'])),
}
const shop = group({
  saw: group({
    limit: mostly(45, 50, 60, 10),
    kerf: mostly('2.4 mm', '3/32 in'),
    'reads-to': mostly(0.5, 0.1),
    detents: list(mostly(0, 15, 22.5, '31,6°')),
    crosscut: mostly('200 mm', '12 in'),
  }),
  boards: list(group(board, ['width', 'length'])),
  panels: list(
    group({ length: board.length, width: board.length, thickness, price: count, edge: mostly('10 mm') }, [
      'length',
      'width',
    ]),
  ),
  cutter: group({ kind: mostly('laser', 'router', 'hand'), kerf: mostly('0.2 mm'), bit: mostly('1/8 in') }),
  paper: group({ size: mostly('A4', 'letter'), margin: mostly('10 mm'), overlap: mostly('10 mm') }),
  'end-allowance': mostly('0 mm', '1 in'),
  wood,
  glue: group({ clamp: mostly('30 min'), cures: mostly('24 h') }),
  finish: group({ coverage: mostly('12 m²/l', '400 ft²/gal'), coats: count, dries: mostly('6 h') }),
  sound: mostly('arm', 'blank'),
  'rip-kerf': mostly('3 mm', '1/8 in'),
  'panel-seed': count,
})

const size = mostly('70 mm', '3 1/2 in', '300 mm', '1 ft', '20 m', '6 mm')
const star = fc
  .tuple(
    fc.oneof(
      fc.record({ points: mostly(3, 5, '7', 24), 'tip-angle': angle }),
      fc.record({ points: mostly(3, 5, '7', 24), slenderest: mostly(true) }),
      fc.record({ regular: mostly('5/2', '6/2', '24/11', '24/2') }),
    ),
    fc.oneof(
      ...['board-width', 'across', 'height', 'radius', 'tip-edge'].map((key) => fc.record({ [key]: size })),
    ),
    group({
      quantity: count,
      chamfer: mostly('3 mm', '18 mm'),
      thickness,
      hardware: count,
      backing: group({ shape: mostly('star', 'polygon', 'disc'), inset: mostly('6 mm', '1/2 in', '90 mm') }),
      wall,
    }),
  )
  .map(([shape, measure, rest]) => (typeof rest === 'object' ? { ...shape, ...measure, ...rest } : rest))

const order = fc.record(
  {
    title: mostly('Winter fair'),
    units: mostly('mm', 'in'),
    nearest: mostly('1/8', '1/64'),
    shop,
    climate: group({ workshop: air, wall }),
    stars: list(star, 1),
  },
  { requiredKeys: ['stars'] },
)

test('any order', () => {
  const answers = { refused: 0, planned: 0, 'not planned': 0 }
  fc.assert(
    fc.property(order, (written) => {
      answers[answered({ text: JSON.stringify(written) })]++
    }),
    { seed: 6, numRuns: 1000 },
  )
  // The orders are strange enough, and not too strange, to get everywhere.
  expect(Math.min(...Object.values(answers))).toBeGreaterThan(100)
}, 60_000)

test('any flags over any order', () => {
  const typed = fc.constantFrom(
    '5',
    '45',
    '70mm',
    '5/2',
    '3 1/2 in',
    '',
    '-1',
    'A4',
    'mm',
    'Jetty',
    '0, 22.5,,x',
  )
  const flags = fc.dictionary(fc.constantFrom(...ORDER_FLAGS.map(({ name }) => name)), typed, { maxKeys: 5 })
  fc.assert(
    fc.property(order, flags, fc.constantFrom('Jetty', 'Mill', 'star-1', ''), (written, given, name) => {
      answered({ text: JSON.stringify(written), flags: given, star: name })
      answered({ text: JSON.stringify(written), flags: given })
      answered({ flags: given })
    }),
    { seed: 7, numRuns: 250 },
  )
})

test('any JSON at all', () => {
  fc.assert(
    fc.property(fc.json(), (text) => {
      answered({ text })
    }),
    { seed: 8, numRuns: 500 },
  )
})

test('any text at all', () => {
  const marks = fc.constantFrom(...' \n\t-:?[]{},&*!|>%@`#\'"abc05./~<', 'stars:', '\n  - ', 'points: 5')
  fc.assert(
    fc.property(fc.array(marks, { maxLength: 40 }), (parts) => {
      answered({ text: parts.join('') })
    }),
    { seed: 9, numRuns: 1500 },
  )
})
