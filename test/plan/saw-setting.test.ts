import { describe, expect, it } from 'vitest'
import type { Order, Saw } from '../../src/order/order.js'
import { parseOrder } from '../../src/order/parse.js'
import { planOrder, type StarPlan } from '../../src/plan/plan.js'
import { nearestMark, sawMarks, sawSetting, withinLimit } from '../../src/plan/saw-setting.js'
import { degrees } from '../../src/units/convert.js'
import { saw } from './shop-orders.js'

const SAWS: readonly (readonly [string, Saw])[] = [
  ['half degrees to 45', saw(45, 0.5)],
  ['half degrees to 45 with detents on and between the lines', saw(45, 0.5, [0, 15, 22.5, 31.6, 35.3, 45])],
  ['whole degrees, limit between two lines', saw(47.3, 1)],
  ['detents beyond the limit and at it', saw(50.2, 1, [22.62, 50.2, 54, 60, 75])],
  ['five-degree lines', saw(60, 5, [22.5, 31.6, 33.9])],
  ['tenths', saw(52, 0.1)],
  ['thirds', saw(45, 1 / 3)],
  ['quarter degrees, detents unsorted and twice', saw(45, 0.25, [31.6, 15, 15, 33.9, 0.1])],
]

/** Every line and detent the saw can be set to, by counting. */
const countedMarks = ({ limit, readsTo, detents }: Saw): number[] => {
  const marks = detents.filter((detent) => detent <= limit + 1e-9)
  for (let line = 0; line * readsTo <= limit + 1e-9; line++) marks.push(degrees(line * readsTo))
  return marks
}

const readings = (limit: number) => Array.from({ length: Math.floor(limit * 37) + 1 }, (_, step) => step / 37)

describe.each(SAWS)('a saw with %s', (_, saw) => {
  it('has the marks that counting finds, each once and in order', () => {
    const marks = sawMarks(saw)
    expect(marks).toEqual([...marks].sort((a, b) => a - b))
    for (const counted of countedMarks(saw)) {
      expect(marks.filter((mark) => Math.abs(mark - counted) < 1e-6)).toHaveLength(1)
    }
    for (const mark of marks) {
      expect(Math.min(...countedMarks(saw).map((counted) => Math.abs(counted - mark)))).toBeLessThan(1e-9)
    }
  })

  it('has no mark nearer than the nearest, and of two equally near the shallower is taken', () => {
    const marks = countedMarks(saw)
    // Halfway between neighbours, too.
    const between = sawMarks(saw).map((mark, index, all) => (mark + (all[index + 1] ?? mark)) / 2)
    for (const reading of [...readings(saw.limit), ...between, saw.limit]) {
      const got = nearestMark(saw, degrees(reading))
      const least = Math.min(...marks.map((mark) => Math.abs(mark - reading)))
      expect(Math.abs(got - reading)).toBeCloseTo(least, 8)
      const asNear = marks.filter((mark) => Math.abs(mark - reading) < least + 1e-9)
      expect(got).toBeCloseTo(Math.min(...asNear), 8)
    }
  })

  it('is never set beyond its limit, and needs no wedge within it', () => {
    for (const reading of readings(saw.limit)) {
      for (const miter of [reading, -reading]) {
        const setting = sawSetting(saw, degrees(miter))
        expect(setting.wedge).toBeUndefined()
        expect(setting.reading).toBeCloseTo(Math.abs(miter), 12)
        expect(withinLimit(saw, degrees(miter))).toBe(true)
        expect(setting.miterAtMark).toBeCloseTo(Math.sign(miter) * setting.mark, 12)
      }
    }
  })

  it('beyond its limit takes the smallest wedge of whole degrees that brings the reading within', () => {
    for (let beyond = 0.01; saw.limit + beyond < 90; beyond += 0.37) {
      for (const sign of [1, -1]) {
        const miter = sign * (saw.limit + beyond)
        const { wedge, reading, mark, miterAtMark } = sawSetting(saw, degrees(miter))
        if (!wedge) throw new Error(`no wedge for ${miter}`)
        expect(withinLimit(saw, degrees(miter))).toBe(false)
        expect(Number.isInteger(wedge.angle)).toBe(true)
        expect(reading + wedge.angle).toBeCloseTo(Math.abs(miter), 9)
        expect(reading).toBeLessThanOrEqual(saw.limit + 1e-9)
        expect(reading).toBeGreaterThanOrEqual(0)
        // A wedge one degree smaller would not do.
        expect(Math.abs(miter) - (wedge.angle - 1)).toBeGreaterThan(saw.limit)
        expect(miterAtMark).toBeCloseTo(sign * (mark + wedge.angle), 9)
      }
    }
  })
})

it('a square cut is set to 0 without a lean', () => {
  const square = sawSetting(saw(45, 0.5), degrees(0))
  expect(square.reading).toBe(0)
  expect(square.mark).toBe(0)
  expect(square.miterAtMark).toBe(0)
})

// As stated for readings: never negative, whatever saw an order may name.
it.each([
  [0.5, 89.1],
  [0.3, 88.5],
  [1, 88.8],
  [2, 20],
])('a saw that stops at %f degrees is refused, or reads 0 or more for a tip angle of %f', (limit, tip) => {
  const text = JSON.stringify({
    shop: { saw: { limit, 'reads-to': 0.1 } },
    stars: [{ points: 24, 'tip-angle': tip, 'board-width': 90 }],
  })
  const order = parseOrder({ text })
  const { firstCut, jointCut } = order.ok ? planOnly(order.value) : {}
  for (const cut of [firstCut, jointCut]) expect(cut?.reading ?? 0).toBeGreaterThanOrEqual(0)
})

const planOnly = (order: Order): Partial<StarPlan> => {
  const plan = planOrder(order)
  return plan.ok ? (plan.value.stars[0] ?? {}) : {}
}
