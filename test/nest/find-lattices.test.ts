import { expect, it } from 'vitest'
import { closedOutline, signedArea } from '../../src/geometry/outline.js'
import { solveStar, starOutline } from '../../src/geometry/star.js'
import { findLattices } from '../../src/nest/find-lattices.js'
import { areaPerPlate, surroundings } from '../../src/nest/lattice.js'
import type { Polygon } from '../../src/nest/polygon.js'
import { lastOf } from '../../src/nest/run-steps.js'
import { degrees, mm } from '../../src/units/convert.js'

const star = (points: number, tipAngle: number): Polygon =>
  starOutline(solveStar(points, degrees(tipAngle), 'radius', mm(100))).vertices

const PENTAGON: Polygon = Array.from({ length: 5 }, (_, index) => ({
  x: 100 * Math.cos((index * 2 * Math.PI) / 5),
  y: 100 * Math.sin((index * 2 * Math.PI) / 5),
}))

const density = (polygon: Polygon): number => {
  const [best] = lastOf(findLattices(lastOf(surroundings(polygon, mm(0)))))
  return best ? signedArea(closedOutline(polygon)) / areaPerPlate(best) : 0
}

it('packs regular pentagons at (5 - √5) / 3, proved optimal (Hales and Kusner, 2016)', () => {
  expect(density(PENTAGON)).toBeCloseTo((5 - Math.sqrt(5)) / 3, 5)
})

// Best known to us, no published figure.
it.each([
  [5, 45, 0.749],
  [5, 36, 0.6909],
  [6, 60, 6 / 7 - 1e-6],
])('packs %i points of %i° at %f or more', (points, tipAngle, least) => {
  expect(density(star(points, tipAngle))).toBeGreaterThanOrEqual(least)
})
