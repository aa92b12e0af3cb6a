import type { Point } from './point.js'

/**
 * Where the level line at `y` meets a polygon's edges, from left to right; a corner on the line counts for one edge
 * only, so that the crossings come in pairs: in and out.
 */
export const crossingsAt = (polygon: readonly Point[], y: number): number[] =>
  polygon
    .flatMap((a, index) => {
      const b = polygon[(index + 1) % polygon.length] ?? a
      return a.y <= y !== b.y <= y ? [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)] : []
    })
    .sort((left, right) => left - right)
