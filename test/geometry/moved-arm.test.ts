import { describe, expect, it } from 'vitest'
import { type GrainAlong, movedArm } from '../../src/geometry/moved-arm.js'
import { solveStar } from '../../src/geometry/star.js'
import { degrees, mm } from '../../src/units/convert.js'
import { SHAPES, showShape, twoStarsOf } from './sweep.js'

/*
 * Oracle: the kite of the design, section 3, written out again; an affine map as a 2 x 2 matrix
 * M = f I + (1 - f) g gᵀ, with g the unit vector along the grain, applied to the arm as it lies in the star (axis up,
 * far from how the code lays it); angles by the law of cosines.
 */
type Vector = readonly [number, number]
const RAD = Math.PI / 180

const kiteUpright = (points: number, tip: number, edge: number): readonly Vector[] => {
  const half = (tip / 2) * RAD
  const centre = Math.PI / points
  const radius = (edge * Math.sin(half + centre)) / Math.sin(centre)
  // Tip below, centre above: the edge to the right leans by half the tip angle from the axis.
  return [
    [0, 0],
    [edge * Math.sin(half), edge * Math.cos(half)],
    [0, radius],
    [-edge * Math.sin(half), edge * Math.cos(half)],
  ]
}

const stretched = ([x, y]: Vector, [gx, gy]: Vector, factor: number): Vector => [
  factor * x + (1 - factor) * gx * (gx * x + gy * y),
  factor * y + (1 - factor) * gy * (gx * x + gy * y),
]

const length = ([ax, ay]: Vector, [bx, by]: Vector): number => Math.hypot(bx - ax, by - ay)

const cosineAngle = (at: Vector, one: Vector, other: Vector): number => {
  const [a, b, c] = [length(at, one), length(at, other), length(one, other)]
  return Math.acos((a * a + b * b - c * c) / (2 * a * b)) / RAD
}

const oracle = (points: number, tip: number, edge: number, grain: GrainAlong, factor: number) => {
  const half = (tip / 2) * RAD
  const along: Vector = grain === 'axis' ? [0, 1] : [Math.sin(half), Math.cos(half)]
  const [a, near, c, far] = kiteUpright(points, tip, edge).map((corner) =>
    stretched(corner, along, factor),
  ) as [Vector, Vector, Vector, Vector]
  return {
    tipAngle: cosineAngle(a, near, far),
    centreAngle: cosineAngle(c, near, far),
    sideAngles: [cosineAngle(near, a, c), cosineAngle(far, a, c)],
    jointEdges: [length(near, c), length(far, c)],
    tipEdges: [length(a, near), length(a, far)],
  }
}

const FACTORS = [0.9, 0.97, 0.99, 1, 1.01, 1.04]

describe.each(['edge', 'axis'] as const)('grain along the %s', (grain) => {
  it.each(SHAPES.map((shape) => [showShape(shape), shape] as const))('%s', (_, shape) => {
    for (const star of twoStarsOf(shape)) {
      for (const factor of FACTORS) {
        const ours = movedArm(star, grain, factor)
        const theirs = oracle(star.points, star.tipAngle, star.tipEdge, grain, factor)
        // The law of cosines loses half the digits near 0° and 180°.
        expect(ours.tipAngle).toBeCloseTo(theirs.tipAngle, 4)
        expect(ours.centreAngle).toBeCloseTo(theirs.centreAngle, 4)
        ours.sideAngles.forEach((angle, side) => {
          expect(angle).toBeCloseTo(theirs.sideAngles[side] ?? Number.NaN, 4)
        })
        ours.jointEdges.forEach((edge, side) => {
          expect(edge / (theirs.jointEdges[side] ?? Number.NaN)).toBeCloseTo(1, 9)
        })
        ours.tipEdges.forEach((edge, side) => {
          expect(edge / (theirs.tipEdges[side] ?? Number.NaN)).toBeCloseTo(1, 9)
        })
        // The corners of every quadrilateral, this one convex still, add up to a full turn.
        const [near, far] = ours.sideAngles
        expect(ours.tipAngle + ours.centreAngle + near + far).toBeCloseTo(360, 6)
      }
    }
  })
})

describe('by hand', () => {
  const star = solveStar(5, degrees(45), 'board-width', mm(88.9))

  it('wood that does not move leaves the star as it is', () => {
    for (const grain of ['edge', 'axis'] as const) {
      const arm = movedArm(star, grain, 1)
      expect(arm.tipAngle).toBeCloseTo(45, 12)
      expect(arm.centreAngle).toBeCloseTo(72, 12)
      for (const edge of arm.jointEdges) expect(edge).toBeCloseTo(star.jointEdge, 9)
    }
  })

  // Half angles of a kite that is squeezed towards its axis: their tangents shrink by the factor.
  it('along the axis the tangents of half tip and half centre shrink by the factor', () => {
    const { tipAngle, centreAngle } = movedArm(star, 'axis', 0.99)
    expect(Math.tan((tipAngle / 2) * RAD)).toBeCloseTo(0.99 * Math.tan(22.5 * RAD), 12)
    expect(Math.tan((centreAngle / 2) * RAD)).toBeCloseTo(0.99 * Math.tan(36 * RAD), 12)
  })

  it('along an edge that edge keeps its length, and the tangent of the tip shrinks by the factor', () => {
    const arm = movedArm(star, 'edge', 0.99)
    expect(arm.tipEdges[0]).toBeCloseTo(star.tipEdge, 9)
    expect(Math.tan(arm.tipAngle * RAD)).toBeCloseTo(0.99 * Math.tan(45 * RAD), 12)
  })
})
