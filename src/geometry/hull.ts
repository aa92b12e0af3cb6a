import { SAME_POINT } from '../units/tolerance.js'
import { distance, type Point } from './point.js'

/** The corners of the smallest convex polygon around the points, counter-clockwise. Andrew's monotone chain (1979). */
export const hull = (points: readonly Point[]): Point[] => {
  const sorted = [...points]
    .sort((a, b) => a.x - b.x || a.y - b.y)
    .filter((at, index, all) => index === 0 || distance(at, all[index - 1] ?? at) > SAME_POINT)
  return [...halfHull(sorted), ...halfHull(sorted.reverse())]
}

/** From the first point to the one before the last, keeping to the right. */
const halfHull = (points: readonly Point[]): Point[] => {
  const kept: Point[] = []
  for (const at of points) {
    for (;;) {
      const [before, last] = [kept.at(-2), kept.at(-1)]
      if (!before || !last) break
      const room =
        ((last.x - before.x) * (at.y - before.y) - (last.y - before.y) * (at.x - before.x)) /
        distance(before, at)
      if (room > SAME_POINT) break
      kept.pop()
    }
    kept.push(at)
  }
  return kept.slice(0, -1)
}
