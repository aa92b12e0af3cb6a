import { describe, expect, it } from 'vitest'
import { plannedStar } from '../../src/page/sound.js'
import { planOf } from '../orders.js'

const plan = planOf(`stars:
  - { name: Jetty, points: 5, tip-angle: 45, across: 300 }
  - { name: Pier, points: 6, tip-angle: 45, across: 300 }
`)

describe('of a plan from before the mistakes', () => {
  it.each([
    ['as planned', ['Jetty', 'Pier'], ['Jetty', 'Pier']],
    ['one renamed', ['Jetty', 'Quay'], ['Jetty', 'Pier']],
    ['both renamed', ['Mole', 'Quay'], ['Jetty', 'Pier']],
    ['one given the name of the other', ['Pier', 'Pier'], ['Jetty', 'Pier']],
    ['the first taken away', ['Pier'], ['Pier']],
    ['a third added', ['Jetty', 'Pier', 'Star 3'], ['Jetty', 'Pier', undefined]],
    // Swapped, or one taken away and another added: which is which cannot be told.
    ['names swapped', ['Pier', 'Jetty'], [undefined, undefined]],
    ['the first taken away, another added', ['Pier', 'Star 3'], [undefined, undefined]],
  ] as const)('%s', (_, written, expected) => {
    expect(written.map((_, index) => plannedStar(plan, written, index)?.order.name)).toEqual(expected)
  })
})
