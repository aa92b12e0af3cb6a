import { describe, expect, test } from 'vitest'
import { parseOrder } from '../../src/order/parse.js'
import { showProblem } from '../../src/order/problem.js'
import { planOrder } from '../../src/plan/plan.js'

// A person who follows the advice must not be refused again: every limit that is told is tried.

const told = (text: string): string => {
  const order = parseOrder({ text })
  const plan = order.ok ? planOrder(order.value) : order
  return plan.ok ? '' : plan.problems.map(showProblem).join('\n')
}

/** The limits in `from 5 mm to 200 mm` or `up to 12.5 mm`. */
const limitsIn = (message: string): string[] => {
  const found = /from ([\d. /]+ (?:mm|in)) to ([\d. /]+ (?:mm|in))|up to ([\d. /]+ (?:mm|in))/.exec(message)
  return found ? found.slice(1).filter((limit) => limit !== undefined) : []
}

type Written = (value: string) => string

const LENGTHS: readonly (readonly [key: string, written: Written])[] = [
  ['kerf', (value) => `shop: { saw: { kerf: ${value} } }\nstars: [{ regular: 5/2, across: 300 mm }]`],
  ['crosscut', (value) => `shop: { saw: { crosscut: ${value} } }\nstars: [{ regular: 5/2, across: 300 mm }]`],
  ['margin', (value) => `shop: { paper: { margin: ${value} } }\nstars: [{ regular: 5/2, across: 300 mm }]`],
  ['overlap', (value) => `shop: { paper: { overlap: ${value} } }\nstars: [{ regular: 5/2, across: 300 mm }]`],
  ['roll', (value) => `shop: { paper: { roll: ${value} } }\nstars: [{ regular: 5/2, across: 300 mm }]`],
  ['bit', (value) => `shop: { cutter: { bit: ${value} } }\nstars: [{ regular: 5/2, across: 300 mm }]`],
  ['thickness', (value) => `stars: [{ regular: 5/2, across: 300 mm, thickness: ${value} }]`],
  [
    'board width',
    (value) =>
      `shop: { boards: [{ width: ${value}, length: 2 m }] }\nstars: [{ regular: 5/2, across: 300 mm }]`,
  ],
  [
    'board length',
    (value) =>
      `shop: { boards: [{ width: 70 mm, length: ${value} }] }\nstars: [{ regular: 5/2, across: 300 mm }]`,
  ],
]

describe.each(['mm', 'in'])('in an order in %s, the limits told are allowed:', (units) => {
  test.each(LENGTHS)('%s', (_, written) => {
    const limits = limitsIn(told(`units: ${units}\n${written('90 m')}`))
    expect(limits).toHaveLength(2)
    for (const limit of limits) expect(told(`units: ${units}\n${written(limit)}`), limit).toBe('')
  })

  test.each(['star', 'polygon', 'disc'])('inset of a %s', (shape) => {
    for (let width = 60; width <= 90; width++) {
      const written: Written = (inset) =>
        `units: ${units}\nstars: [{ points: 5, tip-angle: 45, board-width: ${width} mm, backing: { shape: ${shape}, inset: ${inset} } }]`
      const [limit = 'no limit', ...others] = limitsIn(told(written('900 mm')))
      expect(others).toEqual([])
      expect(told(written(limit)), `${width} mm board`).toBe('')
    }
  })
})

test('a bare number that is taken for the other unit is allowed as it is told to be written', () => {
  const hinted = new Set<string>()
  for (const [key, written] of LENGTHS) {
    for (const units of ['mm', 'in']) {
      for (const bare of ['1', '2.4', '12', '24', '70', '300', '610', '2400']) {
        const advised = /, write ([\d.]+ (?:mm|in)), or units: (mm|in) for the whole order\./.exec(
          told(`units: ${units}\n${written(bare)}`),
        )
        if (!advised) continue
        hinted.add(key)
        const [, length = '', other = ''] = advised
        expect(told(`units: ${units}\n${written(length)}`), `${key}: ${length}`).toBe('')
        expect(told(`units: ${other}\n${written(bare)}`), `${key}: ${bare} in ${other}`).toBe('')
      }
    }
  }
  expect([...hinted]).toEqual(LENGTHS.map(([key]) => key))
})

test('just under the tip angle that is told, there is a star', () => {
  for (let points = 3; points <= 24; points++) {
    const written = (angle: number): string =>
      `shop: { saw: { limit: 75 } }\nstars: [{ points: ${points}, tip-angle: ${angle}, tip-edge: 300 mm }]`
    const limit = Number(/needs less than ([\d.]+)°/.exec(told(written(178)))?.[1])
    expect(limit, `${points} points`).toBeGreaterThan(0)
    expect(told(written(limit - 0.01)), `${points} points`).toBe('')
  }
})
