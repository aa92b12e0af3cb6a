import * as maths from '../units/maths.js'
import { SAME_DIRECTION, SAME_POINT } from '../units/tolerance.js'
import { leavesRoom } from './leaves-room.js'
import {
  type Arc,
  closedOutline,
  type Edge,
  edges,
  type Outline,
  signedArea,
  type Vertex,
} from './outline.js'
import { add, direction, distance, type Point, point, polar, scale, subtract } from './point.js'

/** A mitred corner longer than this, over the offset, becomes an arc about the corner: at corners under 29°. */
const MITRE = 4

/** No corner is mitred: the moved outline is nowhere further away than the offset. */
export const NO_MITRE = 1

/**
 * The outline moved to its right by `by` everywhere: outwards for a counter-clockwise outline and `by` > 0. Lines and
 * arcs stay exact. Where the edges part at a corner they are lengthened until they meet (so that it stays sharp), or,
 * at a very sharp one and beside arcs, joined by an arc about the corner; where they run into each other they are
 * shortened to where they meet.
 *
 * @param mitre the longest mitred corner, over the offset
 * @returns undefined when the shape does not allow it: an edge vanishes, or the moved outline comes nearer than `by`
 * to another part of the old one, as in a slot that is too narrow
 */
export const offsetOutline = (outline: Outline, by: number, mitre = MITRE): Outline | undefined => {
  if (by === 0) return outline
  const old = edges(outline)
  const shifted = old.map((edge) => shiftedEdge(edge, by))
  if (shifted.some((edge) => edge === undefined)) return undefined
  const joints = old.map((edge, index) =>
    joint(old.at(index - 1) as Edge, shifted.at(index - 1) as Edge, edge, shifted[index] as Edge, by, mitre),
  )
  if (joints.some((at) => at === undefined)) return undefined
  const vertices: Vertex[] = []
  for (const [index, edge] of shifted.entries()) {
    const start = joints[index] as Joint
    const end = joints[(index + 1) % joints.length] as Joint
    if (start.arc) vertices.push({ ...start.ends[0], bulge: maths.tan(start.arc / 4) })
    const bulge = keptBulge(edge as Edge, start.ends[1], end.ends[0])
    if (bulge === undefined) return undefined
    vertices.push({ ...start.ends[1], ...(bulge === 0 ? {} : { bulge }) })
  }
  const moved = closedOutline(vertices)
  const sameSense = Math.sign(signedArea(moved)) === Math.sign(signedArea(outline))
  return sameSense && leavesRoom(outline, moved, Math.abs(by)) ? moved : undefined
}

/** Where one moved edge ends and the next begins; an arc of so many radians about the corner lies between. */
interface Joint {
  readonly ends: readonly [Point, Point]
  readonly arc?: number
}

const rightOf = ({ x, y }: Point): Point => point(y, -x)

/** Of length 1, along the edge. */
export const tangent = ({ from, to, arc }: Edge, at: 'start' | 'end'): Point =>
  arc ? tangentOfArc(arc, at === 'start' ? arc.start : arc.start + arc.sweep) : direction(from, to)

const tangentOfArc = ({ sweep }: Arc, angle: number): Point =>
  sweep > 0 ? point(-maths.sin(angle), maths.cos(angle)) : point(maths.sin(angle), -maths.cos(angle))

const shiftedEdge = (edge: Edge, by: number): Edge | undefined => {
  const from = add(edge.from, scale(rightOf(tangent(edge, 'start')), by))
  const to = add(edge.to, scale(rightOf(tangent(edge, 'end')), by))
  if (!edge.arc) return { from, to }
  const radius = edge.arc.radius + Math.sign(edge.arc.sweep) * by
  return radius > SAME_POINT ? { from, to, arc: { ...edge.arc, radius } } : undefined
}

const joint = (
  before: Edge,
  movedBefore: Edge,
  after: Edge,
  movedAfter: Edge,
  by: number,
  mitre: number,
): Joint | undefined => {
  const [into, out] = [tangent(before, 'end'), tangent(after, 'start')]
  const turns = maths.atan2(into.x * out.y - into.y * out.x, into.x * out.x + into.y * out.y)
  if (Math.abs(turns) < SAME_DIRECTION) return { ends: [movedBefore.to, movedBefore.to] }
  const parts = turns * by > 0
  const straight = !before.arc && !after.arc
  if (parts && !(straight && 1 / maths.cos(turns / 2) <= mitre)) {
    return { ends: [movedBefore.to, movedAfter.from], arc: turns }
  }
  const meet = meetings(movedBefore, movedAfter).sort(
    (a, b) => distance(a, after.from) - distance(b, after.from),
  )[0]
  return meet && { ends: [meet, meet] }
}

/** Where the lines or circles that two edges lie on meet. */
const meetings = (a: Edge, b: Edge): Point[] => {
  if (a.arc && b.arc) return circlesMeet(a.arc, b.arc)
  if (a.arc) return lineMeetsCircle(b, a.arc)
  if (b.arc) return lineMeetsCircle(a, b.arc)
  const [u, v] = [direction(a.from, a.to), direction(b.from, b.to)]
  const across = u.x * v.y - u.y * v.x
  const gap = subtract(b.from, a.from)
  return across === 0 ? [] : [add(a.from, scale(u, (gap.x * v.y - gap.y * v.x) / across))]
}

const lineMeetsCircle = ({ from, to }: Edge, { centre, radius }: Arc): Point[] => {
  const along = direction(from, to)
  const toCentre = subtract(centre, from)
  const foot = add(from, scale(along, toCentre.x * along.x + toCentre.y * along.y))
  const half = radius * radius - maths.square(distance(foot, centre))
  if (half < 0) return []
  return [-1, 1].map((side) => add(foot, scale(along, side * Math.sqrt(half))))
}

const circlesMeet = (a: Arc, b: Arc): Point[] => {
  const apart = distance(a.centre, b.centre)
  if (apart < SAME_POINT) return []
  const along = (apart * apart + a.radius * a.radius - b.radius * b.radius) / (2 * apart)
  const half = a.radius * a.radius - along * along
  if (half < 0) return []
  const u = direction(a.centre, b.centre)
  const foot = add(a.centre, scale(u, along))
  return [-1, 1].map((side) => add(foot, scale(rightOf(u), side * Math.sqrt(half))))
}

/** The bulge of what is left of a moved edge; undefined when it would have to run backwards. */
const keptBulge = ({ from, to, arc }: Edge, start: Point, end: Point): number | undefined => {
  if (!arc) {
    const [was, is] = [subtract(to, from), subtract(end, start)]
    return was.x * is.x + was.y * is.y > 0 ? 0 : undefined
  }
  const angleOf = ({ x, y }: Point): number => maths.atan2(y - arc.centre.y, x - arc.centre.x)
  const sense = Math.sign(arc.sweep)
  const turned = (sense * (angleOf(end) - angleOf(start)) + 4 * Math.PI) % (2 * Math.PI)
  // An arc shortened past nothing would come out as nearly a full turn.
  const grows = turned - Math.abs(arc.sweep)
  if (turned < SAME_DIRECTION || grows > Math.PI) return undefined
  const onCircle = distance(start, add(arc.centre, polar(arc.radius, angleOf(start) as never))) < 1
  return onCircle ? sense * maths.tan(turned / 4) : undefined
}
