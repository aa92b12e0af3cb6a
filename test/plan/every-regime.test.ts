import { describe, expect, it } from 'vitest'
import { SHAPES, SIZE_NAMES, showShape } from '../geometry/sweep.js'
import { FAR_SAW, tryStarPlan } from './shop-orders.js'

/** Every number in a plan, with where it stands. */
const numbersIn = (value: unknown, at = 'plan'): (readonly [string, number])[] => {
  if (typeof value === 'number') return [[at, value]]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, `${at}.${key}`))
}

const textsIn = (value: unknown): string[] => {
  if (typeof value === 'string') return [value]
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value).flatMap(textsIn)
}

const SHOPS = [
  { saw: { limit: 45, kerf: 2.4, 'reads-to': 0.5 } },
  {
    saw: { ...FAR_SAW, detents: [0, 22.5, 31.6], crosscut: 300 },
    boards: [{ width: 140, length: 3000, count: 2, defects: [{ from: 500, to: 560 }] }],
    panels: [{ length: 1200, width: 600, thickness: 4 }],
    'end-allowance': 20,
  },
]
const PLATES = ['star', 'polygon', 'disc']

describe.each(SHAPES.map((shape) => [showShape(shape), shape] as const))('%s', (_, { points, tipAngle }) => {
  it('is planned with sound numbers, or refused in words, for every way of giving the size', () => {
    SIZE_NAMES.forEach((by, index) => {
      for (const shop of SHOPS) {
        const star = {
          points,
          'tip-angle': tipAngle,
          [by]: 140 + 60 * index,
          chamfer: 1,
          backing: { shape: PLATES[index % 3], inset: 2, thickness: 4 },
        }
        const outcome = tryStarPlan(star, shop)
        expect(textsIn(outcome).filter((text) => /NaN|undefined|Infinity|null/.test(text))).toEqual([])
        if (!outcome.ok) {
          // Only a star whose pieces are too long or too small to be meant.
          const { advice } = outcome.problems[0] ?? { advice: '' }
          expect(advice).toMatch(
            /makes a piece .* long; allowed|makes an edge of only|too small for a backing|Allowed here: up to/,
          )
          continue
        }
        const numbers = numbersIn(outcome.value)
        expect(numbers.length).toBeGreaterThan(40)
        expect(numbers.filter(([, number]) => !Number.isFinite(number))).toEqual([])
      }
    })
  })
})

it('nearly all of the sweep is planned', () => {
  const outcomes = SHAPES.flatMap(({ points, tipAngle }) =>
    SIZE_NAMES.map((by) => tryStarPlan({ points, 'tip-angle': tipAngle, [by]: 300 }, SHOPS[0] ?? {}).ok),
  )
  expect(outcomes.filter((ok) => ok).length / outcomes.length).toBeGreaterThan(0.9)
})
