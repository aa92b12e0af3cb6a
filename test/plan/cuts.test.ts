import { describe, expect, it } from 'vitest'
import type { Saw } from '../../src/order/order.js'
import { firstMiter, jointMiter, tipAnglesWithin } from '../../src/plan/cuts.js'
import { degrees, mm } from '../../src/units/convert.js'
import { SHAPES } from '../geometry/sweep.js'
import { starPlan, tryStarPlan } from './shop-orders.js'

const saw = (limit: number): Saw => ({
  limit: degrees(limit),
  kerf: mm(2.4),
  readsTo: degrees(0.5),
  detents: [],
  repeatsTo: degrees(0.05),
  trueTo: degrees(0.2),
})

const POINTS = Array.from({ length: 22 }, (_, index) => index + 3)
const LIMITS = [5, 10, 20, 30, 40, 45, 47, 50, 52, 60, 75]

/** From the angles of the arm alone: the cut at the tip makes its angle with the edge, the joint cut the side angle. */
const cutsOf = (points: number, tip: number) => {
  const side = (360 - tip - 360 / points) / 2
  return { first: Math.abs(90 - tip), joint: side - 90 }
}

const cuts = (points: number, tip: number, limit: number) => {
  const { first, joint } = cutsOf(points, tip)
  return tip > 0 && tip < 180 - 360 / points && first <= limit + 1e-9 && joint <= limit + 1e-9
}

it('the two miters come from the arm angles, and beyond a tip of 90 degrees the first leans the other way', () => {
  for (const { points, tipAngle } of SHAPES) {
    const { first, joint } = cutsOf(points, tipAngle)
    expect(Math.abs(firstMiter(tipAngle))).toBeCloseTo(first, 10)
    expect(jointMiter(points, tipAngle)).toBeCloseTo(joint, 10)
    expect(Math.sign(firstMiter(tipAngle))).toBe(Math.sign(90 - tipAngle))
  }
  const blunt = starPlan({ points: 12, 'tip-angle': 110, radius: 300 })
  expect(blunt.firstCut.miter).toBe(-20)
  expect(blunt.firstCut.reading).toBe(20)
  expect(blunt.firstCut.miterAtMark).toBe(-20)
})

describe.each(LIMITS)('a saw that stops at %i degrees', (limit) => {
  it.each(POINTS)('cuts for %i points what trying every hundredth of a degree finds', (points) => {
    const hundredths = Array.from({ length: 17_999 }, (_, index) => (index + 1) / 100)
    const possible = hundredths.filter((tip) => cuts(points, tip, limit))
    const range = tipAnglesWithin(saw(limit), points)
    if (!range) {
      expect(possible).toEqual([])
      return
    }
    // The ends may lie between two hundredths.
    expect(Math.abs(range.least - (possible[0] ?? Number.NaN))).toBeLessThan(0.01)
    const most = Math.min(range.most, 180 - 360 / points)
    expect(Math.abs(most - (possible.at(-1) ?? Number.NaN))).toBeLessThanOrEqual(0.0101)
  })

  it.each(POINTS)(
    'makes the slenderest star of %i points, and none slimmer by a hundredth of a degree',
    (points) => {
      const shop = { saw: { limit, kerf: 2.4, 'reads-to': 0.5 } }
      const outcome = tryStarPlan({ points, slenderest: true, radius: 900 }, shop)
      if (!outcome.ok) {
        const tips = Array.from({ length: 17_999 }, (_, index) => (index + 1) / 100)
        expect(tips.some((tip) => cuts(points, tip, limit))).toBe(false)
        expect(outcome.problems.map(({ place }) => place)).toEqual(['stars[0].slenderest'])
        return
      }
      const plan = outcome.value.stars[0]
      if (!plan) throw new Error('one star was planned')
      expect(plan.feasible).toBe(true)
      expect(plan.firstCut.wedge ?? plan.jointCut.wedge).toBeUndefined()
      expect(cuts(points, plan.star.tipAngle, limit)).toBe(true)
      expect(cuts(points, plan.star.tipAngle - 0.01, limit)).toBe(false)
    },
  )
})
