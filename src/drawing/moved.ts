import { type Extents, moved, turnedOutline } from '../geometry/outline.js'
import { add, type Point, point, turn } from '../geometry/point.js'
import type { Radians } from '../units/brand.js'
import { radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { SAME_ANGLE } from '../units/tolerance.js'
import { labelBox } from './bounds.js'
import type { Label, Path, Shape } from './model.js'

/** The shape moved by a vector. */
export const movedShape = <Kind extends Shape>(shape: Kind, by: Point): Kind =>
  shape.kind === 'path' ? { ...shape, ...moved(shape, by) } : { ...shape, at: add((shape as Label).at, by) }

/**
 * Shapes turned counter-clockwise about the origin. Lettering that would then stand on its head is turned in its own
 * box, so that it still reads from the bottom or the right.
 */
export const turnedShapes = (shapes: readonly Shape[], by: Radians): readonly Shape[] =>
  by === 0
    ? shapes
    : shapes.map((shape) =>
        shape.kind === 'path' ? { ...shape, ...turnedOutline(shape, by) } : turnedLabel(shape, by),
      )

/** The shapes with the lower left corner of their box, turned by a quarter or not, at a place. */
export const laidShapes = (
  shapes: readonly Shape[],
  { min, max }: Extents,
  isTurned: boolean,
  at: Point,
): Shape[] => {
  // Turned by a quarter, its upper left corner is what was its lower left one.
  const corner = isTurned ? point(-max.y, min.x) : min
  const by = point(at.x - corner.x, at.y - corner.y)
  return turnedShapes(shapes, radians(isTurned ? Math.PI / 2 : 0)).map((shape) => movedShape(shape, by))
}

/** What is cut out of the material: the outlines of the pieces. */
export const cutOutlines = (shapes: readonly Shape[]): Path[] =>
  shapes.flatMap((shape) => (shape.kind === 'path' && shape.layer === 'CUT-OUTSIDE' ? [shape] : []))

const turnedLabel = (label: Label, by: Radians): Label => {
  const turned = { ...label, at: turn(label.at, by), turn: radians(label.turn + by) }
  // Does it read from the bottom or the right, more than -90° and up to 90°?
  const level = maths.cos(turned.turn)
  if (level > SAME_ANGLE || (level >= -SAME_ANGLE && maths.sin(turned.turn) > 0)) return turned
  const [a, , c] = labelBox(turned)
  if (!a || !c) return turned
  const at = point(a.x + c.x - turned.at.x, a.y + c.y - turned.at.y)
  return { ...turned, at, turn: radians(turned.turn + Math.PI) }
}
