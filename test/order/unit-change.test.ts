import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { editedOrder } from '../../src/order/edit-text.js'
import { parseOrder } from '../../src/order/parse.js'
import { withUnits } from '../../src/order/unit-change.js'
import { planOf } from '../orders.js'

const EXAMPLES = ['winter-fair', 'lantern-walk'].map(
  (name) => [name, readFileSync(`shared/examples/${name}.yaml`, 'utf8')] as const,
)

/** Every number of a plan, to compare two of them. */
const numbersIn = (value: unknown): number[] => {
  if (typeof value === 'number') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : []
}

// Oracle: the plan of the order as it was; only how lengths are shown may change.
describe.each(EXAMPLES)('%s in other units', (_, text) => {
  const [units, wanted] = /^units: in/m.test(text) ? (['in', 'mm'] as const) : (['mm', 'in'] as const)
  const changed = withUnits(text, units, wanted)

  it('plans the same stars, of the same wood, in the same air', () => {
    const [before, after] = [planOf(text), planOf(changed)]
    expect(after.order.lengths.units).toBe(wanted)
    expect(numbersIn(after.stars)).toEqual(numbersIn(before.stars))
    expect(numbersIn(after.order.climate)).toEqual(numbersIn(before.order.climate))
    expect(numbersIn(after.order.shop)).toEqual(numbersIn(before.order.shop))
  })

  it('keeps every comment, and is left as it is when it is changed back', () => {
    const comments = (order: string) => order.match(/#.*$/gm)
    expect(comments(changed)).toEqual(comments(text))
    expect(withUnits(withUnits(changed, wanted, units), units, wanted)).toBe(changed)
  })
})

describe('one value of an order', () => {
  const text = 'stars:\n  - { points: 5, tip-angle: 45, board-width: 70 } # for the jetty\n'

  it.each([
    [['stars', 0, 'board-width'], '3 1/2 in', 'board-width: 3 1/2 in }'],
    [['stars', 0, 'name'], 'Boat: shed', 'name: "Boat: shed" }'],
    [['stars', 0, 'name'], '12', 'name: "12" }'],
    [['stars', 0, 'note'], 'a # b, {c}', 'note: "a # b, {c}" }'],
    [['stars', 0, 'slenderest'], true, 'slenderest: true }'],
  ] as const)('%j set to %j', (place, value, written) => {
    const edited = editedOrder(text, place, value)
    expect(edited).toContain(written)
    expect(edited).toContain('# for the jetty')
  })

  it('reads as it was set, whatever it is; taken out it is gone', () => {
    for (const name of ['true', 'null', '- x', '"q', "it's", 'a\\b', '!x', '&x', '*x', '%x', '@x', ' y ']) {
      const edited = editedOrder(text, ['stars', 0, 'note'], name)
      const order = parseOrder({ text: edited })
      expect(order.ok ? order.value.stars[0]?.note : edited).toBe(order.ok ? name.trim() : edited)
    }
    expect(
      editedOrder(editedOrder(text, ['stars', 0, 'name'], 'x'), ['stars', 0, 'name'], undefined),
    ).not.toContain('name')
  })

  it('keeps a list on one line there, and one entry a line so', () => {
    const place = ['shop', 'saw', 'detents']
    const inLine = 'shop:\n  saw:\n    detents: [0, 15] # read off\n'
    expect(editedOrder(inLine, place, [0, 22.5])).toContain('    detents: [ 0, 22.5 ] # read off')
    const below = 'shop:\n  saw:\n    detents:\n      - 0\n'
    expect(editedOrder(below, place, [0, 22.5])).toContain('    detents:\n      - 0\n      - 22.5\n')
  })
})
