import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ORDER_FLAGS } from '../../src/order/flags.js'
import { parseOrder } from '../../src/order/parse.js'
import { planOrder } from '../../src/plan/plan.js'

// Whatever is written, the answer is an order or a refusal that says something; an order gives a plan or a refusal.

const answered = (input: Parameters<typeof parseOrder>[0]): void => {
  const order = parseOrder(input)
  if (!order.ok) {
    expect(order.problems.length).toBeGreaterThan(0)
    return
  }
  const plan = planOrder(order.value)
  if (plan.ok) {
    const numbers = JSON.stringify(plan.value, (_, value) =>
      typeof value === 'number' && !Number.isFinite(value) ? 'NOT FINITE' : value,
    )
    expect(numbers).not.toContain('NOT FINITE')
  } else expect(plan.problems.length).toBeGreaterThan(0)
}

const oneOf = fc.constantFrom<unknown>
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
const mostly = (...usual: unknown[]): fc.Arbitrary<unknown> =>
  fc.oneof({ weight: 12, arbitrary: oneOf(...usual) }, { weight: 1, arbitrary: strange })

const group = (keys: Record<string, fc.Arbitrary<unknown>>): fc.Arbitrary<unknown> =>
  fc.oneof(
    { weight: 20, arbitrary: fc.record(keys, { requiredKeys: [] }) },
    { weight: 1, arbitrary: strange },
  )
const list = (entry: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc.oneof({ weight: 20, arbitrary: fc.array(entry, { maxLength: 3 }) }, { weight: 1, arbitrary: strange })

const length = mostly(70, '70 mm', '3 1/2 in', 300, 5, 20_000, '1 ft')
const angle = mostly(45, '22,5°', 0.001, 60, 107.99, 164.9, 179)
const count = mostly(1, 2, 5, '7', 24)

const shop = group({
  saw: group({
    limit: angle,
    kerf: mostly(2.4, 0.1, 10),
    'reads-to': mostly(0.5, 0.001),
    detents: list(angle),
    crosscut: length,
  }),
  boards: list(
    group({
      width: length,
      length,
      thickness: length,
      price: count,
      count,
      defects: list(group({ from: length, to: length })),
    }),
  ),
  panels: list(group({ length, width: length, thickness: length, price: count, edge: length })),
  cutter: group({
    kind: mostly('laser', 'router', 'hand'),
    kerf: mostly(0.2),
    bit: mostly(3),
    dxf: mostly('r12', 'r2000'),
  }),
  paper: group({ size: mostly('A4', 'letter'), roll: mostly(610), margin: mostly(10), overlap: mostly(10) }),
  'end-allowance': length,
})

/** Shape and size come whole most of the time, so that many orders get as far as the plan. */
const star = fc
  .tuple(
    fc.oneof(
      fc.record({ points: count, 'tip-angle': angle }),
      fc.record({ points: count, slenderest: mostly(true) }),
      fc.record({ regular: mostly('5/2', '6/2', '24/11', '24/2') }),
    ),
    fc.oneof(
      ...['board-width', 'across', 'height', 'radius', 'tip-edge'].map((key) => fc.record({ [key]: length })),
    ),
    group({
      name: mostly('Jetty', 'Mill', 'Boathouse', 'Café'),
      quantity: count,
      chamfer: mostly(3, 0.2, 50),
      thickness: mostly(19, 200),
      backing: group({ shape: mostly('star', 'polygon', 'disc'), inset: length, thickness: mostly(4) }),
    }),
  )
  .map(([shape, size, rest]) => (typeof rest === 'object' ? { ...shape, ...size, ...rest } : rest))

const order = fc.record(
  {
    title: mostly('Winter fair'),
    units: mostly('mm', 'in'),
    nearest: mostly('1/8', '1/64'),
    shop,
    stars: list(star),
  },
  { requiredKeys: ['stars'] },
)

test('any order', () => {
  fc.assert(
    fc.property(order, (written) => answered({ text: JSON.stringify(written) })),
    { seed: 6, numRuns: 3000 },
  )
})

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
    { seed: 7, numRuns: 1500 },
  )
})

test('any JSON at all', () => {
  fc.assert(
    fc.property(fc.json(), (text) => answered({ text })),
    { seed: 8, numRuns: 1500 },
  )
})

test('any text at all', () => {
  const marks = fc.constantFrom(...' \n\t-:?[]{},&*!|>%@`#\'"abc05./~<', 'stars:', '\n  - ', 'points: 5')
  fc.assert(
    fc.property(fc.array(marks, { maxLength: 40 }), (parts) => answered({ text: parts.join('') })),
    { seed: 9, numRuns: 3000 },
  )
})
