import { circle, edges, type Outline } from '../geometry/outline.js'
import { distance, type Point } from '../geometry/point.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { SAME_DIRECTION, SAME_POINT } from '../units/tolerance.js'
import { crossAt } from './holes.js'
import type { JigPart } from './jig.js'

/** A round hole, or a slot with round ends, as a drill makes it. */
export interface DrilledHole {
  readonly diameter: Mm
  /** One, or both ends of a slot. */
  readonly middles: readonly Point[]
}

/** Holes of a part that the cutter, removing so wide a line, does not get into: who makes the jig drills them. */
export const drilledHoles = ({ inner }: Pick<JigPart, 'inner'>, width: Mm): DrilledHole[] =>
  inner.flatMap((outline) => drilledHole(outline, width) ?? [])

/** The part with such holes marked by a cross at each place to drill, those of a slot joined, and not cut. */
export const withDrilledHoles = (part: JigPart, width: Mm): JigPart => {
  const holes = drilledHoles(part, width)
  return holes.length === 0
    ? part
    : {
        ...part,
        inner: part.inner.filter((outline) => !drilledHole(outline, width)),
        marks: [...part.marks, ...holes.flatMap(marksOf)],
      }
}

const drilledHole = (outline: Outline, width: Mm): DrilledHole | undefined => {
  const sides = edges(outline)
  const arcs = sides.flatMap(({ arc }) => (arc ? [arc] : []))
  const [first] = arcs
  const isHole = sides.length <= 4 && arcs.every(({ sweep }) => Math.abs(sweep) > Math.PI - SAME_DIRECTION)
  if (!first || !isHole || 2 * first.radius - width > SAME_POINT) return undefined
  const middles = arcs.map(({ centre }) => centre)
  return {
    diameter: mm(2 * first.radius),
    middles: middles.filter((at, index) =>
      middles.slice(0, index).every((other) => distance(at, other) > SAME_POINT),
    ),
  }
}

const marksOf = ({ diameter, middles }: DrilledHole): Outline[] => [
  ...middles.flatMap((middle) => crossAt(circle(middle, diameter / 2))),
  ...(middles.length > 1 ? [{ closed: false, vertices: middles }] : []),
]
