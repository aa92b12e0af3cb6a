import { add, between, direction, distance, leftOf, type Point, point, scale } from '../geometry/point.js'
import { radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { MEDIUM, TAIL, textWidth } from './lettering.js'
import type { Label, Shape } from './model.js'
import { label, line } from './shapes.js'

const ARROW = 2.5
const BEYOND = 1.5
const CLEAR_OF_OUTLINE = 1
/** Tails of letters stay clear of the line. */
const ABOVE_LINE = MEDIUM * TAIL + 0.8

/**
 * A dimension after ISO 129-1: extension lines, a line with open arrowheads, and the text above it, to be read from
 * the bottom or the right. Where the text does not fit between the arrows, arrows and text go outside.
 *
 * @param way measured `across` (along x) or `up` (along y)
 * @param at where the dimension line stands: its y when across, its x when up
 */
export const dimension = (a: Point, b: Point, way: 'across' | 'up', at: number, text: string): Shape[] => {
  const [low, high] = (way === 'across' ? a.x <= b.x : a.y <= b.y) ? [a, b] : [b, a]
  const onLine = ({ x, y }: Point): Point => (way === 'across' ? point(x, at) : point(at, y))
  const [from, to] = [onLine(low), onLine(high)]
  const along = direction(from, to)
  const fits = textWidth(text, MEDIUM) + 2 * ARROW + 2 < distance(from, to)
  const inward = fits ? along : scale(along, -1)
  const overrun = scale(along, fits ? 0 : 2 * ARROW)
  return [
    ...[low, high].map((measured) => extension(measured, onLine(measured))),
    line('DIM', add(from, scale(overrun, -1)), add(to, overrun)),
    ...arrow(from, inward),
    ...arrow(to, scale(inward, -1)),
    dimensionText(from, to, along, text, fits),
  ]
}

const extension = (measured: Point, onLine: Point): Shape => {
  const out = direction(measured, onLine)
  return line('DIM', add(measured, scale(out, CLEAR_OF_OUTLINE)), add(onLine, scale(out, BEYOND)))
}

/** An open arrowhead of 30° at `tip`; its barbs lie toward `inward`. */
export const arrow = (tip: Point, inward: Point): Shape[] =>
  [1, -1].map((side) =>
    line(
      'DIM',
      tip,
      add(tip, add(scale(inward, ARROW), scale(leftOf(inward), side * ARROW * maths.tan(Math.PI / 12)))),
    ),
  )

/** Above the line's middle, or beyond its arrows: to the left of a dimension across, on top of one that goes up. */
const dimensionText = (from: Point, to: Point, along: Point, text: string, fits: boolean): Label => {
  const turn = radians(maths.atan2(along.y, along.x))
  const above = scale(leftOf(along), ABOVE_LINE)
  if (fits) return label(text, add(between(from, to, 0.5), above), { layer: 'DIM', anchor: 'middle', turn })
  const level = scale(leftOf(along), -MEDIUM / 2)
  const beyond = 2 * ARROW + 1
  return Math.abs(along.x) > Math.abs(along.y)
    ? label(text, add(add(from, scale(along, -beyond)), level), { layer: 'DIM', anchor: 'end', turn })
    : label(text, add(add(to, scale(along, beyond)), level), { layer: 'DIM', turn })
}
