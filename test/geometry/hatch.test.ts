import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { hatch } from '../../src/geometry/hatch.js'
import type { Point } from '../../src/geometry/point.js'
import { radians } from '../../src/units/convert.js'
import { areaOf, region } from './clipping.js'
import { isInside, sides } from './distances.js'

fc.configureGlobal({ seed: 20 })

/** Simple polygons: corners round a centre, in order, at any distance; not convex as a rule. */
const polygon = fc
  .record({
    reaches: fc.array(fc.double({ min: 20, max: 200, noNaN: true }), { minLength: 3, maxLength: 12 }),
    x: fc.double({ min: -300, max: 300, noNaN: true }),
    y: fc.double({ min: -300, max: 300, noNaN: true }),
  })
  .map(({ reaches, x, y }): Point[] =>
    reaches.map((reach, index) => {
      const facing = (2 * Math.PI * index) / reaches.length
      return { x: x + reach * Math.cos(facing), y: y + reach * Math.sin(facing) }
    }),
  )
const facing = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true })
const spacing = fc.double({ min: 0.5, max: 6, noNaN: true })

const lengthOf = ([from, to]: readonly [Point, Point]) => Math.hypot(to.x - from.x, to.y - from.y)

describe('hatch', () => {
  it('strokes times spacing make the area of the polygon', () => {
    fc.assert(
      fc.property(polygon, facing, spacing, (corners, facing, spacing) => {
        const strokes = hatch(corners, radians(facing), spacing)
        const stroked = strokes.reduce((sum, stroke) => sum + lengthOf(stroke) * spacing, 0)
        // A sum over rows misses the integral by at most a row for every turn of the width, which over the whole
        // height changes no more than the outline is long; strokes shorter than a quarter row are left out.
        const around = sides(corners).reduce((sum, side) => sum + lengthOf(side), 0)
        const leftOut = ((corners.length / 2) * (around / spacing) * spacing * spacing) / 4
        expect(Math.abs(stroked - areaOf(region(corners)))).toBeLessThan(spacing * around + leftOut)
      }),
    )
  })

  it('and the finer the rows, the better: a hundredth of the area at a fortieth of a millimetre', () => {
    fc.assert(
      fc.property(polygon, facing, (corners, facing) => {
        const strokes = hatch(corners, radians(facing), 0.025)
        const stroked = strokes.reduce((sum, stroke) => sum + lengthOf(stroke) * 0.025, 0)
        expect(stroked / areaOf(region(corners))).toBeCloseTo(1, 2)
      }),
      { numRuns: 20 },
    )
  })

  it('every stroke lies inside, ends on the outline, and runs the asked way', () => {
    fc.assert(
      fc.property(polygon, facing, spacing, (corners, facing, spacing) => {
        for (const stroke of hatch(corners, radians(facing), spacing)) {
          const [from, to] = stroke
          for (const t of [0.02, 0.25, 0.5, 0.75, 0.98]) {
            const along = { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t }
            expect(isInside(along, corners)).toBe(true)
          }
          const [justBefore, justAfter] = [-0.001, 1.001].map((t) => ({
            x: from.x + (to.x - from.x) * t,
            y: from.y + (to.y - from.y) * t,
          }))
          if (!justBefore || !justAfter) throw new Error('two places were made')
          expect(isInside(justBefore, corners) && isInside(justAfter, corners)).toBe(false)
          const across = (to.x - from.x) * Math.sin(facing) - (to.y - from.y) * Math.cos(facing)
          expect(Math.abs(across)).toBeLessThan(1e-9)
        }
      }),
    )
  })

  it('rows lie on multiples of the spacing, so that neighbours are hatched in step', () => {
    fc.assert(
      fc.property(polygon, facing, spacing, (corners, facing, spacing) => {
        for (const [from] of hatch(corners, radians(facing), spacing)) {
          const row = (from.y * Math.cos(facing) - from.x * Math.sin(facing)) / spacing
          expect(Math.abs(row - Math.round(row))).toBeLessThan(1e-9)
        }
      }),
    )
  })
})
