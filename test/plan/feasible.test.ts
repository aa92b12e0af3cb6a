import { describe, expect, it } from 'vitest'
import { blankCorners, kite } from '../../src/geometry/kite.js'
import type { Point } from '../../src/geometry/point.js'
import type { StarPlan } from '../../src/plan/plan.js'
import { sides } from '../geometry/distances.js'
import { SHAPES, showShape } from '../geometry/sweep.js'
import { FAR_SAW, starPlan, tryStarPlan } from './shop-orders.js'

/** How far a line from `from` through `through` runs until it leaves a convex polygon. */
const runWithin = (from: Point, through: Point, corners: readonly Point[]): number => {
  const size = Math.hypot(through.x - from.x, through.y - from.y)
  const [ux, uy] = [(through.x - from.x) / size, (through.y - from.y) / size]
  const exits = sides(corners).flatMap(([a, b]) => {
    const [vx, vy] = [b.x - a.x, b.y - a.y]
    const turn = ux * vy - uy * vx
    // Does the line go out through this side of the counter-clockwise polygon?
    if (turn <= 1e-12) return []
    return [((a.x - from.x) * vy - (a.y - from.y) * vx) / turn]
  })
  return Math.min(...exits)
}

/** The longest of the cuts through wood: the first ones across the board, the joint cuts across the blank. */
const longestCut = ({ star, blank }: StarPlan): number => {
  const corners = blankCorners(star, blank.side)
  const { nearValley, centre } = kite(star)
  const across = Math.hypot(corners[3].x - corners[0].x, corners[3].y - corners[0].y)
  return Math.max(across, runWithin(nearValley, centre, corners))
}

const planned = (points: number, tipAngle: number, saw: Record<string, unknown>): StarPlan | undefined => {
  const outcome = tryStarPlan({ points, 'tip-angle': tipAngle, 'board-width': 90 }, { saw })
  return outcome.ok ? outcome.value.stars[0] : undefined
}

describe('a plan calls itself feasible', () => {
  const shapes = SHAPES.filter(({ tipAngle }) => tipAngle > 15 && tipAngle < 165)
  it.each(shapes.map((shape) => [showShape(shape), shape] as const))(
    'where the blade reaches along every cut: %s',
    (_, { points, tipAngle }) => {
      const plan = planned(points, tipAngle, FAR_SAW)
      if (!plan) return
      expect(plan.feasible).toBe(plan.jointCut.miter <= 75)
      if (!plan.feasible) return
      const longest = longestCut(plan)
      // Half a millimetre either way of the longest cut; a rule shows a tenth.
      const [reaching, short] = [0.5, -0.5].map((by) =>
        planned(points, tipAngle, { ...FAR_SAW, crosscut: longest + by }),
      )
      expect(reaching?.feasible).toBe(true)
      expect(reaching?.warnings.map(({ code }) => code)).not.toContain('crosscut')
      expect(short?.feasible).toBe(false)
      expect(short?.warnings.map(({ code }) => code)).toContain('crosscut')
    },
  )

  it.each([
    // points, tip angle, limit, feasible: first miter 90 - tip, joint miter 90 - tip / 2 - 180 / points.
    [5, 45, 45, true],
    [5, 44.9, 45, false],
    [5, 36, 54, true],
    [5, 36, 53.9, false],
    [12, 45, 50, false],
    [12, 50, 50, true],
    [24, 130, 39.9, false],
    [24, 130, 40, true],
    [24, 140, 49.9, false],
    [24, 140, 50, true],
  ])('%i points, tip angle %f on a saw that stops at %f: %s', (points, tip, limit, feasible) => {
    const plan = starPlan(
      { points, 'tip-angle': tip, 'tip-edge': 200 },
      { saw: { limit, kerf: 2, 'reads-to': 0.1 } },
    )
    expect(plan.feasible).toBe(feasible)
    expect(plan.warnings.map(({ code }) => code).includes('saw-limit')).toBe(!feasible)
  })
})
