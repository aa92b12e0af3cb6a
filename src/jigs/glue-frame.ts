import { circle, closedOutline, type Outline, turnedOutline } from '../geometry/outline.js'
import { type Point, point, polar, turn } from '../geometry/point.js'
import { cornerDirection, type Star } from '../geometry/star.js'
import type { JigStock } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { keyBetween, leastRim, socket, tab } from './frame-key.js'
import {
  type ArmRoom,
  armDirection,
  armRoom,
  atArm,
  mirrored,
  noseDirection,
  WEDGE_SLOPE,
} from './frame-opening.js'
import type { Jig, JigPart } from './jig.js'

/** In mm: the rim around the opening's farthest corners, where twice the panel's thickness is less. */
const RIM = 30

export interface GlueFrame extends Jig {
  /** Parts that the frame itself is made of. */
  readonly pieces: number
  readonly wedges: number
  /** How far a wedge can move an arm's edge to either side of where it lies in a star as planned. */
  readonly closes: number
}

/**
 * A frame that lies around the star while it is glued. Along every tip edge there is a slot with a wedge in it: pushed
 * towards the valley it presses the arm towards the centre, and as all arms are pressed so, every joint closes. Tips
 * and valleys lie free, for glue. In one piece, or in `pieces` that are keyed together at valleys.
 *
 * @param pieces 1, or up to one for every arm
 */
export const glueFrame = (plan: StarPlan, stock: JigStock, pieces: number): GlueFrame => {
  const { star } = plan
  const room = armRoom(star, stock)
  const radius = Math.max(room.farthest + Math.max(RIM, 2 * stock.thickness), room.keyFrom + leastRim(stock))
  const frame =
    pieces === 1 ? [wholeFrame(star, room, radius, stock)] : sectors(star, room, radius, stock, pieces)
  const { length, thin, thick } = room.wedgeSize
  const wedges = armsOf(star).flatMap((arm) =>
    [room.wedge, mirrored(room.wedge)].map((wedge) => closedOutline(atArm(wedge, star, arm))),
  )
  return {
    name: 'glue-up-frame',
    parts: [
      ...frame,
      {
        name: 'glue-up frame, wedge',
        word: 'wedge',
        outer: closedOutline([point(0, 0), point(length, 0), point(length, thin), point(0, thick)]),
        inner: [],
        seats: [],
        marks: [],
        copies: wedges,
      },
    ],
    inUse: { wood: armsOf(star).map((arm) => armIn(star, arm)) },
    hands: [],
    pieces,
    wedges: wedges.length,
    closes: room.way * WEDGE_SLOPE,
  }
}

const armsOf = (star: Star): number[] => Array.from({ length: star.points }, (_, arm) => arm)

const armIn = (star: Star, arm: number): Outline =>
  closedOutline([
    point(0, 0),
    polar(star.valleyRadius, cornerDirection(star.points, arm - 0.5)),
    polar(star.radius, cornerDirection(star.points, arm)),
    polar(star.valleyRadius, cornerDirection(star.points, arm + 0.5)),
  ])

const screwAt = (star: Star, arm: number, room: ArmRoom, radius: number, { screw }: JigStock): Outline =>
  circle(polar((room.end + radius) / 2, armDirection(star, arm)), screw / 2)

const wholeFrame = (star: Star, room: ArmRoom, radius: number, stock: JigStock): JigPart => ({
  name: 'glue-up frame, frame',
  word: 'frame',
  outer: circle(point(0, 0), radius),
  inner: [
    closedOutline(armsOf(star).flatMap((arm) => atArm(room.edge, star, arm))),
    ...armsOf(star).map((arm) => screwAt(star, arm, room, radius, stock)),
  ],
  seats: [],
  marks: [],
})

/** Parts of as equal numbers of arms as can be: at most two kinds. */
const sectors = (star: Star, room: ArmRoom, radius: number, stock: JigStock, pieces: number): JigPart[] => {
  const arms = Math.floor(star.points / pieces)
  const larger = star.points - arms * pieces
  const starts = Array.from({ length: pieces }, (_, piece) => piece * arms + Math.min(piece, larger))
  const kinds = [
    { count: arms + 1, firsts: starts.slice(0, larger) },
    { count: arms, firsts: starts.slice(larger) },
  ].filter(({ firsts }) => firsts.length > 0)
  return kinds.map(({ count, firsts }): JigPart => {
    const arms = count === 1 ? '1 arm' : `${count} arms`
    const lies = sector(star, room, radius, stock, 0, count)
    // As it is cut, its middle points up.
    const level = radians(Math.PI / 2 - (noseDirection(star, 0) + noseDirection(star, count)) / 2)
    return {
      name: `glue-up frame, part of ${arms}`,
      word: `part of ${arms}`,
      outer: turnedOutline(lies.outer, level),
      inner: lies.inner.map((hole) => turnedOutline(hole, level)),
      seats: lies.seats.map((seat) => turn(seat, level)),
      marks: [],
      copies: firsts.map((first) => sector(star, room, radius, stock, first, count).outer),
    }
  })
}

/** The frame beside `count` arms from the given one on: a socket at its first joint, a key at its last. */
const sector = (
  star: Star,
  room: ArmRoom,
  radius: number,
  stock: JigStock,
  first: number,
  count: number,
): { outer: Outline; inner: Outline[]; seats: Point[] } => {
  const [start, end] = [noseDirection(star, first), noseDirection(star, first + count)]
  const key = keyBetween(room.keyFrom, radius, stock)
  const [into, out] = [socket(key, start), tab(key, end, stock.fit)]
  const arms = Array.from({ length: count }, (_, index) => first + index)
  const inside = arms.flatMap((arm) => atArm(room.edge, star, arm)).reverse()
  return {
    outer: closedOutline([
      { ...polar(radius, start), bulge: maths.tan((end - start) / 4) },
      polar(radius, end),
      ...out,
      polar(room.nose, end),
      ...inside,
      polar(room.nose, start),
      ...into,
    ]),
    inner: arms.map((arm) => screwAt(star, arm, room, radius, stock)),
    // The socket's far corners and the key's roots take sharp corners of the other.
    seats: [into[1], into[2], out[0], out[3]].flatMap((corner) => (corner ? [corner] : [])),
  }
}
