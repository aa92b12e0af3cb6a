import fc from 'fast-check'
import { expect, it } from 'vitest'
import { labelBox } from '../../src/drawing/bounds.js'
import { labelIsClear } from '../../src/drawing/place-label.js'
import { label } from '../../src/drawing/shapes.js'
import { point } from '../../src/geometry/point.js'

const heights = fc.double({ min: 1.8, max: 40, noNaN: true })
const words = fc.constantFrom('1', 'face up', '31.5°', 'Boathouse: backing')
const places = fc.record({
  x: fc.double({ min: -60, max: 60, noNaN: true }),
  y: fc.double({ min: -30, max: 30, noNaN: true }),
})

/** Two upright rectangles lie apart exactly when they do along one of the axes. */
it('two labels are clear of one another exactly when their boxes lie further apart than the white asked for', () => {
  const seen = { clear: 0, met: 0, within: 0 }
  fc.assert(
    fc.property(words, words, heights, heights, places, (first, second, large, small, { x, y }) => {
      const [one, other] = [
        label(first, point(0, 0), { height: large }),
        label(second, point(x, y), { height: small }),
      ]
      const [[a, , b], [c, , d]] = [labelBox(one), labelBox(other)]
      const apart = Math.max(a.x - d.x, c.x - b.x, a.y - d.y, c.y - b.y)
      fc.pre(Math.abs(apart - 1) > 1e-9)
      if (apart > 1) seen.clear++
      else seen.met++
      if (c.x > a.x && d.x < b.x && c.y > a.y && d.y < b.y) seen.within++
      expect(labelIsClear(other, [one], 1)).toBe(apart > 1)
    }),
    { numRuns: 2000, seed: 11 },
  )
  expect(Math.min(seen.clear, seen.met, seen.within)).toBeGreaterThan(50)
})
