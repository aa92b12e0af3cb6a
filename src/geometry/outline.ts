import type { Mm, Radians } from '../units/brand.js'
import { mm } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { SAME_POINT } from '../units/tolerance.js'
import { add, distance, type Point, point, turn } from './point.js'

/**
 * A corner of an outline. `bulge` shapes the edge that leaves it: tan(included angle / 4), positive when the arc
 * turns counter-clockwise, 0 or absent when the edge is straight (the convention of DXF, group code 42).
 */
export interface Vertex extends Point {
  readonly bulge?: number
}

/** A chain of straight edges and arcs; the last vertex joins the first when `closed`. */
export interface Outline {
  readonly vertices: readonly Vertex[]
  readonly closed: boolean
}

/** A straight or circular edge, resolved from two neighbouring vertices. */
export interface Edge {
  readonly from: Point
  readonly to: Point
  readonly arc?: Arc
}

/** `sweep` is signed: counter-clockwise positive. Angles in radians from +x. */
export interface Arc {
  readonly centre: Point
  readonly radius: number
  readonly start: number
  readonly sweep: number
}

export interface Extents {
  readonly min: Point
  readonly max: Point
}

export const closedOutline = (vertices: readonly Vertex[]): Outline => ({ vertices, closed: true })

/** Upright, counter-clockwise from its lower left corner. */
export const rectangle = (left: number, bottom: number, right: number, top: number): Outline =>
  closedOutline([point(left, bottom), point(right, bottom), point(right, top), point(left, top)])

/** A full circle, counter-clockwise, as two half-turn arcs. */
export const circle = (centre: Point, radius: number): Outline =>
  closedOutline([
    { x: centre.x + radius, y: centre.y, bulge: 1 },
    { x: centre.x - radius, y: centre.y, bulge: 1 },
  ])

export const edges = ({ vertices, closed }: Outline): Edge[] => {
  const found: Edge[] = []
  const count = closed ? vertices.length : vertices.length - 1
  for (let index = 0; index < count; index++) {
    const from = vertices[index]
    const to = vertices[(index + 1) % vertices.length]
    if (!from || !to) continue
    const bulge = from.bulge ?? 0
    // Does the arc rise at all above its chord?
    const isArc = bulge !== 0 && Math.abs(bulge) * distance(from, to) > 2 * SAME_POINT
    found.push(isArc ? { from, to, arc: arcOf(from, to, bulge) } : { from, to })
  }
  return found
}

/** The arc from one vertex to the next; AutoCAD DXF reference: bulge = tan(included angle / 4). */
const arcOf = (from: Point, to: Point, bulge: number): Arc => {
  const half = point((to.x - from.x) / 2, (to.y - from.y) / 2)
  const towardCentre = (1 - bulge * bulge) / (2 * bulge)
  const centre = point(from.x + half.x - half.y * towardCentre, from.y + half.y + half.x * towardCentre)
  return {
    centre,
    radius: maths.hypot(from.x - centre.x, from.y - centre.y),
    start: maths.atan2(from.y - centre.y, from.x - centre.x),
    sweep: 4 * maths.atan(bulge),
  }
}

/** Signed area in mm²: positive when the closed outline runs counter-clockwise. Arcs are exact. */
export const signedArea = (outline: Outline): number => {
  let area = 0
  for (const { from, to, arc } of edges(outline)) {
    area += (from.x * to.y - to.x * from.y) / 2
    if (arc) area += (arc.radius * arc.radius * (arc.sweep - maths.sin(arc.sweep))) / 2
  }
  return area
}

/** Length in mm of all edges. Arcs are exact. */
export const edgeLength = (outline: Outline): Mm =>
  mm(
    edges(outline).reduce(
      (sum, { from, to, arc }) => sum + (arc ? arc.radius * Math.abs(arc.sweep) : distance(from, to)),
      0,
    ),
  )

/** Have two upright boxes a point in common? */
export const boxesMeet = (a: Extents, b: Extents): boolean =>
  a.min.x <= b.max.x && a.max.x >= b.min.x && a.min.y <= b.max.y && a.max.y >= b.min.y

/** The smallest upright box around the outlines; arcs are exact. Undefined when there is no vertex. */
export const extentsOf = (outlines: Iterable<Outline>): Extents | undefined => {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity]
  const include = ({ x, y }: Point) => {
    left = Math.min(left, x)
    right = Math.max(right, x)
    bottom = Math.min(bottom, y)
    top = Math.max(top, y)
  }
  for (const outline of outlines) {
    outline.vertices.forEach(include)
    for (const { arc } of edges(outline)) if (arc) arcExtremes(arc).forEach(include)
  }
  return left <= right ? { min: point(left, bottom), max: point(right, top) } : undefined
}

/** The same for outlines that have a vertex; a programmer's mistake when they have none. */
export const boxOf = (outlines: Iterable<Outline>): Extents => {
  const extents = extentsOf(outlines)
  if (!extents) throw new RangeError('an empty drawing has no extents')
  return extents
}

/** Width and height of the box around one outline. */
export const outlineSize = (outline: Outline): { readonly across: Mm; readonly height: Mm } => {
  const { min, max } = boxOf([outline])
  return { across: mm(max.x - min.x), height: mm(max.y - min.y) }
}

/** The points of an arc that face +x, +y, -x and -y, where the arc passes them. */
const arcExtremes = ({ centre, radius, start, sweep }: Arc): Point[] =>
  [0, 1, 2, 3].flatMap((quarter) => {
    const fromStart = (quarter * Math.PI) / 2 - start
    const along = (((Math.sign(sweep) * fromStart) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI)
    if (along > Math.abs(sweep)) return []
    const facing = [point(radius, 0), point(0, radius), point(-radius, 0), point(0, -radius)][quarter]
    return facing ? [point(centre.x + facing.x, centre.y + facing.y)] : []
  })

/** The outline moved by a vector. */
export const moved = (outline: Outline, by: Point): Outline => mapped(outline, (at) => add(at, by))

/** The outline turned counter-clockwise about the origin. */
export const turnedOutline = (outline: Outline, by: Radians): Outline => mapped(outline, (at) => turn(at, by))

/** The outline with every vertex elsewhere; arcs stay what they are, so the map keeps shapes and does not mirror. */
export const mapped = ({ vertices, closed }: Outline, to: (at: Point) => Point): Outline => ({
  closed,
  vertices: vertices.map((vertex) => ({ ...vertex, ...to(vertex) })),
})
