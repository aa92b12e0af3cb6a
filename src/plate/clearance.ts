import { distanceToEdge, placesOn, side } from '../geometry/leaves-room.js'
import { type Edge, edges, type Outline } from '../geometry/outline.js'
import { between, type Point, point, polar } from '../geometry/point.js'
import { cornerDirection, type Star } from '../geometry/star.js'
import * as maths from '../units/maths.js'

/** Everything within `radius` of the line from one point to another: a hole, or a slot with round ends. */
export interface Capsule {
  readonly from: Point
  readonly to: Point
  readonly radius: number
}

/** What holes and nails in the upper arm keep clear of. The plate and its joints look alike in every arm, both ways. */
export interface Obstacles {
  /** Edges of the plate that reach into the upper arm: of all edges one of these is nearest to a place in it. */
  readonly plate: readonly Edge[]
  /** The arm's two joints, centre to valley. */
  readonly joints: readonly Edge[]
  /** What the star hangs by. */
  readonly takes: readonly Capsule[]
  /** Is the place on the plate and in the upper arm, on its side of both joints? */
  readonly isInArm: (at: Point) => boolean
}

export const obstaclesOf = (outline: Outline, { points, valleyRadius }: Star): Obstacles => {
  const inArm = betweenJoints(points)
  const plate = edges(outline).filter((edge) => chordsOf(edge).some((chord) => reachesInto(chord, inArm)))
  const rim = plate.flatMap(chordsOf).filter((chord) => reachesInto(chord, inArm))
  return {
    plate,
    // From the centre all of the rim is in sight, so what a chord hides lies outside.
    isInArm: (at) => inArm(at) && !rim.some((chord) => hides(chord, at)),
    joints: [0.5, -0.5].map((turn) => ({
      from: CENTRE,
      to: polar(valleyRadius, cornerDirection(points, turn)),
    })),
    takes: [],
  }
}

const CENTRE = point(0, 0)

/** Does the chord lie between the centre and the place? A chord that ends on the line of sight hides it too. */
const hides = ({ from, to }: Edge, at: Point): boolean =>
  side(from, to, CENTRE) * side(from, to, at) < 0 && side(CENTRE, at, from) * side(CENTRE, at, to) <= 0

const betweenJoints = (points: number): ((at: Point) => boolean) => {
  const slope = maths.tan(Math.PI / points)
  return ({ x, y }) => Math.abs(x) < y * slope
}

const chordsOf = (edge: Edge): Edge[] => {
  const places = [...placesOn([edge]), edge.to]
  return places.slice(1).map((to, index) => ({ from: places[index] ?? to, to }))
}

/** A stretch that passes through the arm without an end in it crosses its axis. */
const reachesInto = ({ from, to }: Edge, inArm: (at: Point) => boolean): boolean =>
  inArm(from) || inArm(to) || (from.x > 0 !== to.x > 0 && inArm(between(from, to, from.x / (from.x - to.x))))

/** From a place in the upper arm to the nearest of all obstacles; less than 0 outside the arm. */
export const clearOf = (at: Point, { plate, joints, takes, isInArm }: Obstacles): number =>
  isInArm(at)
    ? Math.min(
        nearest(at, plate),
        nearest(at, joints),
        ...takes.map((taken) => distanceToEdge(at, taken) - taken.radius),
      )
    : -1

const nearest = (at: Point, all: readonly Edge[]): number =>
  all.reduce((least, edge) => Math.min(least, distanceToEdge(at, edge)), Infinity)

/** Places looked at along a slot. */
const PLACES = 16

/**
 * Wood between the capsule and the nearest edge or joint; less than 0 where it runs into one, or out of the arm.
 *
 * @param capsule round, or a slot that runs straight out from the centre, so that its ends tell whether it is in the arm
 */
export const wallOf = (capsule: Capsule, { plate, joints, isInArm }: Obstacles): number => {
  const all = [...plate, ...joints]
  const { from, to, radius } = capsule
  if (!isInArm(from) || !isInArm(to)) return -radius
  if (from.x === to.x && from.y === to.y) return nearest(from, all) - radius
  const along = Array.from({ length: PLACES + 1 }, (_, step) =>
    nearest(between(from, to, step / PLACES), all),
  )
  // Two straight edges are nearest at an end of one of them.
  const ends = all.map((edge) => distanceToEdge(edge.from, capsule))
  return Math.min(...along, ...ends) - radius
}
