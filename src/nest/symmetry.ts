import { distance } from '../geometry/point.js'
import { WRITTEN } from '../units/tolerance.js'
import { turned } from './panel.js'
import type { Polygon } from './polygon.js'

/** How often the plate looks the same while it is turned once about its origin. */
export const symmetryOf = (polygon: Polygon): number => {
  const alike = (times: number): boolean =>
    turned(polygon, (2 * Math.PI) / times).every((corner) =>
      polygon.some((other) => distance(corner, other) < WRITTEN),
    )
  for (let times = polygon.length; times > 1; times--) if (alike(times)) return times
  return 1
}
