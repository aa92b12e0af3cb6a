import { describe, expect, it } from 'vitest'
import { armAsCut, type CutArm } from '../../src/fit/arm.js'
import { recutArms } from '../../src/fit/recut.js'
import { type Star, solveStar } from '../../src/geometry/star.js'
import { degrees, mm } from '../../src/units/convert.js'
import { areaOf, minus, region } from '../geometry/clipping.js'
import { SHAPES, showShape } from '../geometry/sweep.js'

const ERRORS = [-3, -1, -0.2, 0, 0.2, 1, 3]

const rad = (angle: number): number => (angle * Math.PI) / 180

/** An arm laid with its tip at the origin and its axis along +x, walked round by edges and angles. */
const walked = (tipAngle: number, sideAngle: number, tipEdge: number, jointEdge: number) => {
  const near = { x: tipEdge * Math.cos(rad(-tipAngle / 2)), y: tipEdge * Math.sin(rad(-tipAngle / 2)) }
  const onward = rad(-tipAngle / 2 + 180 - sideAngle)
  const centre = { x: near.x + jointEdge * Math.cos(onward), y: near.y + jointEdge * Math.sin(onward) }
  return { corners: [{ x: 0, y: 0 }, near, centre, { x: near.x, y: -near.y }], near, centre }
}

const lie = (arm: CutArm) => walked(arm.tipAngle, arm.sideAngle, arm.tipEdge, arm.jointEdge)
const lieNew = (star: Star) => walked(star.tipAngle, star.sideAngle, star.tipEdge, star.jointEdge)

/** How far a point lies beyond the line from a to b, to its right. */
const beyond = (p: { x: number; y: number }, a: { x: number; y: number }, b: { x: number; y: number }) =>
  ((p.x - a.x) * (b.y - a.y) - (p.y - a.y) * (b.x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y)

describe.each(SHAPES.map((shape) => [showShape(shape), shape] as const))('%s:', (_, { points, tipAngle }) => {
  const star = solveStar(points, tipAngle, 'radius', mm(200))
  const arms = ERRORS.flatMap((tip) =>
    ERRORS.map((side) => ({ tip: degrees(tip), side: degrees(side), tipEdge: mm(tip - side) })),
  )
    .map((errors) => armAsCut(star, errors))
    .filter((arm) => arm.tipAngle > 0.5 && arm.centreAngle > 1 && arm.sideAngle < 179.5)

  it('recut arms close exactly, lie in the old ones, and lose what is said', () => {
    for (const arm of arms) {
      const recut = recutArms(points, arm, mm(0.5))
      if (!recut) {
        // Nothing left of arms this small, or tips too fat for a valley.
        expect(arm.tipAngle >= 180 - 360 / points || arm.tipEdge < 40).toBe(true)
        continue
      }
      const fresh = recut.star
      expect(360 - points * (360 - fresh.tipAngle - 2 * fresh.sideAngle)).toBeCloseTo(0, 9)
      const [old, now] = [lie(arm), lieNew(fresh)]
      expect(areaOf(minus(region(now.corners), region(old.corners)))).toBeLessThan(1e-5)
      expect(recut.off.valley).toBeCloseTo(beyond(old.near, now.near, now.centre), 6)
      expect(recut.off.centre).toBeCloseTo(beyond(old.centre, now.near, now.centre), 6)
      expect(Math.min(recut.off.valley, recut.off.centre)).toBeCloseTo(0.5, 6)
      expect(recut.stopMove).toBeCloseTo(arm.tipEdge - fresh.tipEdge, 9)
    }
  })
})
