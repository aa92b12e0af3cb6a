import { radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { SAME_POINT } from '../units/tolerance.js'
import { type Edge, edges, type Outline } from './outline.js'
import { add, distance, type Point, polar, subtract } from './point.js'

/** Looked at along every arc. */
const PLACES = 16

/**
 * Does `moved` stay at least `room` from `outline` everywhere, and cross neither it nor itself? Two straight edges that
 * do not cross are nearest at an end of one of them, so the corners tell; arcs are looked at in 16 places each.
 */
export const leavesRoom = (outline: Outline, moved: Outline, room: number): boolean => {
  const [old, fresh] = [edges(outline), edges(moved)]
  const near = (at: Point, among: readonly Edge[]): boolean =>
    among.some((edge) => distanceToEdge(at, edge) < room - 10 * SAME_POINT)
  return (
    !placesOn(fresh).some((at) => near(at, old)) &&
    !placesOn(old).some((at) => near(at, fresh)) &&
    !crosses(placesOn(fresh))
  )
}

/** The corners, and 15 places along every arc. */
export const placesOn = (along: readonly Edge[]): Point[] =>
  along.flatMap((edge) => [edge.from, ...onArc(edge)])

const onArc = ({ arc }: Edge): Point[] =>
  arc
    ? Array.from({ length: PLACES - 1 }, (_, index) =>
        add(arc.centre, polar(arc.radius, radians(arc.start + (arc.sweep * (index + 1)) / PLACES))),
      )
    : []

/** From a place to the nearest of an edge. */
export const distanceToEdge = (at: Point, { from, to, arc }: Edge): number => {
  if (!arc) {
    const [along, off] = [subtract(to, from), subtract(at, from)]
    // A stretch without length is its one point.
    const length = along.x * along.x + along.y * along.y || 1
    const share = Math.max(0, Math.min(1, (off.x * along.x + off.y * along.y) / length))
    return maths.hypot(off.x - share * along.x, off.y - share * along.y)
  }
  const angle = maths.atan2(at.y - arc.centre.y, at.x - arc.centre.x) - arc.start
  const turned = (Math.sign(arc.sweep) * angle + 4 * Math.PI) % (2 * Math.PI)
  return turned <= Math.abs(arc.sweep)
    ? Math.abs(distance(at, arc.centre) - arc.radius)
    : Math.min(distance(at, from), distance(at, to))
}

/** Do two chords of the closed line through the places cross that are not neighbours? Looked at a million times for some jigs. */
const crosses = (places: readonly Point[]): boolean =>
  places.some((a, index) => {
    const b = places[index + 1] ?? (places[0] as Point)
    const [left, right] = a.x < b.x ? [a.x, b.x] : [b.x, a.x]
    const last = index === 0 ? places.length - 1 : places.length
    for (let other = index + 2; other < last; other++) {
      const c = places[other] as Point
      const d = places[other + 1] ?? (places[0] as Point)
      if ((c.x < left && d.x < left) || (c.x > right && d.x > right)) continue
      if (chordsCross(a, b, c, d)) return true
    }
    return false
  })

/** More than 0 left of the line from a to b, less than 0 right of it, 0 on it. */
export const side = (a: Point, b: Point, at: Point): number =>
  (b.x - a.x) * (at.y - a.y) - (b.y - a.y) * (at.x - a.x)

/** Does the stretch from a to b cross the one from c to d, each with ends on both sides of the other? */
const chordsCross = (a: Point, b: Point, c: Point, d: Point): boolean =>
  side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
