import type { Point } from '../../src/geometry/point.js'

/** A rigid motion of the plane: turned about the origin, then moved. */
export interface Motion {
  readonly cos: number
  readonly sin: number
  readonly x: number
  readonly y: number
}

export const STILL: Motion = { cos: 1, sin: 0, x: 0, y: 0 }

export const moveBy = ({ cos, sin, x, y }: Motion, p: Point): Point => ({
  x: cos * p.x - sin * p.y + x,
  y: sin * p.x + cos * p.y + y,
})

/** Undoes a motion. */
export const back = ({ cos, sin, x, y }: Motion): Motion => ({
  cos,
  sin: -sin,
  x: -(cos * x + sin * y),
  y: -(cos * y - sin * x),
})

/** The motion that brings points closest to others, by least squares (the plane's case of Kabsch's method). */
export const fitted = (from: readonly Point[], to: readonly Point[]): Motion => {
  const [a, b] = [meanOf(from), meanOf(to)]
  let [dot, cross] = [0, 0]
  from.forEach((p, index) => {
    const q = to[index] ?? b
    dot += (p.x - a.x) * (q.x - b.x) + (p.y - a.y) * (q.y - b.y)
    cross += (p.x - a.x) * (q.y - b.y) - (p.y - a.y) * (q.x - b.x)
  })
  const turn = Math.atan2(cross, dot)
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)]
  return { cos, sin, x: b.x - (cos * a.x - sin * a.y), y: b.y - (sin * a.x + cos * a.y) }
}

/** The largest distance that a motion leaves between points and those they should come to. */
export const leftOver = (motion: Motion, from: readonly Point[], to: readonly Point[]): number =>
  from.length === to.length
    ? Math.max(
        0,
        ...from.map((p, index) => {
          const [moved, q] = [moveBy(motion, p), to[index] ?? p]
          return Math.hypot(moved.x - q.x, moved.y - q.y)
        }),
      )
    : Number.POSITIVE_INFINITY

const meanOf = (points: readonly Point[]): Point => ({
  x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
  y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
})
