import type { Point } from '../../src/geometry/point.js'

/** The sides of a closed chain of corners. */
export const sides = (corners: readonly Point[]): (readonly [Point, Point])[] =>
  corners.map((corner, index) => [corner, corners[(index + 1) % corners.length] ?? corner] as const)

/** From a point to the nearest point of a segment. */
export const toSegment = (p: Point, [a, b]: readonly [Point, Point]): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const along = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy)
  const t = Math.min(1, Math.max(0, along))
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy)
}

/** From a point to a line through two points: positive on the left of the way from the first to the second. */
export const toLine = (p: Point, [a, b]: readonly [Point, Point]): number =>
  ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y)

/** Between two closed chains that do not cross: the nearest pair always has a corner in it. */
export const betweenChains = (one: readonly Point[], other: readonly Point[]): number =>
  Math.min(cornersToChain(one, other), cornersToChain(other, one))

const cornersToChain = (corners: readonly Point[], chain: readonly Point[]): number => {
  const segments = sides(chain)
  return Math.min(...corners.map((corner) => Math.min(...segments.map((side) => toSegment(corner, side)))))
}

/** Where two lines, each through two points, cross. */
export const crossing = ([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): Point => {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y]
  const t = ((c.x - a.x) * vy - (c.y - a.y) * vx) / (ux * vy - uy * vx)
  return { x: a.x + t * ux, y: a.y + t * uy }
}

/** Is the point inside the polygon, by the even-odd rule along a ray to the right? */
export const isInside = (p: Point, corners: readonly Point[]): boolean =>
  sides(corners).filter(
    ([a, b]) => a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x),
  ).length %
    2 ===
  1
