import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { kite, kiteArea } from '../../src/geometry/kite.js'
import type { Point } from '../../src/geometry/point.js'
import {
  FEWEST_POINTS,
  MOST_POINTS,
  type SizeName,
  type Star,
  solveStar,
  starOutline,
  tipAngleLimit,
} from '../../src/geometry/star.js'
import { degrees, mm } from '../../src/units/convert.js'
import { toLine } from './distances.js'
import { SHAPES, SIZE_NAMES, starsOf } from './sweep.js'

fc.configureGlobal({ seed: 20 })

const shape = fc
  .record({
    points: fc.integer({ min: FEWEST_POINTS, max: MOST_POINTS }),
    share: fc.double({ min: 0.01, max: 0.999, noNaN: true }),
  })
  .map(({ points, share }) => ({ points, tipAngle: degrees(share * tipAngleLimit(points)) }))
const sizeName = fc.constantFrom(...SIZE_NAMES)
const size = fc.double({ min: 5, max: 2000, noNaN: true })
const star = fc
  .tuple(shape, sizeName, size)
  .map(([{ points, tipAngle }, name, size]) => solveStar(points, tipAngle, name, mm(size)))

const LENGTHS = [
  'tipEdge',
  'jointEdge',
  'radius',
  'valleyRadius',
  'across',
  'height',
  'edgeDistance',
  'armStrip',
] as const
const ANGLES = ['tipAngle', 'sideAngle', 'centreAngle'] as const

const measureOf = (star: Star, name: SizeName): number =>
  ({
    'board-width': star.armStrip,
    across: star.across,
    height: star.height,
    radius: star.radius,
    'tip-edge': star.tipEdge,
  })[name]

const expectSameStar = (got: Star, expected: Star) => {
  expect(got.points).toBe(expected.points)
  for (const name of ANGLES) expect(got[name]).toBe(expected[name])
  for (const name of LENGTHS) expect(Math.abs(got[name] / expected[name] - 1)).toBeLessThan(1e-12)
  expect(got.valleyLine.apart).toBe(expected.valleyLine.apart)
  expect(Math.abs(got.valleyLine.dip - expected.valleyLine.dip)).toBeLessThan(1e-12 * expected.radius)
}

const turned = ({ x, y }: Point, by: number): Point => ({
  x: x * Math.cos(by) - y * Math.sin(by),
  y: x * Math.sin(by) + y * Math.cos(by),
})

const nearest = (to: Point, corners: readonly Point[]) =>
  Math.min(...corners.map(({ x, y }) => Math.hypot(x - to.x, y - to.y)))

describe('a star', () => {
  it('of k times the size has all lengths k times as long, areas k squared, and the same angles', () => {
    fc.assert(
      fc.property(
        shape,
        sizeName,
        size,
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        ({ points, tipAngle }, name, size, k) => {
          const [one, other] = [size, size * k].map((length) => solveStar(points, tipAngle, name, mm(length)))
          if (!one || !other) throw new Error('two stars were made')
          for (const name of ANGLES) expect(other[name]).toBe(one[name])
          for (const name of LENGTHS) expect(other[name] / one[name] / k).toBeCloseTo(1, 11)
          expect(kiteArea(other) / kiteArea(one) / k ** 2).toBeCloseTo(1, 11)
          expect(other.valleyLine.dip / other.radius).toBeCloseTo(one.valleyLine.dip / one.radius, 11)
        },
      ),
    )
  })

  it('has the asked size in the asked measure', () => {
    fc.assert(
      fc.property(shape, sizeName, size, ({ points, tipAngle }, name, size) => {
        expect(measureOf(solveStar(points, tipAngle, name, mm(size)), name) / size).toBeCloseTo(1, 12)
      }),
    )
  })

  it('is the same star, whichever of its own measures it is solved by', () => {
    for (const one of SHAPES.flatMap(starsOf)) {
      for (const name of SIZE_NAMES) {
        expectSameStar(solveStar(one.points, one.tipAngle, name, mm(measureOf(one, name))), one)
      }
    }
  })

  it('falls onto itself when turned by 360/n, and when mirrored on its upright axis', () => {
    fc.assert(
      fc.property(star, (star) => {
        const corners = starOutline(star).vertices
        const noise = 1e-12 * star.radius
        expect(corners).toHaveLength(2 * star.points)
        for (const corner of corners) {
          expect(nearest(turned(corner, (2 * Math.PI) / star.points), corners)).toBeLessThan(noise)
          expect(nearest({ x: -corner.x, y: corner.y }, corners)).toBeLessThan(noise)
        }
      }),
    )
  })

  it('has one tip straight up, its tips on the radius and its valleys on the valley radius', () => {
    fc.assert(
      fc.property(star, (star) => {
        starOutline(star).vertices.forEach(({ x, y }, index) => {
          expect(Math.hypot(x, y) / (index % 2 === 0 ? star.radius : star.valleyRadius)).toBeCloseTo(1, 12)
        })
        const [top] = starOutline(star).vertices
        expect(Math.abs(top?.x ?? Number.NaN)).toBeLessThan(1e-12 * star.radius)
        expect((top?.y ?? Number.NaN) / star.radius).toBeCloseTo(1, 12)
      }),
    )
  })

  it('closes: tip, two sides and centre make 360 degrees, and so do its centre angles', () => {
    for (const star of SHAPES.flatMap(starsOf)) {
      expect(star.tipAngle + 2 * star.sideAngle + star.centreAngle).toBeCloseTo(360, 10)
      expect(star.points * star.centreAngle).toBeCloseTo(360, 10)
      expect(star.sideAngle).toBeGreaterThan(90)
    }
  })

  it('has valleys: every corner between two tips turns inwards', () => {
    fc.assert(
      fc.property(star, (star) => {
        const corners = starOutline(star).vertices
        corners.forEach((corner, index) => {
          const [before, after] = [corners.at(index - 1), corners[(index + 1) % corners.length]]
          if (!before || !after) throw new Error('an outline is closed')
          expect(toLine(corner, [before, after]) < 0).toBe(index % 2 === 0)
        })
      }),
    )
  })

  it('is refused at the limit of its tip angle, beyond it, and at or below zero', () => {
    for (let points = FEWEST_POINTS; points <= MOST_POINTS; points++) {
      const limit = 180 - 360 / points
      expect(tipAngleLimit(points)).toBeCloseTo(limit, 12)
      for (const tip of [0, -10, limit, limit + 1, 180, Number.NaN]) {
        expect(() => solveStar(points, degrees(tip), 'radius', mm(100))).toThrow(RangeError)
      }
      expect(solveStar(points, degrees(limit - 1e-6), 'radius', mm(100)).sideAngle).toBeGreaterThan(90)
    }
  })
})

describe('an arm', () => {
  const angleAt = (at: Point, one: Point, other: Point) => {
    const turn = Math.atan2(other.y - at.y, other.x - at.x) - Math.atan2(one.y - at.y, one.x - at.x)
    return ((((turn * 180) / Math.PI) % 360) + 360) % 360
  }

  it('has its four angles where its corners are', () => {
    for (const star of SHAPES.flatMap(starsOf)) {
      const { tip, nearValley, centre, farValley } = kite(star)
      expect(angleAt(tip, nearValley, farValley)).toBeCloseTo(star.tipAngle, 8)
      expect(angleAt(nearValley, centre, tip)).toBeCloseTo(star.sideAngle, 8)
      expect(angleAt(centre, farValley, nearValley)).toBeCloseTo(star.centreAngle, 8)
      expect(angleAt(farValley, tip, centre)).toBeCloseTo(star.sideAngle, 8)
    }
  })

  it('is symmetric about the line from tip to centre', () => {
    fc.assert(
      fc.property(star, (star) => {
        const { tip, nearValley, centre, farValley } = kite(star)
        const axis = Math.atan2(centre.y - tip.y, centre.x - tip.x)
        const aligned = turned(nearValley, -axis)
        const mirrored = turned({ x: aligned.x, y: -aligned.y }, axis)
        expect(Math.hypot(mirrored.x - farValley.x, mirrored.y - farValley.y)).toBeLessThan(
          1e-12 * star.radius,
        )
      }),
    )
  })

  it('lies with one tip edge on the edge of the board, all of it above', () => {
    fc.assert(
      fc.property(star, (star) => {
        const { tip, nearValley, centre, farValley } = kite(star)
        expect([tip.x, tip.y, nearValley.y]).toEqual([0, 0, 0])
        expect(nearValley.x).toBe(star.tipEdge)
        expect(Math.min(centre.y, farValley.y)).toBeGreaterThan(0)
      }),
    )
  })

  it('keeps both its outer edges at the edge distance from the centre', () => {
    fc.assert(
      fc.property(star, (star) => {
        const { tip, nearValley, centre, farValley } = kite(star)
        expect(toLine(centre, [tip, nearValley]) / star.edgeDistance).toBeCloseTo(1, 11)
        expect(toLine(centre, [farValley, tip]) / star.edgeDistance).toBeCloseTo(1, 11)
      }),
    )
  })
})
