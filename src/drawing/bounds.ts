import { boxOf, type Extents, type Outline } from '../geometry/outline.js'
import { add, type Point, point, turn } from '../geometry/point.js'
import type { Radians } from '../units/brand.js'
import { reach, textWidth } from './lettering.js'
import type { Drawing, Label, Shape } from './model.js'

/** The four corners of the box a label fills, tails and accents included, counter-clockwise. */
export const labelBox = ({ text, height, at, anchor, turn: reading }: Label): readonly Point[] => {
  const width = textWidth(text, height)
  const left = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width
  const { above, below } = reach(text)
  const [bottom, top] = [-height * below, height * above]
  return [point(left, bottom), point(left + width, bottom), point(left + width, top), point(left, top)].map(
    (corner) => add(at, turn(corner, reading as Radians)),
  )
}

/** The box around everything drawn, lettering included; lines are taken without their width. */
export const drawingExtents = (drawing: Drawing): Extents => shapeExtents(drawing.shapes)

export const shapeExtents = (shapes: readonly Shape[]): Extents =>
  boxOf(
    shapes.map(
      (shape): Outline => (shape.kind === 'path' ? shape : { vertices: labelBox(shape), closed: true }),
    ),
  )
