import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  circle,
  closedOutline,
  type Edge,
  edges,
  extentsOf,
  moved,
  type Outline,
  signedArea,
  type Vertex,
} from '../../src/geometry/outline.js'
import { add, type Point, point, turn } from '../../src/geometry/point.js'
import { radians } from '../../src/units/convert.js'

fc.configureGlobal({ seed: 20 })

const coordinate = fc.double({ min: -500, max: 500, noNaN: true })
const place = fc.record({ x: coordinate, y: coordinate })
const size = fc.double({ min: 1, max: 400, noNaN: true })
/** Bulges of arcs from 1° to 340°, either way. */
const bulge = fc
  .tuple(fc.double({ min: 1, max: 340, noNaN: true }), fc.boolean())
  .map(([included, clockwise]) => Math.tan((included * Math.PI) / 720) * (clockwise ? -1 : 1))
const apart = fc.tuple(place, place).filter(([a, b]) => Math.hypot(b.x - a.x, b.y - a.y) > 1)

const onlyEdge = (outline: Outline): Edge => {
  const [edge, ...more] = edges(outline)
  if (!edge || more.length > 0) throw new Error('one edge was asked for')
  return edge
}

const arcBetween = (from: Point, to: Point, bulge: number) => {
  const { arc } = onlyEdge({ vertices: [{ ...from, bulge }, to], closed: false })
  if (!arc) throw new Error('a bulge makes an arc')
  return arc
}

/** Along the edge, straight or curved, without the code's extremes or areas. */
const sampled = (outline: Outline, count: number): Point[] =>
  edges(outline).flatMap(({ from, to, arc }) =>
    Array.from({ length: count }, (_, step) => {
      const t = step / count
      if (!arc) return point(from.x + (to.x - from.x) * t, from.y + (to.y - from.y) * t)
      const facing = arc.start + arc.sweep * t
      return point(arc.centre.x + arc.radius * Math.cos(facing), arc.centre.y + arc.radius * Math.sin(facing))
    }),
  )

describe('a bulge', () => {
  // Source: AutoCAD DXF reference, group code 42 (bulge = tan of a quarter of the included angle; 1 is a semicircle).
  it.each([
    [90, 0.41421356237309503],
    [180, 1],
    [60, 0.2679491924311227],
  ])('an included angle of %i degrees is a bulge of %f', (included, bulge) => {
    const arc = arcBetween(point(0, 0), point(100, 0), bulge)
    expect((arc.sweep * 180) / Math.PI).toBeCloseTo(included, 10)
    expect((arcBetween(point(0, 0), point(100, 0), -bulge).sweep * 180) / Math.PI).toBeCloseTo(-included, 10)
  })

  // Same source: the sagitta is |bulge| times half the chord, the radius chord (1 + b^2) / (4 |b|).
  it('has the sagitta and the radius of the reference', () => {
    fc.assert(
      fc.property(apart, bulge, ([from, to], bulge) => {
        const chord = Math.hypot(to.x - from.x, to.y - from.y)
        const { centre, radius, start, sweep } = arcBetween(from, to, bulge)
        expect(radius / ((chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge)))).toBeCloseTo(1, 9)
        const middle = point(
          centre.x + radius * Math.cos(start + sweep / 2),
          centre.y + radius * Math.sin(start + sweep / 2),
        )
        const rise = Math.hypot(middle.x - (from.x + to.x) / 2, middle.y - (from.y + to.y) / 2)
        expect(rise / (Math.abs(bulge) * (chord / 2))).toBeCloseTo(1, 6)
      }),
    )
  })

  it('begins and ends on its corners, and a positive one turns counter-clockwise, to the right of its chord', () => {
    fc.assert(
      fc.property(apart, bulge, ([from, to], bulge) => {
        const { centre, radius, start, sweep } = arcBetween(from, to, bulge)
        const at = (facing: number) =>
          point(centre.x + radius * Math.cos(facing), centre.y + radius * Math.sin(facing))
        const reach = Math.max(1, radius)
        expect(Math.hypot(at(start).x - from.x, at(start).y - from.y) / reach).toBeLessThan(1e-9)
        expect(Math.hypot(at(start + sweep).x - to.x, at(start + sweep).y - to.y) / reach).toBeLessThan(1e-9)
        const middle = at(start + sweep / 2)
        const side = (to.x - from.x) * (middle.y - from.y) - (to.y - from.y) * (middle.x - from.x)
        expect(Math.sign(side)).toBe(-Math.sign(bulge))
      }),
    )
  })
})

describe('signedArea', () => {
  it('of a circle is pi r squared', () => {
    fc.assert(
      fc.property(place, size, (centre, radius) => {
        expect(signedArea(circle(centre, radius)) / (Math.PI * radius * radius)).toBeCloseTo(1, 8)
      }),
    )
  })

  it('of a half disc is half of that, either way round', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0, max: 7, noNaN: true }), place, (radius, facing, centre) => {
        const ends = [point(radius, 0), point(-radius, 0)].map((end) =>
          add(turn(end, radians(facing)), centre),
        )
        const [from, to] = ends as [Point, Point]
        const half = (Math.PI * radius * radius) / 2
        expect(signedArea(closedOutline([{ ...from, bulge: 1 }, to])) / half).toBeCloseTo(1, 8)
        expect(signedArea(closedOutline([{ ...from, bulge: -1 }, to])) / half).toBeCloseTo(-1, 8)
      }),
    )
  })

  it('of a square with its sides bulging out or in is the square with four segments more or less', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 1, max: 89, noNaN: true }), (side, included) => {
        const bulge = Math.tan((included * Math.PI) / 720)
        const angle = (included * Math.PI) / 180
        const radius = side / 2 / Math.sin(angle / 2)
        const segment = (radius * radius * (angle - Math.sin(angle))) / 2
        const square = (bulge: number): Vertex[] =>
          [point(0, 0), point(side, 0), point(side, side), point(0, side)].map((corner) => ({
            ...corner,
            bulge,
          }))
        expect(signedArea(closedOutline(square(bulge))) / (side * side + 4 * segment)).toBeCloseTo(1, 9)
        expect(signedArea(closedOutline(square(-bulge))) / (side * side - 4 * segment)).toBeCloseTo(1, 9)
      }),
    )
  })

  it('changes its sign and nothing else when the outline is run backwards', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ x: coordinate, y: coordinate, bulge }), { minLength: 3, maxLength: 9 }),
        (corners) => {
          const outline = closedOutline(corners)
          // The edge that left a corner now arrives there, turning the other way.
          const backwards = corners.map((_, index) => {
            const corner = corners[corners.length - 1 - index]
            const leaving = corners[(2 * corners.length - 2 - index) % corners.length]
            if (!corner || !leaving) throw new Error('as many corners as before')
            return { x: corner.x, y: corner.y, bulge: -leaving.bulge }
          })
          const scale = edges(outline).reduce((sum, { arc }) => sum + (arc ? arc.radius ** 2 : 0), 1)
          expect((signedArea(closedOutline(backwards)) + signedArea(outline)) / scale).toBeCloseTo(0, 9)
        },
      ),
    )
  })

  it('agrees with the shoelace sum over many points along the edges', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ x: coordinate, y: coordinate, bulge }), { minLength: 3, maxLength: 6 }),
        (corners) => {
          const outline = closedOutline(corners)
          const dots = sampled(outline, 2000)
          const twice = dots.reduce((sum, dot, index) => {
            const next = dots[(index + 1) % dots.length] ?? dot
            return sum + dot.x * next.y - next.x * dot.y
          }, 0)
          const scale = edges(outline).reduce((sum, { arc }) => sum + (arc ? arc.radius ** 2 : 0), 1)
          // Each chord leaves out sweep^3 r^2 / 12 / 2000^2 of its arc's segment: at most 5e-6 r^2.
          expect(Math.abs(twice / 2 - signedArea(outline)) / scale).toBeLessThan(5e-6)
        },
      ),
      { numRuns: 60 },
    )
  })
})

describe('extentsOf', () => {
  it('is as large as many points along the edges say, and no larger', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ x: coordinate, y: coordinate, bulge }), { minLength: 2, maxLength: 6 }),
        (corners) => {
          const outline = closedOutline(corners)
          const extents = extentsOf([outline])
          if (!extents) throw new Error('an outline with corners has extents')
          const count = 2000
          const dots = sampled(outline, count)
          const [xs, ys] = [dots.map(({ x }) => x), dots.map(({ y }) => y)]
          const largest = Math.max(1, ...edges(outline).map(({ arc }) => arc?.radius ?? 0))
          // An extreme lies at most half a step from a dot: r (1 - cos(pi / count)).
          const reach = largest * (1 - Math.cos(Math.PI / count)) + 1e-6
          for (const [exact, seen] of [
            [extents.max.x, Math.max(...xs)],
            [extents.max.y, Math.max(...ys)],
            [-extents.min.x, -Math.min(...xs)],
            [-extents.min.y, -Math.min(...ys)],
          ] as const) {
            expect(exact - seen).toBeGreaterThan(-1e-6)
            expect(exact - seen).toBeLessThan(reach)
          }
        },
      ),
      { numRuns: 100 },
    )
  })

  it('of a circle is its diameter, wherever its corners stand', () => {
    fc.assert(
      fc.property(place, size, fc.double({ min: 0, max: 7, noNaN: true }), (centre, radius, facing) => {
        const turned = closedOutline(
          circle(point(0, 0), radius).vertices.map((corner) => ({
            ...add(turn(corner, radians(facing)), centre),
            bulge: 1,
          })),
        )
        for (const outline of [circle(centre, radius), turned]) {
          const extents = extentsOf([outline])
          expect(extents?.min.x).toBeCloseTo(centre.x - radius, 6)
          expect(extents?.max.x).toBeCloseTo(centre.x + radius, 6)
          expect(extents?.min.y).toBeCloseTo(centre.y - radius, 6)
          expect(extents?.max.y).toBeCloseTo(centre.y + radius, 6)
        }
      }),
    )
  })

  it('holds all outlines, moves with them, and of none there is none', () => {
    const [one, other] = [circle(point(0, 0), 10), circle(point(100, 50), 5)]
    expect(extentsOf([one, other])).toEqual({ min: { x: -10, y: -10 }, max: { x: 105, y: 55 } })
    expect(extentsOf([moved(one, point(3, -4))])).toEqual({ min: { x: -7, y: -14 }, max: { x: 13, y: 6 } })
    expect(extentsOf([])).toBeUndefined()
    expect(extentsOf([closedOutline([])])).toBeUndefined()
  })
})

it('an open outline has no edge from its last corner back to the first', () => {
  const vertices = [point(0, 0), point(10, 0), point(10, 10)]
  expect(edges({ vertices, closed: true })).toHaveLength(3)
  expect(edges({ vertices, closed: false })).toHaveLength(2)
})

it('a full circle is two arcs, half a turn each', () => {
  expect(circle(point(0, 0), 2).vertices).toHaveLength(2)
})
