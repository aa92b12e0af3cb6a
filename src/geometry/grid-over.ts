import { boxOf, type Outline } from './outline.js'
import { type Point, point } from './point.js'

/** So many places across and up the box around an outline, row by row from its lower left; none on the box's edge. */
export const gridOver = (outline: Outline, across: number): Point[] => {
  const { min, max } = boxOf([outline])
  return Array.from({ length: across * across }, (_, index) =>
    point(
      min.x + ((max.x - min.x) * ((index % across) + 0.5)) / across,
      min.y + ((max.y - min.y) * (Math.floor(index / across) + 0.5)) / across,
    ),
  )
}
