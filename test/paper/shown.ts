import { labelBox } from '../../src/drawing/bounds.js'
import type { Shape } from '../../src/drawing/model.js'
import { type Edge, type Extents, edges } from '../../src/geometry/outline.js'
import { type Point, point } from '../../src/geometry/point.js'
import type { Page } from '../../src/paper/page.js'

/** The part of the drawing a page shows, in the drawing's coordinates as it is laid. */
export const shown = ({ views: [view] }: Page): Extents => {
  if (!view) throw new Error('a page has its view')
  const { window, shift } = view
  return {
    min: point(window.min.x - shift.x, window.min.y - shift.y),
    max: point(window.max.x - shift.x, window.max.y - shift.y),
  }
}

/** Is the point in the box, `white` away from its sides or more? */
export const inside = ({ x, y }: Point, { min, max }: Extents, white = -1e-9): boolean =>
  x >= min.x + white && x <= max.x - white && y >= min.y + white && y <= max.y - white

/** Points all along what is drawn, at most 2 mm apart; of lettering the corners of its box. */
export const spotsOn = (shape: Shape): readonly Point[] =>
  shape.kind === 'label' ? labelBox(shape) : edges(shape).flatMap(spotsOnEdge)

const spotsOnEdge = ({ from, to, arc }: Edge): Point[] => {
  const length = arc ? Math.abs(arc.sweep) * arc.radius : Math.hypot(to.x - from.x, to.y - from.y)
  const count = Math.ceil(length / 2) + 1
  return Array.from({ length: count + 1 }, (_, index) => {
    const t = index / count
    if (!arc) return point(from.x + (to.x - from.x) * t, from.y + (to.y - from.y) * t)
    const { centre, radius, start, sweep } = arc
    const direction = start + sweep * t
    return point(centre.x + radius * Math.cos(direction), centre.y + radius * Math.sin(direction))
  })
}
