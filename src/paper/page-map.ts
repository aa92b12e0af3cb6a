import type { Path, Shape } from '../drawing/model.js'
import { path } from '../drawing/shapes.js'
import { hatch } from '../geometry/hatch.js'
import { closedOutline, mapped } from '../geometry/outline.js'
import { type Point, point } from '../geometry/point.js'
import { radians } from '../units/convert.js'
import { type Layout, type Place, printedPlaces, windowCorner } from './layout.js'
import { windowSize } from './sheet.js'

/** Spacing of the hatching that marks the page one looks at. */
const SPACING = 1.2

/**
 * The drawing small, over the grid of its pages, the current one hatched.
 *
 * @param outlines of the drawing, turned as it is laid
 * @param corner lower left corner of the square the map may fill, on the page
 * @param side of that square
 */
export const pageMap = (
  layout: Layout,
  outlines: readonly Path[],
  current: Place,
  corner: Point,
  side: number,
): Shape[] => {
  const { across, along } = windowSize(layout.sheet)
  const whole = point(
    layout.columns * (across - layout.overlap) + layout.overlap,
    layout.rows * (along - layout.overlap) + layout.overlap,
  )
  const scale = side / Math.max(whole.x, whole.y)
  const start = point(corner.x + (side - whole.x * scale) / 2, corner.y + (side - whole.y * scale) / 2)
  const onMap = ({ x, y }: Point): Point =>
    point(start.x + (x - layout.origin.x) * scale, start.y + (y - layout.origin.y) * scale)
  const box = (place: Place): Point[] => {
    const { x, y } = windowCorner(layout, place)
    return [point(x, y), point(x + across, y), point(x + across, y + along), point(x, y + along)].map(onMap)
  }
  return [
    ...outlines.map((outline) => path('NOTE', mapped(outline, onMap), 'narrow')),
    ...printedPlaces(layout).map((place) => path('GUIDE', closedOutline(box(place)))),
    path('NOTE', closedOutline(box(current)), 'wide'),
    ...hatch(box(current), radians(Math.PI / 4), SPACING).map((ends) =>
      path('NOTE', { vertices: ends, closed: false }),
    ),
  ]
}
