import type { CutPart } from '../cutter/cut-part.js'
import { distanceToEdge } from '../geometry/leaves-room.js'
import { boxOf, circle, closedOutline, edges, type Outline } from '../geometry/outline.js'
import { add, between, leftOf, type Point, point, scale, subtract } from '../geometry/point.js'
import type { JigStock } from '../order/order.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { SAME_POINT } from '../units/tolerance.js'
import type { JigPart } from './jig.js'

/** Round holes evenly along a line, from one end to the other. */
export const holesAlong = (from: Point, to: Point, count: number, diameter: number): Outline[] =>
  Array.from({ length: count }, (_, index) =>
    circle(between(from, to, count === 1 ? 0.5 : index / (count - 1)), diameter / 2),
  )

/** The four slots for a toggle clamp's foot; its arm points along `along`, of length 1, and so do they. */
export const clampHoles = (
  middle: Point,
  along: Point,
  { clampAcross, clampAlong, clampSlot, screw }: JigStock,
): Outline[] =>
  clampCorners(middle, along, clampAcross, clampAlong).map((corner) =>
    clampSlot > 0 ? slot(corner, along, clampSlot, screw / 2) : circle(corner, screw / 2),
  )

/** Rounded at both ends; `length` between the middles of its rounds, counter-clockwise. */
const slot = (middle: Point, along: Point, length: number, radius: number): Outline => {
  const [half, side] = [scale(along, length / 2), scale(leftOf(along), radius)]
  const [front, back] = [add(middle, half), subtract(middle, half)]
  return closedOutline([
    subtract(back, side),
    { ...subtract(front, side), bulge: 1 },
    add(front, side),
    { ...add(back, side), bulge: 1 },
  ])
}

/** Corners of a rectangle about its middle, counter-clockwise. */
export const clampCorners = (middle: Point, along: Point, across: number, length: number): Point[] => {
  const side = { x: -along.y, y: along.x }
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([a = 0, s = 0]) => add(middle, add(scale(along, (a * length) / 2), scale(side, (s * across) / 2))))
}

type WithPilots = CutPart & Pick<JigPart, 'pilots'>

/** The least wood between a round hole or a screw of a part and the part's edge; undefined for a part without such holes. */
export const wallBeside = ({ outer, inner, pilots = [] }: WithPilots): Mm | undefined => {
  const walls = [...inner, ...pilots].flatMap((hole) => {
    const { min, max } = boxOf([hole])
    const isRound = Math.abs(max.x - min.x - (max.y - min.y)) < SAME_POINT
    const middle = between(min, max, 0.5)
    return isRound ? edges(outer).map((edge) => distanceToEdge(middle, edge) - (max.x - min.x) / 2) : []
  })
  return walls.length > 0 ? mm(Math.min(...walls)) : undefined
}

/** From a screw's middle to the wood's edge: so much, or what leaves the panel's thickness of wood. */
export const beside = (least: number, { screw, thickness }: JigStock): number =>
  Math.max(least, screw / 2 + thickness)

/** Two strokes over the middle of a round hole, no longer than the hole is wide. */
export const crossAt = (hole: Outline): Outline[] => {
  const { min, max } = boxOf([hole])
  const [middle, half] = [between(min, max, 0.5), (max.x - min.x) / 2]
  const stroke = (x: number, y: number): Outline => ({
    closed: false,
    vertices: [subtract(middle, point(x, y)), add(middle, point(x, y))],
  })
  return [stroke(half, 0), stroke(0, half)]
}
