import type { Artwork } from '../drawing/artwork.js'
import type { Box } from '../drawing/bounds.js'
import { SMALL } from '../drawing/lettering.js'
import type { Label, Path, Shape } from '../drawing/model.js'
import { boxIsClear, firstClear } from '../drawing/place-label.js'
import { arc, centredLabel, label } from '../drawing/shapes.js'
import { artworkShapes } from '../furniture/artwork-shapes.js'
import { blankIsArm, kite } from '../geometry/kite.js'
import {
  add,
  between,
  direction,
  distance,
  leftOf,
  type Point,
  point,
  polar,
  scale,
} from '../geometry/point.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { tooSmallForSaw } from '../plan/warnings.js'
import { mm, radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { showAngle, showLength } from '../units/show.js'
import { SAME_POINT } from '../units/tolerance.js'

interface Corner {
  readonly at: Point
  readonly from: number
  readonly to: number
  readonly text: string
}

/** Tip, side and centre angle, each between the directions of its edges. */
const angledCorners = ({ star }: StarPlan): Corner[] => {
  const { tip, nearValley, centre, farValley } = kite(star)
  const toward = (a: Point, b: Point) => maths.atan2(b.y - a.y, b.x - a.x)
  const fullTurn = (start: number, end: number) => (end > start ? end : end + 2 * Math.PI)
  const corner = (at: Point, first: Point, last: Point, text: string): Corner => {
    const from = toward(at, first)
    return { at, from, to: fullTurn(from, toward(at, last)), text }
  }
  return [
    corner(tip, nearValley, farValley, showAngle(star.tipAngle)),
    corner(nearValley, centre, tip, showAngle(star.sideAngle)),
    corner(centre, farValley, nearValley, showAngle(star.centreAngle)),
  ]
}

const arcRadius = ({ star }: StarPlan): number => Math.min(10, star.tipEdge / 4, star.jointEdge / 4)

export const angleArcs = (plan: StarPlan): Path[] =>
  angledCorners(plan).map(({ at, from, to }) => arc('DIM', at, arcRadius(plan), from, to))

/** Grain, angles, lengths and name inside the kite, each where it is clear; what finds no room stands in the notes. */
export const armLettering = (
  plan: StarPlan,
  order: Order,
  grainArrow: Artwork,
  drawn: readonly Shape[],
): Shape[] => {
  const { star } = plan
  const { tip, nearValley, centre, farValley } = kite(star)
  const placed: Shape[] = []
  const place = (candidates: readonly Label[]): void => {
    const found = firstClear(candidates, [...drawn, ...placed])
    if (found) placed.push(found)
  }
  placed.push(...grainMark(plan, grainArrow, drawn))
  const corners = angledCorners(plan)
  for (const corner of corners) {
    const others = corners.filter((other) => other !== corner).map(({ at }) => at)
    place(angleCandidates(corner, arcRadius(plan), others))
  }
  if (!tooSmallForSaw(plan)) for (const words of sawWords(plan)) place(words)
  const jointText = `joint edge ${showLength(star.jointEdge, order.lengths)}`
  place([
    ...alongside(nearValley, centre, farValley, jointText),
    ...alongside(farValley, centre, nearValley, jointText),
  ])
  place(alongside(tip, farValley, centre, `tip edge ${showLength(star.tipEdge, order.lengths)}`))
  return placed
}

/** The grain arrow along the board, at the first of several places in the kite that is clear, smaller in a small arm. */
const grainMark = ({ star, kite: { width } }: StarPlan, arrow: Artwork, drawn: readonly Shape[]): Shape[] => {
  const across = mm(Math.min(arrow.across, Math.max(arrow.across / 2, star.tipEdge / 4)))
  const half = point(across / 2, (arrow.height * across) / arrow.across / 2)
  const { tip, centre } = kite(star)
  const aside = leftOf(direction(tip, centre))
  for (const share of [0.55, 0.65, 0.45, 0.75, 0.35]) {
    for (const shift of [-0.15, 0, 0.15]) {
      const middle = add(between(tip, centre, share), scale(aside, shift * width))
      if (boxIsClear(boxAround(middle, half), drawn))
        return artworkShapes(arrow, middle, across, radians(0), 'NOTE')
    }
  }
  return []
}

const boxAround = ({ x, y }: Point, half: Point): Box => [
  point(x - half.x, y - half.y),
  point(x + half.x, y - half.y),
  point(x + half.x, y + half.y),
  point(x - half.x, y + half.y),
]

/**
 * Places for an angle's figure, nearest first: inside its corner, beside the middle before on it, or just outside; all
 * of them much nearer to this corner than to any other.
 */
const angleCandidates = (
  { at, from, to, text }: Corner,
  radius: number,
  others: readonly Point[],
): Label[] => {
  const places = (reaches: readonly number[], directions: readonly number[]): Point[] =>
    reaches.flatMap((reach) => directions.map((direction) => add(at, polar(reach, radians(direction)))))
  const inside = places(
    Array.from({ length: 24 }, (_, step) => radius + 2 + step * 2),
    [0.3, 0.7, 0.5, 0.2, 0.8].map((share) => from + (to - from) * share),
  )
  const opposite = (from + to) / 2 + Math.PI
  const outside = places(
    [6, 8, 10],
    [0, 0.5, -0.5, 1, -1].map((aside) => opposite + aside),
  )
  return [...inside, ...outside]
    .filter((place) => others.every((other) => distance(place, other) > 1.5 * distance(place, at)))
    .map((place) => centredLabel(text, place, { layer: 'DIM' }))
}

/** Where fence and stop are: at the board's lower edge and beside the tip. */
const sawWords = ({ star }: StarPlan): Label[][] => {
  const atFence = [0.15, 0.3, 0.5, 0.7, 0.85].map((share) => point(star.tipEdge * share, -4))
  const atTip = [2.5, 4, 6, -4].flatMap((y) => [-3, -5, -8, -12].map((x) => point(x, y)))
  return [
    edgeWords('fence', atFence, 'middle'),
    ...(blankIsArm(star) ? [] : [edgeWords('stop', atTip, 'end')]),
  ]
}

const edgeWords = (text: string, places: readonly Point[], anchor: Label['anchor']): Label[] =>
  [SMALL, 1.8].flatMap((height) => places.map((place) => label(text, place, { height, anchor })))

/** Places along an edge, on the side where `inside` lies, reading from the bottom or the right. */
const alongside = (a: Point, b: Point, inside: Point, text: string): Label[] => {
  const along = direction(a, b)
  const toward = leftOf(along)
  const side = Math.sign(toward.x * (inside.x - a.x) + toward.y * (inside.y - a.y))
  const reading = along.x < -SAME_POINT ? scale(along, -1) : along
  const turn = radians(maths.atan2(reading.y, reading.x))
  return [0.5, 0.4, 0.6, 0.3, 0.7].flatMap((share) =>
    [3.5, 5, 7].map((reach) =>
      centredLabel(text, add(between(a, b, share), scale(toward, side * reach)), {
        layer: 'DIM',
        height: SMALL,
        turn,
      }),
    ),
  )
}
