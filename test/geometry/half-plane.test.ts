import { describe, expect, it } from 'vitest'
import { leftPart } from '../../src/geometry/half-plane.js'
import { point, polar } from '../../src/geometry/point.js'
import { radians } from '../../src/units/convert.js'
import { areaOf, minus, overlap, region } from './clipping.js'

/* Oracle: polygon-clipping, and areas that must add up. */

const HEXAGON = Array.from({ length: 6 }, (_, index) => polar(40, radians((index * Math.PI) / 3)))
const FAR = 1000

describe.each(Array.from({ length: 24 }, (_, index) => (index * Math.PI) / 12 + 0.01))(
  'a hexagon left of a line at %d rad',
  (angle) => {
    it.each([-30, -7, 0, 12, 33])('that passes %d mm beside its middle', (aside) => {
      const along = polar(1, radians(angle))
      const at = polar(aside, radians(angle + Math.PI / 2))
      const left = [-FAR, FAR].map((reach) => point(at.x + reach * along.x, at.y + reach * along.y))
      const half = [
        ...left,
        ...[...left].reverse().map(({ x, y }) => point(x - FAR * along.y, y + FAR * along.x)),
      ]
      const wanted = overlap(region(HEXAGON), region(half))
      const found = region(leftPart(HEXAGON, at, along))
      expect(areaOf(minus(wanted, found)) + areaOf(minus(found, wanted))).toBeLessThan(1e-5)
      const other = leftPart(HEXAGON, at, { x: -along.x, y: -along.y })
      expect(areaOf(found) + areaOf(region(other))).toBeCloseTo(areaOf(region(HEXAGON)), 6)
    })
  },
)

it('is the whole polygon, counter-clockwise as it came, when the line only touches a side or passes by', () => {
  const square = [point(0, 0), point(10, 0), point(10, 10), point(0, 10)]
  expect(leftPart(square, point(0, 0), point(1, 0))).toEqual(square)
  expect(leftPart(square, point(0, -5), point(3, 0))).toEqual(square)
})

it('is empty when only an edge or nothing lies to the left', () => {
  const square = [point(0, 0), point(10, 0), point(10, 10), point(0, 10)]
  expect(leftPart(square, point(0, 0), point(-1, 0))).toEqual([])
  expect(leftPart(square, point(0, 20), point(1, 0))).toEqual([])
})
