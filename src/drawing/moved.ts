import { moved, turnedOutline } from '../geometry/outline.js'
import { add, type Point, point, turn } from '../geometry/point.js'
import type { Radians } from '../units/brand.js'
import { radians } from '../units/convert.js'
import { SAME_ANGLE } from '../units/tolerance.js'
import { labelBox } from './bounds.js'
import type { Label, Shape } from './model.js'

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

const turnedLabel = (label: Label, by: Radians): Label => {
  const turned = { ...label, at: turn(label.at, by), turn: radians(label.turn + by) }
  // Does it read from the bottom or the right, more than -90° and up to 90°?
  const level = Math.cos(turned.turn)
  if (level > SAME_ANGLE || (level >= -SAME_ANGLE && Math.sin(turned.turn) > 0)) return turned
  const [a, , c] = labelBox(turned)
  if (!a || !c) return turned
  const at = point(a.x + c.x - turned.at.x, a.y + c.y - turned.at.y)
  return { ...turned, at, turn: radians(turned.turn + Math.PI) }
}
