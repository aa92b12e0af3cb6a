import { closedOutline, type Outline, type Vertex } from '../geometry/outline.js'
import { add, direction, distance, type Point, point, scale } from '../geometry/point.js'
import * as maths from '../units/maths.js'
import { SAME_DIRECTION, SAME_POINT } from '../units/tolerance.js'

/** The relief is this much wider than the bit, on the radius, so that its line is a loop and not one line twice. */
const SPARE = 0.05

/** Of the shorter edge this much, in mm, must be left to bear beside the relief. */
const LEAST_SEAT = 2

/** On which side of an outline, as it runs, nothing is left: right of a part's outline, left of a hole's. */
export type OpenSide = 'left' | 'right'

/**
 * Makes room in inside corners, where a round bit would leave wood: a slot of the bit's width along the longer edge,
 * tangent to it, so that the whole of the longer edge bears, right into the corner, and the shorter edge alone gives
 * way. One long seat holds an angle better than two that are both cut back.
 *
 * @param seats corners between straight edges; others of the outline stay as they are
 * @returns undefined when a shorter edge is too short for the relief
 */
export const relieved = (
  outline: Outline,
  seats: readonly Point[],
  bit: number,
  open: OpenSide,
): Outline | undefined => {
  const corners = outline.vertices.map((corner, index) => {
    if (!seats.some((seat) => distance(seat, corner) < SAME_POINT)) return [corner]
    const before = outline.vertices.at(index - 1) ?? corner
    const after = outline.vertices[(index + 1) % outline.vertices.length] ?? corner
    return reliefAt(before, corner, after, bit / 2 + SPARE, open)
  })
  return corners.some((vertices) => vertices === undefined)
    ? undefined
    : closedOutline(corners.flatMap((vertices) => vertices ?? []))
}

const reliefAt = (
  before: Vertex,
  corner: Vertex,
  after: Vertex,
  radius: number,
  open: OpenSide,
): Vertex[] | undefined => {
  const [back, on] = [direction(corner, before), direction(corner, after)]
  const turns = on.x * back.y - on.y * back.x
  if (open === 'left' ? turns <= 0 : turns >= 0) return [corner]
  const opening = maths.acos(Math.max(-1, Math.min(1, back.x * on.x + back.y * on.y)))
  // Of two that are equal but for rounding noise always the same one.
  const longerIsNext = distance(corner, after) > distance(corner, before) - SAME_POINT
  const [longer, shorter] = longerIsNext ? [on, back] : [back, on]
  // Does the slot's other wall meet the shorter edge, or does that edge lean back into the slot's round end?
  const acute = opening < Math.PI / 2 - SAME_DIRECTION
  const reach = acute ? (2 * radius) / maths.sin(opening) : 2 * radius * maths.sin(opening)
  const length = distance(corner, longerIsNext ? before : after)
  if (reach + LEAST_SEAT > length) return undefined
  const inward = shorter.y * longer.x - shorter.x * longer.y > 0 ? 1 : -1
  const far = add(corner, scale(point(-longer.y, longer.x), 2 * radius * inward))
  const meets = add(corner, scale(shorter, reach))
  const round = maths.tan((acute ? Math.PI : 2 * (Math.PI - opening)) / 4) * (open === 'right' ? -1 : 1)
  if (longerIsNext)
    return acute ? [meets, { ...far, bulge: round }, corner] : [{ ...meets, bulge: round }, corner]
  const arc = { x: corner.x, y: corner.y, bulge: round }
  return acute ? [arc, far, meets] : [arc, meets]
}
