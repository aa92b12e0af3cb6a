import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js'
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js'
import 'jsts/org/locationtech/jts/monkey.js'
import IndexedFacetDistance from 'jsts/org/locationtech/jts/operation/distance/IndexedFacetDistance.js'
import { edges, type Outline } from '../../src/geometry/outline.js'
import { type Point, point } from '../../src/geometry/point.js'

/*
 * Areas as JTS sees them, a library of plane geometry that knows nothing of how ours were made. Arcs become chords that
 * leave them by at most 0.001 mm.
 */

/** What JTS can tell of a shape; its own types leave out what is added to them when it loads. */
export interface Jts {
  readonly contains: (other: Jts) => boolean
  readonly covers: (other: Jts) => boolean
  readonly distance: (other: Jts) => number
  readonly union: (other: Jts) => Jts
  readonly convexHull: () => Jts
  readonly getBoundary: () => Jts
  readonly getArea: () => number
  readonly getCentroid: () => { readonly getX: () => number; readonly getY: () => number }
  readonly getEnvelopeInternal: () => {
    readonly getMinX: () => number
    readonly getMinY: () => number
    readonly getMaxX: () => number
    readonly getMaxY: () => number
  }
}

const FACTORY = new GeometryFactory()
const SAGITTA = 0.001

const cornersOf = (outline: Outline): Point[] =>
  edges(outline).flatMap(({ from, arc }) => {
    if (!arc) return [point(from.x, from.y)]
    const count = Math.ceil(
      Math.abs(arc.sweep) / (2 * Math.acos(1 - SAGITTA / Math.max(arc.radius, SAGITTA))),
    )
    return Array.from({ length: count }, (_, index) => {
      const angle = arc.start + (arc.sweep * index) / count
      return point(arc.centre.x + arc.radius * Math.cos(angle), arc.centre.y + arc.radius * Math.sin(angle))
    })
  })

const ringOf = (corners: readonly Point[]) => {
  const [first] = corners
  return FACTORY.createLinearRing(
    [...corners, ...(first ? [first] : [])].map(({ x, y }) => new Coordinate(x, y)),
  )
}

export const area = (outer: Outline, holes: readonly Outline[] = []): Jts =>
  FACTORY.createPolygon(
    ringOf(cornersOf(outer)),
    holes.map((hole) => ringOf(cornersOf(hole))),
  )

export const place = ({ x, y }: Point): Jts => FACTORY.createPoint(new Coordinate(x, y))

export const stretch = (from: Point, to: Point): Jts =>
  FACTORY.createLineString([from, to].map(({ x, y }) => new Coordinate(x, y)))

/** From one area to others: by JTS's tree of their edges, which is as exact as its plain distance and far faster. */
export const distancesFrom = (from: Jts): ((to: Jts) => number) => {
  const edgesOf: { readonly distance: (to: Jts) => number } = new IndexedFacetDistance(from)
  // The tree knows edges only: of one area within the other they would be apart.
  return (to) => (from.covers(to) || to.covers(from) ? 0 : edgesOf.distance(to))
}
