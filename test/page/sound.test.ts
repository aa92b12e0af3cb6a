import { describe, expect, it } from 'vitest'
import type { Change } from '../../src/page/bench.js'
import { inPlace, plannedStar, stoodAfter } from '../../src/page/sound.js'
import { planOf } from '../orders.js'

const plan = planOf(`stars:
  - { points: 5, tip-angle: 45, across: 300 }
  - { points: 6, tip-angle: 45, across: 300 }
  - { points: 7, tip-angle: 45, across: 300 }
`)

const ADDED: Change = [['stars', 2], { name: 'Star 2' }]
const away = (index: number): Change => [['stars', index], undefined]

describe('the stars of an order with mistakes are known by where they stood', () => {
  it.each([
    ['nothing changed', [], [5, 6, 7]],
    [
      'names swapped',
      [
        [['stars', 0, 'name'], 'B'],
        [['stars', 1, 'name'], 'A'],
      ],
      [5, 6, 7],
    ],
    ['the first taken away', [away(0)], [6, 7]],
    ['the last taken away and another of its name added', [away(2), ADDED], [5, 6, undefined]],
    ['the first taken away and another added', [away(0), ADDED], [6, 7, undefined]],
    ['all others', [[['stars'], [{ points: 8 }]]], [undefined]],
  ] satisfies readonly (readonly [string, readonly Change[], readonly (number | undefined)[]])[])(
    '%s',
    (_, changes, points) => {
      const stood = stoodAfter(inPlace(3), changes)
      expect(stood.map((_, index) => plannedStar(plan, stood, index)?.star.points)).toEqual(points)
    },
  )
})
