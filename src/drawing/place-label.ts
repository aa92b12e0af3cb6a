import { add, direction, type Point, scale } from '../geometry/point.js'
import { type Box, labelBox } from './bounds.js'
import type { Label, Shape } from './model.js'
import { type Side, shapeSides, sidesOf } from './sides.js'

/** White kept between lettering and lines. */
const CLEARANCE = 1

/**
 * The first of the candidates that lies clear of everything drawn; undefined when none does, so that the caller can
 * say the thing elsewhere.
 */
export const firstClear = (candidates: Iterable<Label>, drawn: readonly Shape[]): Label | undefined => {
  const sides = drawn.flatMap(shapeSides)
  for (const candidate of candidates) if (isClear(candidate, sides)) return candidate
  return undefined
}

/** Does the label's box, and a little white around it, meet nothing drawn? */
export const labelIsClear = (label: Label, drawn: readonly Shape[], clearance = CLEARANCE): boolean =>
  isClear(label, drawn.flatMap(shapeSides), clearance)

/** The same for any box, its corners counter-clockwise. */
export const boxIsClear = (box: Box, drawn: readonly Shape[], clearance = CLEARANCE): boolean =>
  isBoxClear(grown(box, clearance), drawn.flatMap(shapeSides))

/** The same for sides worked out before, for many boxes among the same lines. */
export const boxIsClearOf = (box: Box, sides: readonly Side[], clearance = CLEARANCE): boolean =>
  isBoxClear(grown(box, clearance), sides)

const isClear = (label: Label, sides: readonly Side[], clearance = CLEARANCE): boolean =>
  isBoxClear(grown(labelBox(label), clearance), sides)

/** Told apart by their bounds first: thousands of boxes are tried among hundreds of sides. */
const isBoxClear = (box: Box, sides: readonly Side[]): boolean => {
  const [p, q, r, s] = box
  const [left, right] = [Math.min(p.x, q.x, r.x, s.x), Math.max(p.x, q.x, r.x, s.x)]
  const [bottom, top] = [Math.min(p.y, q.y, r.y, s.y), Math.max(p.y, q.y, r.y, s.y)]
  for (const [a, b] of sides) {
    if (a.x < left && b.x < left) continue
    if (a.x > right && b.x > right) continue
    if (a.y < bottom && b.y < bottom) continue
    if (a.y > top && b.y > top) continue
    if (meets(box, a, b)) return false
  }
  return true
}

/** A box counter-clockwise from its lower left corner, with white on all four sides. */
const grown = ([a, b, c, d]: Box, by: number): Box => {
  const along = scale(direction(a, b), by)
  const up = scale(direction(a, d), by)
  const [left, down] = [scale(along, -1), scale(up, -1)]
  return [add(add(a, left), down), add(add(b, along), down), add(add(c, along), up), add(add(d, left), up)]
}

/** Does the stretch a-b meet the convex, counter-clockwise box? Clipped by one side after the other. */
const meets = (box: readonly Point[], a: Point, b: Point): boolean => {
  let [enter, leave] = [0, 1]
  for (const [from, to] of sidesOf(box)) {
    const inside = (p: Point) => (to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x)
    const [atA, atB] = [inside(a), inside(b)]
    if (atA < 0 && atB < 0) return false
    if (atA < 0) enter = Math.max(enter, atA / (atA - atB))
    else if (atB < 0) leave = Math.min(leave, atA / (atA - atB))
    if (enter > leave) return false
  }
  return true
}
