import { boxOf, type Extents, type Outline } from '../geometry/outline.js'
import { add, type Point, point, turn } from '../geometry/point.js'
import { reach, textWidth } from './lettering.js'
import type { Drawing, Label, Shape } from './model.js'

/** Corners counter-clockwise from the lower left one, as the text reads. */
export type Box = readonly [Point, Point, Point, Point]

/** The box a label fills, tails and accents included. */
export const labelBox = ({ text, height, at, anchor, turn: reading }: Label): Box => {
  const width = textWidth(text, height)
  const left = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width
  const { above, below } = reach(text)
  const [bottom, top] = [-height * below, height * above]
  const placed = (x: number, y: number): Point => add(at, turn(point(x, y), reading))
  return [placed(left, bottom), placed(left + width, bottom), placed(left + width, top), placed(left, top)]
}

/** The box around everything drawn, lettering included; lines are taken without their width. */
export const drawingExtents = (drawing: Drawing): Extents => shapeExtents(drawing.shapes)

export const shapeExtents = (shapes: readonly Shape[]): Extents =>
  boxOf(
    shapes.map(
      (shape): Outline => (shape.kind === 'path' ? shape : { vertices: labelBox(shape), closed: true }),
    ),
  )
