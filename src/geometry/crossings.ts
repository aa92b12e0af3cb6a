import type { Point } from './point.js'

/**
 * Where the level line at `y` meets a polygon's edges, from left to right; a corner on the line counts for one edge
 * only, so that the crossings come in pairs: in and out.
 */
export const crossingsAt = (polygon: readonly Point[], y: number): number[] => {
  const found: number[] = []
  let a = polygon.at(-1)
  for (const b of polygon) {
    if (a && a.y <= y !== b.y <= y) found.push(a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x))
    a = b
  }
  return found.sort((left, right) => left - right)
}

/** Does the polygon go round the place? */
export const encloses = (polygon: readonly Point[], { x, y }: Point): boolean =>
  crossingsAt(polygon, y).filter((crossing) => crossing < x).length % 2 === 1
