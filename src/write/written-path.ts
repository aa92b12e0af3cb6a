import type { LayerName } from '../drawing/layers.js'
import type { Drawing, Path } from '../drawing/model.js'
import { distance } from '../geometry/point.js'
import * as maths from '../units/maths.js'
import { SAME_POINT, WHOLE, WRITTEN } from '../units/tolerance.js'
import { writtenLength } from './number.js'

/** A vertex on the grid of written digits; its edge is straight when `bulge` is 0. */
export interface WrittenVertex {
  readonly x: number
  readonly y: number
  readonly bulge: number
}

/** A path as the files hold it; see {@link writtenPaths}. */
export interface WrittenPath extends Path {
  readonly vertices: readonly WrittenVertex[]
}

/**
 * The paths of one layer as SVG and DXF hold them, in the drawing's order: on the grid of written digits, without
 * edges of no length, without paths that are a single point, and each path once only, so that nothing is cut twice.
 */
export const writtenPaths = ({ shapes }: Drawing, layer: LayerName): WrittenPath[] => {
  const seen = new Set<string>()
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'path' || shape.layer !== layer) return []
    const path = writtenPath(shape)
    if (path.vertices.length < 2) return []
    const key = identity(path)
    if (seen.has(key)) return []
    seen.add(key)
    return [path]
  })
}

const writtenPath = (path: Path): WrittenPath => {
  const halved = path.vertices.flatMap((vertex, index) => {
    const last = index === path.vertices.length - 1
    const next = path.vertices[last ? 0 : index + 1] ?? vertex
    const bulge = last && !path.closed ? 0 : (vertex.bulge ?? 0)
    return halves({ x: vertex.x, y: vertex.y, bulge }, next)
  })
  const vertices = straightened(distinct(halved, path.closed), path.closed)
  return { ...path, vertices, closed: path.closed && !runsBack(vertices) }
}

/**
 * More than half a turn? Then two arcs of half the sweep: the ends of such an arc may lie so close together that
 * their last written digit would shift the whole of it. What is half a turn but for rounding noise is exactly that.
 */
const halves = (from: WrittenVertex, to: { readonly x: number; readonly y: number }): WrittenVertex[] => {
  const { bulge } = from
  if (Math.abs(Math.abs(bulge) - 1) < WHOLE) return [{ ...from, bulge: Math.sign(bulge) }]
  if (Math.abs(bulge) < 1) return [from]
  const half = bulge / (1 + maths.hypot(1, bulge))
  const middle = {
    x: (from.x + to.x + bulge * (to.y - from.y)) / 2,
    y: (from.y + to.y - bulge * (to.x - from.x)) / 2,
  }
  return [
    { ...from, bulge: half },
    { ...middle, bulge: half },
  ]
}

/** Without vertices that are one point with the vertex before them, exactly or as written. */
const distinct = (vertices: readonly WrittenVertex[], closed: boolean): WrittenVertex[] => {
  const kept: { exact: WrittenVertex; written: WrittenVertex }[] = []
  const same = (a: (typeof kept)[number], b: (typeof kept)[number]): boolean =>
    distance(a.exact, b.exact) < SAME_POINT || (a.written.x === b.written.x && a.written.y === b.written.y)
  for (const exact of vertices) {
    const next = { exact, written: { ...exact, x: writtenLength(exact.x), y: writtenLength(exact.y) } }
    const before = kept.at(-1)
    // The edge between the two has no length; the one that leaves the second takes its place.
    if (before && same(before, next)) before.written = { ...before.written, bulge: exact.bulge }
    else kept.push(next)
  }
  const [first, last] = [kept[0], kept.at(-1)]
  if (closed && first && last && first !== last && same(first, last)) kept.pop()
  return kept.map(({ written }) => written)
}

/** An arc that leaves its chord by less than the last written digit is a straight edge. */
const straightened = (vertices: readonly WrittenVertex[], closed: boolean): WrittenVertex[] =>
  vertices.map((vertex, index) => {
    const next = vertices[index + 1] ?? (closed ? vertices[0] : undefined)
    const rise = next ? (Math.abs(vertex.bulge) * distance(vertex, next)) / 2 : 0
    return rise < WRITTEN / 2 ? { ...vertex, bulge: 0 } : vertex
  })

/** Does a closed path return along its only edge? */
const runsBack = ([first, second, ...more]: readonly WrittenVertex[]): boolean =>
  first !== undefined && second !== undefined && more.length === 0 && first.bulge === -second.bulge

/** Equal for equal paths; a straight stroke equals itself drawn the other way. */
const identity = ({ vertices, closed, pen }: WrittenPath): string => {
  const corners = vertices.map(({ x, y, bulge }) => `${x},${y},${bulge}`)
  const stroke = vertices.length === 2 && !closed && vertices[0]?.bulge === 0
  return `${pen ?? ''} ${closed} ${(stroke ? corners.sort() : corners).join(' ')}`
}
