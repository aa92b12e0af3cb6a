import { describe, expect, it } from 'vitest'
import type { Point } from '../../src/geometry/point.js'
import type { StarPlan } from '../../src/plan/plan.js'
import { SHAPES, showShape } from '../geometry/sweep.js'
import { cos, sin, starPlan, tryStarPlan } from './shop-orders.js'

const SAW = { limit: 45, kerf: 2.4, 'reads-to': 0.5, detents: [22.5, 31.6, 33.9] }

const planned = ({ points, tipAngle }: { points: number; tipAngle: number }): StarPlan | undefined => {
  const outcome = tryStarPlan({ points, 'tip-angle': tipAngle, radius: 600 }, { saw: SAW })
  return outcome.ok ? outcome.value.stars[0] : undefined
}
const PLANS = SHAPES.flatMap((shape) => {
  const plan = planned(shape)
  return plan ? [[showShape(shape), plan] as const] : []
})

/** 360° less what n arms fill, from the angles that the saw really cut. */
const closureOfCut = (points: number, firstMiter: number, jointMiter: number): number => {
  const [tip, side] = [90 - firstMiter, 90 + jointMiter]
  return 360 - points * (360 - tip - 2 * side)
}

it('covers nearly all shapes of the sweep', () => {
  expect(PLANS.length).toBeGreaterThan(0.9 * SHAPES.length)
})

/** A rhombus arm is its blank: a parallelogram, whose angle at the centre is the tip's. */
const isRhombus = ({ star }: StarPlan): boolean => Math.abs(star.tipAngle - 360 / star.points) < 1e-9
const RHOMBUSES = PLANS.filter(([, plan]) => isRhombus(plan))
const CUT_THRICE = PLANS.filter(([, plan]) => !isRhombus(plan))

it.each(RHOMBUSES)('%s: a rhombus closes as its first cut makes it', (_, { star, firstCut, jointCut }) => {
  expect(firstCut.closureAtMark).toBeCloseTo(360 - star.points * (90 - firstCut.miterAtMark), 9)
  expect(jointCut.closureAtMark).toBe(0)
})

it.each(CUT_THRICE)('%s: the closure at the marks is that of the star the saw would cut', (_, plan) => {
  const { star, firstCut, jointCut } = plan
  expect(closureOfCut(star.points, firstCut.miter, jointCut.miter)).toBeCloseTo(0, 9)
  expect(firstCut.closureAtMark).toBeCloseTo(
    closureOfCut(star.points, firstCut.miterAtMark, jointCut.miter),
    9,
  )
  expect(jointCut.closureAtMark).toBeCloseTo(
    closureOfCut(star.points, firstCut.miter, jointCut.miterAtMark),
    9,
  )
  expect(firstCut.closureAtMark + jointCut.closureAtMark).toBeCloseTo(
    closureOfCut(star.points, firstCut.miterAtMark, jointCut.miterAtMark),
    9,
  )
})

describe('the gap of a tenth of a degree', () => {
  /** Arms cut against the same stop with joint cuts that are `error` too steep, laid edge to edge from the first. */
  const gapOfWrongArms = (plan: StarPlan, error: number): number => {
    const { star } = plan
    const side = star.sideAngle + error
    const centre = isRhombus(plan) ? star.tipAngle - error : 360 - star.tipAngle - 2 * side
    const joint = isRhombus(plan) ? star.jointEdge : (star.tipEdge * sin(star.tipAngle / 2)) / sin(centre / 2)
    const valleyAt = (direction: number): Point => ({ x: joint * cos(direction), y: joint * sin(direction) })
    const [first, last] = [valleyAt(0), valleyAt(star.points * centre)]
    return Math.hypot(last.x - first.x, last.y - first.y)
  }

  it.each(PLANS)('%s: is what n arms, each off by that much, leave open', (_, plan) => {
    // The wrong arms' joint edges differ from the right ones by 0.1° / tan(centre / 2): 1.4 % for 24 points.
    expect(plan.gapPerTenth / gapOfWrongArms(plan, 0.1)).toBeGreaterThan(0.98)
    expect(plan.gapPerTenth / gapOfWrongArms(plan, 0.1)).toBeLessThan(1.02)
  })

  it('is 1.4 mm for five arms of 90 mm board (derivation: 82.9 mm joint edge, times 1 degree)', () => {
    const plan = starPlan({ points: 5, 'tip-angle': 45, 'board-width': 90 })
    expect(plan.gapPerTenth).toBeCloseTo(1.4, 1)
    expect(gapOfWrongArms(plan, 0.1)).toBeCloseTo(1.4, 1)
  })
})
