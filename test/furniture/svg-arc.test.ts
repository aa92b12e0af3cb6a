import { describe, expect, it } from 'vitest'
import { arcCurves, type Curve } from '../../src/furniture/svg-arc.js'
import { point } from '../../src/geometry/point.js'

/** Spots along the curves, by the definition of a cubic Bezier. */
const spotsOn = (start: { x: number; y: number }, curves: readonly Curve[]) =>
  curves.flatMap((curve, index) => {
    const from = index === 0 ? start : (curves[index - 1]?.at ?? start)
    return Array.from({ length: 21 }, (_, step) => {
      const [t, u] = [step / 20, 1 - step / 20]
      const at = (axis: 'x' | 'y'): number =>
        u ** 3 * from[axis] +
        3 * u * u * t * curve.from[axis] +
        3 * u * t * t * curve.toward[axis] +
        t ** 3 * curve.at[axis]
      return point(at('x'), at('y'))
    })
  })

describe('arcs', () => {
  // Of the four arcs of radius 5 from (0,0) to (6,0): centres (3, 4) and (3, -4); y down, sweep 1 turns clockwise on
  // the page (SVG 2, 9.3.8).
  it.each([
    [false, true, 4, -1],
    [false, false, -4, 1],
    [true, true, -4, -9],
    [true, false, 4, 9],
  ])(
    'large %s, sweep %s: on the circle around (3, %i), farthest at y = %i',
    (large, sweep, centre, farthest) => {
      const start = point(0, 0)
      const curves = arcCurves(start, { radii: point(5, 5), turned: 30, large, sweep, to: point(6, 0) })
      const spots = spotsOn(start, curves)
      for (const { x, y } of spots) expect(Math.abs(Math.hypot(x - 3, y - centre) - 5)).toBeLessThan(1e-6)
      const ys = spots.map(({ y }) => y)
      const reached = farthest < 0 ? Math.min(...ys) : Math.max(...ys)
      expect(Math.abs(reached - farthest)).toBeLessThan(0.01)
      expect(curves.at(-1)?.at).toEqual(point(6, 0))
    },
  )

  it('an arc of the largest piece is true to 1e-5 mm', () => {
    const curves = arcCurves(point(0, 0), {
      radii: point(51, 51),
      turned: 0,
      large: false,
      sweep: true,
      to: point(102, 0),
    })
    for (const { x, y } of spotsOn(point(0, 0), curves))
      expect(Math.abs(Math.hypot(x - 51, y) - 51)).toBeLessThan(1e-5)
  })

  it('turned ellipses fulfil their equation', () => {
    const [start, to] = [point(1, 2), point(4, 3)]
    const curves = arcCurves(start, { radii: point(4, 2), turned: 25, large: true, sweep: false, to })
    // Five spots determine a conic; here the known axes leave the centre, found from the ends by the equation itself.
    const cos = Math.cos((25 * Math.PI) / 180)
    const sin = Math.sin((25 * Math.PI) / 180)
    const own = ({ x, y }: { x: number; y: number }) =>
      point((x * cos + y * sin) / 4, (y * cos - x * sin) / 2)
    const spots = spotsOn(start, curves).map(own)
    const [a, b, c] = [spots[0], spots[30], spots[60]]
    if (!a || !b || !c) throw new Error('an arc of many spots')
    // In these coordinates it is a circle of radius 1: its centre from three spots (circumcentre).
    const d = 2 * (a.x * (b.y - c.y) + b.x * (c.y - a.y) + c.x * (a.y - b.y))
    const [a2, b2, c2] = [a, b, c].map(({ x, y }) => x * x + y * y) as [number, number, number]
    const centre = point(
      (a2 * (b.y - c.y) + b2 * (c.y - a.y) + c2 * (a.y - b.y)) / d,
      (a2 * (c.x - b.x) + b2 * (a.x - c.x) + c2 * (b.x - a.x)) / d,
    )
    for (const { x, y } of spots) expect(Math.hypot(x - centre.x, y - centre.y)).toBeCloseTo(1, 6)
  })

  it('radii too small are scaled up until the ends are a diameter apart (SVG 2, B.2.5)', () => {
    const curves = arcCurves(point(0, 0), {
      radii: point(1, 1),
      turned: 0,
      large: false,
      sweep: true,
      to: point(8, 0),
    })
    for (const { x, y } of spotsOn(point(0, 0), curves))
      expect(Math.abs(Math.hypot(x - 4, y) - 4)).toBeLessThan(1e-6)
  })

  it('a radius of 0 is a straight line, and an arc to where it starts is nothing', () => {
    expect(
      arcCurves(point(0, 0), { radii: point(0, 5), turned: 0, large: false, sweep: true, to: point(8, 0) }),
    ).toEqual([])
    expect(
      arcCurves(point(1, 1), { radii: point(5, 5), turned: 0, large: true, sweep: true, to: point(1, 1) }),
    ).toEqual([])
  })
})
