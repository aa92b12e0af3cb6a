import {
  area,
  EndType,
  FillRule,
  inflatePaths,
  JoinType,
  minkowskiSum,
  type Path64,
  union,
} from 'clipper2-ts'
import { type Point, point, scale } from '../geometry/point.js'
import type { Mm } from '../units/brand.js'
import * as maths from '../units/maths.js'
import { WRITTEN } from '../units/tolerance.js'
import { edgesBeside } from './edges-beside.js'
import type { Polygon } from './polygon.js'
import type { Steps } from './run-steps.js'

/** How much wider than the gap plates stand at most where a corner passes a corner: few edges make a quick search. */
const GAP_SLACK = 0.05

/** Clipper counts in whole numbers. */
export const PER_MM = 1 / WRITTEN

export const toPath = (polygon: Polygon): Path64 =>
  polygon.map(({ x, y }) => ({ x: Math.round(x * PER_MM), y: Math.round(y * PER_MM) }))

export const toPolygon = (path: Path64): Polygon => path.map(({ x, y }) => point(x / PER_MM, y / PER_MM))

export const halfTurned = (polygon: Polygon): Polygon => polygon.map((corner) => scale(corner, -1))

/**
 * Where the second polygon's origin must not be while the first stands at the origin: inside this polygon they overlap
 * or are closer than the gap. Its holes are not used, so it errs towards more room. Both polygons must hold the origin.
 *
 * A step is one edge that is swept, or some sweeps that are joined.
 *
 * @param gap 0 or more; round corners err outwards, so the gap is never less
 */
export function* noFit(standing: Polygon, coming: Polygon, gap: Mm): Steps<void, Polygon> {
  const [around, along] = [toPath(halfTurned(coming)), toPath(standing)]
  // Edge by edge, then in lots: sweeps cross each other so often that rounded plates of many points take many times as long at once.
  let parts: Path64[][] = []
  for (const [index, to] of along.entries()) {
    parts.push(...minkowskiSum(around, [along.at(index - 1) ?? to, to], false).map((swept) => [swept]))
    yield
  }
  parts.push([along])
  do {
    const joined: Path64[][] = []
    for (let first = 0; first < parts.length; first += LOT) {
      joined.push(union(parts.slice(first, first + LOT).flat(), FillRule.NonZero))
      yield
    }
    parts = joined
  } while (parts.length > 1)
  const touching = outerOf(parts.flat())
  if (gap === 0) return toPolygon(touching)
  const slack = GAP_SLACK * PER_MM
  const grown = gap * PER_MM + slack
  return toPolygon(outerOf(inflatePaths([touching], grown, JoinType.Round, EndType.Polygon, 2, 0.9 * slack)))
}

/** Sweeps that are joined at once. */
const LOT = 64

const outerOf = (paths: readonly Path64[]): Path64 => {
  const outer = [...paths].sort((a, b) => area(b) - area(a))[0]
  if (!outer) throw new RangeError('an empty polygon has no surroundings')
  return outer
}

/** Is the point inside, deeper than the rounding of a file? With a gap of 0 plates may overlap by that much. */
export const isWithin = (p: Point, polygon: Polygon): boolean => {
  let inside = false
  for (const [a, b] of edgesBeside(p, polygon))
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside
  return inside && isDeep(p, polygon)
}

const isDeep = (p: Point, polygon: Polygon): boolean =>
  polygon.every((b, index) => {
    const a = polygon[(index || polygon.length) - 1] as Point
    const [ex, ey] = [b.x - a.x, b.y - a.y]
    const share = ((p.x - a.x) * ex + (p.y - a.y) * ey) / (ex * ex + ey * ey || 1)
    const along = Math.max(0, Math.min(1, share))
    return maths.square(p.x - a.x - along * ex) + maths.square(p.y - a.y - along * ey) > WRITTEN * WRITTEN
  })
