import makerjs from 'makerjs'
import { describe, expect, it } from 'vitest'
import { type InsetShape, insetLimit, insetOutline, jointCovered } from '../../src/geometry/inset.js'
import {
  blankCorners,
  chamferChain,
  kite,
  kiteArea,
  kiteOutline,
  kiteWidth,
} from '../../src/geometry/kite.js'
import { edges, extentsOf, type Outline, signedArea } from '../../src/geometry/outline.js'
import type { Point } from '../../src/geometry/point.js'
import { type Star, starOutline } from '../../src/geometry/star.js'
import { mm } from '../../src/units/convert.js'
import { areaOf, GRID, minus, overlap, region, union } from './clipping.js'
import { betweenChains, crossing, sides, toLine, toSegment } from './distances.js'
import { SHAPES, showShape, starsOf, twoStarsOf } from './sweep.js'

/** In mm²: nothing but the slivers that the clipping grid may leave along the outline. */
const nothing = (star: Star): number => Math.max(1e-6, GRID * 2 * star.points * star.tipEdge)

const CENTRE: Point = { x: 0, y: 0 }
const PLATES: readonly InsetShape[] = ['star', 'polygon', 'disc']

/** The arm where it stands in the star: centre at the origin, tip `index` counted counter-clockwise from the top. */
const armInPlace = (star: Star, index: number): Point[] => {
  const { centre } = kite(star)
  const armAxis = Math.atan2(-centre.y, -centre.x)
  const turnBy = Math.PI / 2 + (2 * Math.PI * index) / star.points - armAxis
  const [cos, sin] = [Math.cos(turnBy), Math.sin(turnBy)]
  return kiteOutline(kite(star)).vertices.map((corner) => {
    const [x, y] = [corner.x - centre.x, corner.y - centre.y]
    return { x: x * cos - y * sin, y: x * sin + y * cos }
  })
}

const armsInPlace = (star: Star): Point[][] =>
  Array.from({ length: star.points }, (_, index) => armInPlace(star, index))

const relative = (got: number, expected: number) => Math.abs(got / expected - 1)

/** A disc as a polygon whose first corner faces the first valley: its corners on the circle, or its sides touching it. */
const discCorners = (star: Star, radius: number, where: 'within' | 'around'): Point[] => {
  const count = star.points * 12
  const reach = where === 'within' ? radius : radius / Math.cos(Math.PI / count)
  return Array.from({ length: count }, (_, index) => {
    const direction = Math.PI / 2 + Math.PI / star.points + (2 * Math.PI * index) / count
    return { x: reach * Math.cos(direction), y: reach * Math.sin(direction) }
  })
}

const isRound = (outline: Outline) => edges(outline).some(({ arc }) => arc !== undefined)

describe.each(SHAPES.map((shape) => [showShape(shape), twoStarsOf(shape)] as const))('%s', (_, stars) => {
  it('arms placed round the centre make the star, and do not overlap', () => {
    for (const star of stars) {
      const arms = armsInPlace(star).map(region)
      const whole = region(starOutline(star).vertices)
      const together = union(arms)
      expect(relative(areaOf(together), areaOf(whole))).toBeLessThan(1e-9)
      expect(relative(areaOf(together), star.points * kiteArea(star))).toBeLessThan(1e-9)
      expect(relative(areaOf(whole), signedArea(starOutline(star)))).toBeLessThan(1e-9)
      expect(areaOf(minus(together, whole))).toBeLessThan(nothing(star))
      expect(areaOf(minus(whole, together))).toBeLessThan(nothing(star))
      const [first, second] = arms
      if (!first || !second) throw new Error('a star has arms')
      expect(areaOf(overlap(first, second))).toBeLessThan(nothing(star))
    }
  })

  it('another library measures the same width, height and outline', () => {
    for (const star of stars) {
      const outline = starOutline(star).vertices
      const model = new makerjs.models.ConnectTheDots(
        true,
        outline.map(({ x, y }): [number, number] => [x, y]),
      )
      const extents = makerjs.measure.modelExtents(model)
      if (!extents) throw new Error('an outline has extents')
      expect(relative(star.across, extents.width)).toBeLessThan(1e-9)
      expect(relative(star.height, extents.height)).toBeLessThan(1e-9)
      const around = makerjs.measure.modelPathLength(model)
      expect(relative(2 * star.points * star.tipEdge, around)).toBeLessThan(1e-9)
    }
  })

  it('the arm lies inside its blank, and the blank inside the board', () => {
    for (const star of stars) {
      const arm = kiteOutline(kite(star)).vertices
      const side = star.armStrip / Math.sin((star.tipAngle * Math.PI) / 180)
      const blank = blankCorners(star, mm(side))
      expect(areaOf(minus(region(arm), region(blank)))).toBeLessThan(nothing(star))
      expect(relative(areaOf(region(blank)), side * star.armStrip)).toBeLessThan(1e-9)
      // The board's edges are y = 0 and y = board needed.
      const heights = blank.map(({ y }) => y)
      expect(Math.min(...heights)).toBe(0)
      expect(relative(Math.max(...heights), star.armStrip)).toBeLessThan(1e-12)
      // No narrower board carries the arm: it touches both edges.
      const reach = Math.max(...arm.map(({ y }) => y))
      expect(relative(reach, star.armStrip)).toBeLessThan(1e-12)
      // A rhombus: every side as long as the cut along the board.
      for (const [a, b] of sides(blank))
        expect(relative(Math.hypot(b.x - a.x, b.y - a.y), side)).toBeLessThan(1e-9)
      // No shorter blank holds the arm: cut it a thousandth shorter, and wood of the arm is gone.
      const shorter = blankCorners(star, mm(side * 0.999))
      expect(areaOf(minus(region(arm), region(shorter)))).toBeGreaterThan(nothing(star))
      expect(relative(kiteWidth(star), Math.hypot(...difference(arm[1], arm[3])))).toBeLessThan(1e-12)
    }
  })

  it.each(PLATES)('a backing of shape %s keeps its inset from the outline of the star', (shape) => {
    for (const star of stars) {
      const outline = starOutline(star).vertices
      const limit = insetLimit(star, shape)
      for (const share of [0, 0.05, 0.4, 0.95]) {
        const inset = share * limit
        const plate = insetOutline(star, shape, mm(inset))
        const corners = isRound(plate) ? discCorners(star, plateRadius(plate), 'within') : plate.vertices
        expect(areaOf(minus(region(corners), region(outline)))).toBeLessThan(nothing(star))
        expect(signedArea(plate)).toBeGreaterThan(0)
        if (share === 0) continue
        const kept = isRound(plate)
          ? Math.min(...sides(outline).map((side) => toSegment(CENTRE, side))) - plateRadius(plate)
          : betweenChains(corners, outline)
        expect(kept).toBeGreaterThanOrEqual(inset - 1e-6)
        if (!isRound(plate)) continue
        const around = discCorners(star, plateRadius(plate), 'around')
        expect(areaOf(minus(region(around), region(outline)))).toBeLessThan(nothing(star))
      }
    }
  })

  it('the star-shaped backing is the mitred inset: each edge line moved inwards by the inset', () => {
    for (const star of stars) {
      const lines = sides(starOutline(star).vertices)
      for (const share of [0.05, 0.5, 0.95]) {
        const inset = share * star.edgeDistance
        const plate = insetOutline(star, 'star', mm(inset)).vertices
        sides(plate).forEach(([from, to], index) => {
          const line = lines[index]
          if (!line) throw new Error('the plate has as many sides as the star')
          // The star runs counter-clockwise, so inside is on the left.
          expect(toLine(from, line)).toBeCloseTo(inset, 7)
          expect(toLine(to, line)).toBeCloseTo(inset, 7)
        })
        plate.forEach((corner, index) => {
          const [before, after] = [lines.at(index - 1), lines[index]]
          if (!before || !after) throw new Error('two sides meet in a corner')
          const expected = crossing(movedLeft(before, inset), movedLeft(after, inset))
          expect(Math.hypot(corner.x - expected.x, corner.y - expected.y)).toBeLessThan(1e-6)
        })
      }
    }
  })

  it('the polygon backing is the polygon through the valleys, its sides moved inwards by the inset', () => {
    for (const star of stars) {
      const valleys = starOutline(star).vertices.filter((_, index) => index % 2 === 1)
      const inset = 0.3 * insetLimit(star, 'polygon')
      const plate = insetOutline(star, 'polygon', mm(inset)).vertices
      const lines = sides(valleys)
      sides(plate).forEach(([from, to], index) => {
        const line = lines[index]
        if (!line) throw new Error('the plate has as many sides as the star has points')
        expect(toLine(from, line)).toBeCloseTo(inset, 7)
        expect(toLine(to, line)).toBeCloseTo(inset, 7)
      })
    }
  })

  it.each(PLATES)('a backing of shape %s covers as much of a joint as is reported', (shape) => {
    for (const star of stars) {
      const inset = 0.3 * insetLimit(star, shape)
      const plate = insetOutline(star, shape, mm(inset))
      const covers = jointCovered(star, shape, mm(inset))
      const onJoint = (reach: number): Point => {
        const direction = Math.PI / 2 + Math.PI / star.points
        return { x: reach * Math.cos(direction), y: reach * Math.sin(direction) }
      }
      const corners = isRound(plate) ? discCorners(star, plateRadius(plate), 'within') : plate.vertices
      const end = onJoint(covers)
      expect(Math.min(...corners.map(({ x, y }) => Math.hypot(x - end.x, y - end.y)))).toBeLessThan(1e-9)
    }
  })

  it('the chamfer begins its width inside both tip edges and ends on the joint edges', () => {
    for (const star of stars) {
      const { tip, nearValley, centre, farValley } = kite(star)
      for (const share of [0.1, 0.6]) {
        const width = share * star.edgeDistance
        const [near, corner, far] = chamferChain(star, mm(width))
        for (const place of [near, corner]) expect(toLine(place, [tip, nearValley])).toBeCloseTo(width, 8)
        for (const place of [far, corner]) expect(toLine(place, [farValley, tip])).toBeCloseTo(width, 8)
        expect(toLine(near, [nearValley, centre])).toBeCloseTo(0, 8)
        expect(toLine(far, [centre, farValley])).toBeCloseTo(0, 8)
      }
    }
  })
})

it('an inset at or beyond the limit, or below zero, is refused', () => {
  for (const star of SHAPES.flatMap(starsOf)) {
    for (const shape of PLATES) {
      const limit = insetLimit(star, shape)
      for (const inset of [limit, limit * 1.5, -0.001, Number.NaN]) {
        expect(() => insetOutline(star, shape, mm(inset))).toThrow(RangeError)
      }
    }
  }
})

const plateRadius = (plate: Outline): number => {
  const extents = extentsOf([plate])
  if (!extents) throw new Error('a plate has extents')
  return (extents.max.x - extents.min.x) / 2
}

const difference = (a: Point | undefined, b: Point | undefined): [number, number] => {
  if (!a || !b) throw new Error('a kite has four corners')
  return [b.x - a.x, b.y - a.y]
}

const movedLeft = ([a, b]: readonly [Point, Point], by: number): readonly [Point, Point] => {
  const size = Math.hypot(b.x - a.x, b.y - a.y)
  const [nx, ny] = [(-(b.y - a.y) / size) * by, ((b.x - a.x) / size) * by]
  return [
    { x: a.x + nx, y: a.y + ny },
    { x: b.x + nx, y: b.y + ny },
  ]
}
