import { edges, type Outline } from '../geometry/outline.js'
import { between, distance, type Point, point, polar } from '../geometry/point.js'
import { radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { SHOP } from '../units/tolerance.js'
import { type Box, labelBox } from './bounds.js'
import type { Shape } from './model.js'

/** A straight piece of something drawn, or of a label's box. */
export type Side = readonly [Point, Point]

/** The largest angle, in radians, that one side stands for. */
const SPAN = 0.2

/** How far a side leaves its arc at most: half of what a person sees. */
const LEAVES = SHOP / 2

const spanOf = (radius: number): number => Math.min(SPAN, 2 * maths.acos(Math.max(0, 1 - LEAVES / radius)))

export const shapeSides = (shape: Shape): Side[] =>
  shape.kind === 'label' ? letteredSides(labelBox(shape)) : outlineSides(shape)

/** At most this much between two lines of a label's box: no other lettering with its white fits in between. */
const LETTERED = 2

/** The sides of a label's box and lines along its letters, so that what lies wholly inside meets it too. */
const letteredSides = (box: Box): Side[] => {
  const [a, b, c, d] = box
  const rows = Math.ceil(distance(a, d) / LETTERED)
  const inner = Array.from(
    { length: Math.max(0, rows - 1) },
    (_, row): Side => [between(a, d, (row + 1) / rows), between(b, c, (row + 1) / rows)],
  )
  return [...sidesOf(box), ...inner]
}

export const outlineSides = (outline: Outline): Side[] =>
  edges(outline).flatMap(({ from, to, arc }): Side[] => {
    if (!arc) return [[from, to]]
    const steps = Math.max(2, Math.ceil(Math.abs(arc.sweep) / spanOf(arc.radius)))
    const at = (step: number): Point => {
      const offset = polar(arc.radius, radians(arc.start + (arc.sweep * step) / steps))
      return point(arc.centre.x + offset.x, arc.centre.y + offset.y)
    }
    return Array.from({ length: steps }, (_, step): Side => [at(step), at(step + 1)])
  })

export const sidesOf = (corners: readonly Point[]): Side[] =>
  corners.map((corner, index): Side => [corner, corners[(index + 1) % corners.length] ?? corner])
