import { expect, it } from 'vitest'
import { ring } from '../../src/drawing/shapes.js'
import { shapeSides } from '../../src/drawing/sides.js'
import { point } from '../../src/geometry/point.js'

it.each([0.5, 3, 10, 60, 250, 1000, 5000])('sides stay within 0.05 mm of a circle of %s mm', (radius) => {
  for (const [from, to] of shapeSides(ring('PATTERN', point(3, -2), radius))) {
    // A chord is furthest from its circle in its middle.
    const inside = radius - Math.hypot((from.x + to.x) / 2 - 3, (from.y + to.y) / 2 + 2)
    expect(inside).toBeGreaterThanOrEqual(0)
    expect(inside).toBeLessThanOrEqual(0.05 + 1e-9)
  }
})
