import { distanceToEdge } from '../geometry/leaves-room.js'
import { edges, type Outline } from '../geometry/outline.js'
import { type Point, point, polar } from '../geometry/point.js'
import { radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { SAME_POINT } from '../units/tolerance.js'

/** A closed chain of straight edges, counter-clockwise. */
export type Polygon = readonly Point[]

/** Polygons stand this far at most outside the arcs they contain: far below any gap, and few edges are quick. */
const ARC_SLACK = 0.1

/**
 * A polygon that contains the closed outline: straight edges as they are, an arc that swells outwards by tangents to
 * it, one that is hollow by its chords.
 */
export const containing = (outline: Outline): Polygon => withoutStraightCorners(tangents(outline))

const tangents = (outline: Outline): Polygon =>
  edges(outline).flatMap(({ from, arc }) => {
    if (!arc) return [from]
    const { centre, radius, start, sweep } = arc
    const most = 2 * maths.acos(radius / (radius + ARC_SLACK))
    const count = Math.max(1, Math.ceil(Math.abs(sweep) / most))
    const step = sweep / count
    const on = (share: number, r: number): Point => {
      const out = polar(r, radians(start + share * step))
      return point(centre.x + out.x, centre.y + out.y)
    }
    const parts = Array.from({ length: count }, (_, index) => index)
    return sweep > 0
      ? [from, ...parts.map((index) => on(index + 0.5, radius / maths.cos(step / 2)))]
      : [from, ...parts.slice(1).map((index) => on(index, radius))]
  })

/** A tangent runs on from where its arc begins: such corners only cost time, and hide that a disc looks alike all round. */
const withoutStraightCorners = (polygon: Polygon): Polygon =>
  polygon.filter((corner, index) => {
    const before = polygon.at(index - 1) ?? corner
    const after = polygon[(index + 1) % polygon.length] ?? corner
    return distanceToEdge(corner, { from: before, to: after }) > SAME_POINT
  })
