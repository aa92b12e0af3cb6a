import * as maths from '../units/maths.js'
import { SAME_POINT } from '../units/tolerance.js'
import { between, distance, type Point } from './point.js'

/**
 * What of a convex polygon lies to the left of the directed line through `at` along `along`: counter-clockwise as it
 * came, without repeated corners; empty when nothing but an edge or a corner is left. Sutherland and Hodgman (1974).
 */
export const leftPart = (polygon: readonly Point[], at: Point, along: Point): Point[] => {
  const room = ({ x, y }: Point): number =>
    (along.x * (y - at.y) - along.y * (x - at.x)) / maths.hypot(along.x, along.y)
  const kept = polygon.flatMap((from, index) => {
    const to = polygon[(index + 1) % polygon.length] ?? from
    const [before, after] = [room(from), room(to)]
    const crosses =
      (before > SAME_POINT && after < -SAME_POINT) || (before < -SAME_POINT && after > SAME_POINT)
    return [
      ...(before >= -SAME_POINT ? [from] : []),
      ...(crosses ? [between(from, to, before / (before - after))] : []),
    ]
  })
  const corners = kept.filter((corner, index) => distance(corner, kept.at(index - 1) ?? corner) > SAME_POINT)
  return corners.length > 2 && corners.some((corner) => room(corner) > SAME_POINT) ? corners : []
}
