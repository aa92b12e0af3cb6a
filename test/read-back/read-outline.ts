import type { Point } from '../../src/geometry/point.js'

/** A path as an independent reader finds it in a file: mm, y up; bulge as in DXF, 0 for a straight edge. */
export interface ReadOutline {
  readonly layer: string
  readonly closed: boolean
  readonly vertices: readonly ReadVertex[]
}

export interface ReadVertex extends Point {
  readonly bulge: number
}

/** A text as an independent reader finds it: mm and degrees, y up, counter-clockwise. */
export interface ReadText {
  readonly layer: string
  readonly text: string
  readonly at: Point
  readonly anchor: 'start' | 'middle' | 'end'
  readonly height: number
  readonly turn: number
}

interface Edge {
  readonly from: ReadVertex
  readonly to: Point
  readonly sweep: number
  readonly length: number
}

type ChainOfVertices = {
  readonly closed: boolean
  readonly vertices: readonly (Point & { readonly bulge?: number })[]
}

/**
 * Points at equal distances along an outline, first vertex first. Walks over equal outlines agree whatever the
 * vertices are: an arc may be one edge or two.
 */
export const walk = (outline: ChainOfVertices, count: number): Point[] => {
  const sides = edgesOf(outline)
  const total = sides.reduce((sum, { length }) => sum + length, 0)
  return Array.from({ length: count + 1 }, (_, step) => pointAlong(sides, (total * step) / count))
}

export const lengthOf = (outline: ChainOfVertices): number =>
  edgesOf(outline).reduce((sum, { length }) => sum + length, 0)

const edgesOf = ({ vertices, closed }: ChainOfVertices): Edge[] =>
  vertices.flatMap(({ x, y, bulge = 0 }, index): Edge[] => {
    const to = vertices[index + 1] ?? (closed ? vertices[0] : undefined)
    if (!to) return []
    const chord = Math.hypot(to.x - x, to.y - y)
    const sweep = 4 * Math.atan(bulge)
    const length =
      Math.abs(sweep) < 1e-6 ? chord : (chord * Math.abs(sweep)) / (2 * Math.sin(Math.abs(sweep) / 2))
    return [{ from: { x, y, bulge }, to, sweep, length }]
  })

const pointAlong = (sides: readonly Edge[], distance: number): Point => {
  let before = 0
  for (const side of sides) {
    if (distance <= before + side.length || side === sides.at(-1)) {
      return side.length === 0 ? side.from : pointOn(side, Math.min(1, (distance - before) / side.length))
    }
    before += side.length
  }
  throw new RangeError('an outline without edges has no points along it')
}

/**
 * The point a fraction t along an arc, in complex numbers: (z - from) / (to - from) = (e^iθt - 1) / (e^iθ - 1), since
 * both sides are the circle seen from its centre, turned back to the arc's start.
 */
const pointOn = ({ from, to, sweep }: Edge, t: number): Point => {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  if (Math.abs(sweep) < 1e-6) return { x: from.x + dx * t, y: from.y + dy * t }
  // e^iθt - 1 = 2i sin(θt/2) e^iθt/2, and so for the whole arc
  const ratio = Math.sin((sweep * t) / 2) / Math.sin(sweep / 2)
  const back = (sweep * (t - 1)) / 2
  const [re, im] = [ratio * Math.cos(back), ratio * Math.sin(back)]
  return { x: from.x + dx * re - dy * im, y: from.y + dx * im + dy * re }
}
