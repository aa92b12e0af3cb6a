import { describe, expect, it } from 'vitest'
import { solveStar } from '../../src/geometry/star.js'
import { hungCorners, roomBelowSlopes, type Wall } from '../../src/page/wall.js'
import { degrees, mm } from '../../src/units/convert.js'

/** Its slopes are 45°: the lines |x| + y = 2000. */
const GABLE: Wall = { width: mm(2000), height: mm(1000), ridge: mm(2000) }
const RIDGE = mm(2000)

/* The distance of a point from the line x + y = c is |x + y - c| / √2: analytic geometry of any school book. */

describe('a star on a gable', () => {
  it('is as far from the slopes as its nearest corner, wherever that is', () => {
    const star = solveStar(4, degrees(30), 'radius', mm(400))
    // Its tips stand at (0, 1400) and (400, 1000): both 600 / √2 below a slope.
    expect(roomBelowSlopes(hungCorners(star, GABLE), GABLE, RIDGE)).toBeCloseTo(600 / Math.SQRT2, 9)
    const steep: Wall = { width: mm(600), height: mm(1000), ridge: RIDGE }
    // Narrower, the tips at the sides come first: the line through (300, 1000) and (0, 2000), and (400, 1000) over it.
    expect(roomBelowSlopes(hungCorners(star, steep), steep, RIDGE)).toBeCloseTo(
      -1e5 / Math.hypot(300, 1000),
      9,
    )
  })

  it('stands over a slope although it is lower than the ridge and narrower than the wall', () => {
    const star = solveStar(8, degrees(40), 'radius', mm(900))
    expect(star.height).toBeLessThan(2000)
    expect(star.across).toBeLessThan(2000)
    expect(roomBelowSlopes(hungCorners(star, GABLE), GABLE, RIDGE)).toBeLessThan(0)
  })

  it('hangs by its whole height, not by where its arms meet', () => {
    const star = solveStar(5, degrees(36), 'radius', mm(100))
    const ys = hungCorners(star, GABLE).map(({ y }) => y)
    expect(Math.max(...ys) - 1000).toBeCloseTo(1000 - Math.min(...ys), 9)
    // Five points reach cos 36° of the radius below their middle (regular pentagram).
    expect(Math.max(...ys)).toBeCloseTo(1000 + 50 * (1 + Math.cos(Math.PI / 5)), 9)
  })
})
