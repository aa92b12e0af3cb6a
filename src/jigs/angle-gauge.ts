import { kite, kiteOutline } from '../geometry/kite.js'
import { circle, closedOutline, type Outline } from '../geometry/outline.js'
import { add, type Point, point, polar, scale, subtract, turn } from '../geometry/point.js'
import type { Cutter, JigStock } from '../order/order.js'
import { removedWidth } from '../order/removed-width.js'
import type { StarPlan } from '../plan/plan.js'
import type { Degrees, Radians } from '../units/brand.js'
import { degrees, radians, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { SAME_POINT } from '../units/tolerance.js'
import type { Jig } from './jig.js'

/** An angle of the star on the gauge, and where. */
export interface GaugedAngle {
  readonly word: 'TIP' | 'SIDE' | 'CENTRE' | 'VALLEY'
  readonly angle: Degrees
  readonly corner: Point
  /** Middle of its words, which have {@link GAUGE_WORDS} across. */
  readonly words: Point
}

/** In mm: room across for an angle's words; a column of the plate keeps them clear of its edges too. */
export const GAUGE_WORDS = 30
const COLUMN = GAUGE_WORDS + 4
/** From a corner to the middle of its words, and how far up these reach on either side of that. */
const TO_WORDS = 5
const HALF_WORDS = 3
const CLEAR = 2
/** In mm: a notch's edges, and at least so much of both must bear beside a router's relief. */
const LEG = 24
const BEARING = 12
/** A bit that would need longer ones does not fit; the cutter's check says so. */
const LONGEST_LEG = 90
/** Around the hole, at the ends and between two notches: so much wood, or as much as the panel is thick. */
const MARGIN = 10
const BETWEEN = 14
/** From the lower edge's notch to the valley corner: so much lies along an arm. */
const ALONG_ARM = 40
/** The corner's other edge, into a valley: longer would not go into an apron's pocket. */
const VALLEY_LEG = 55
/** Between the notches of the upper and lower edge: room for words of both, and wood. */
const WAIST = 22

/**
 * One plate. Notches take the arm's tip, its side angle at the valley and its centre; the plate's lower right corner
 * goes into the valley between two arms that lie tip to tip, its two edges along theirs.
 */
export const angleGauge = (
  plan: StarPlan,
  stock: JigStock,
  cutter: Cutter,
): Jig & { readonly angles: readonly GaugedAngle[] } => {
  const { tipAngle, sideAngle, centreAngle } = plan.star
  const valleyAngle = degrees(360 - 2 * sideAngle)
  const slot = removedWidth(cutter)
  const [tip, centre, side] = [tipAngle, centreAngle, sideAngle].map((angle) => notch(angle, slot)) as [
    Notch,
    Notch,
    Notch,
  ]
  const margin = Math.max(MARGIN, stock.thickness)
  const between = Math.max(BETWEEN, stock.thickness + slot)
  const deepest = Math.max(tip.depth, centre.depth) + side.depth
  const height = Math.max(
    deepest + Math.max(WAIST + 2 * slot, stock.thickness + slot),
    stock.bolt + 2 * margin,
  )
  const into = toRadians(valleyAngle)
  const leg = Math.min(height / maths.sin(into), VALLEY_LEG)
  const lean = leg * maths.cos(into)
  const hole = stock.bolt + 2 * margin
  const [tipRoom, centreRoom] = [tip, centre].map(({ width }) => Math.max(width, COLUMN)) as [number, number]
  const tipX = hole + tipRoom / 2
  const centreX = tipX + Math.max((tipRoom + centreRoom) / 2, (tip.width + centre.width) / 2 + between)
  const top = centreX + Math.max(centre.width / 2 + margin, COLUMN / 2)
  // The side notch keeps clear of a sharp corner's edge above it.
  const beside = Math.max(ALONG_ARM, lean + margin)
  // Words of a sharp corner stand far from it: the other corners are farther still from them.
  const valleyWords = besideCorner(into)
  const alone = into < Math.PI / 2 ? -2 * valleyWords.x : 0
  const across = Math.max(
    top + lean,
    centreX + alone,
    hole + side.width + beside,
    hole + side.width / 2 + alone,
  )
  const [tipAt, centreAt] = [point(tipX, height), point(centreX, height)]
  const sideAt = point(Math.max(Math.min((across - beside) / 2, across - alone), hole + side.width / 2), 0)
  const valley = point(across, 0)
  const up = (at: Point, { width, depth }: Notch): readonly [Point, Point, Point] => [
    add(at, point(width / 2, 0)),
    add(at, point(0, -depth)),
    add(at, point(-width / 2, 0)),
  ]
  const [tipNotch, centreNotch] = [up(tipAt, tip), up(centreAt, centre)]
  const sideNotch = [
    add(sideAt, point(-side.width / 2, 0)),
    add(sideAt, point(0, side.depth)),
    add(sideAt, point(side.width / 2, 0)),
  ] as const
  const legEnd = add(valley, scale(polar(1, radians(Math.PI - into)), leg))
  const end = point(legEnd.x, height)
  // A bit's relief goes on past the corner by half of the bit.
  const below = point(0, -TO_WORDS - slot / 2)
  return {
    name: 'angle-gauge',
    parts: [
      {
        name: 'angle gauge',
        word: 'gauge',
        outer: closedOutline([
          point(0, 0),
          ...sideNotch,
          valley,
          ...(height - legEnd.y > SAME_POINT ? [legEnd, end] : [legEnd]),
          ...centreNotch,
          ...tipNotch,
          point(0, height),
        ]),
        inner: [circle(point(margin + stock.bolt / 2, height / 2), stock.bolt / 2)],
        seats: [tipNotch[1], centreNotch[1], sideNotch[1]],
        marks: [],
      },
    ],
    inUse: { wood: [armIn(plan, tipNotch[1])] },
    hands: [],
    angles: [
      { word: 'TIP', angle: tipAngle, corner: tipNotch[1], words: add(tipNotch[1], below) },
      { word: 'CENTRE', angle: centreAngle, corner: centreNotch[1], words: add(centreNotch[1], below) },
      { word: 'SIDE', angle: sideAngle, corner: sideNotch[1], words: subtract(sideNotch[1], below) },
      { word: 'VALLEY', angle: valleyAngle, corner: valley, words: add(valley, valleyWords) },
    ],
  }
}

/** From a corner at the lower right to the middle of words along its lower edge, clear of its other edge. */
const besideCorner = (into: Radians): Point => {
  const leans =
    into < Math.PI / 2 ? (TO_WORDS + HALF_WORDS) / maths.tan(into) + CLEAR / maths.sin(into) : CLEAR
  return point(-leans - GAUGE_WORDS / 2, TO_WORDS)
}

/** An arm with its tip in a notch that opens upwards. */
const armIn = ({ star }: StarPlan, corner: Point): Outline => {
  const upright = toRadians(degrees(90 - star.tipAngle / 2))
  const { vertices } = kiteOutline(kite(star))
  return closedOutline(vertices.map((vertex) => add(turn(vertex, upright), corner)))
}

interface Notch {
  readonly width: number
  readonly depth: number
}

const notch = (angle: Degrees, slot: number): Notch => {
  const half = toRadians(degrees(angle / 2))
  const relief = angle < 90 ? slot / maths.sin(2 * half) : slot
  const leg = Math.min(LONGEST_LEG, Math.max(LEG, relief + BEARING))
  return { width: 2 * leg * maths.sin(half), depth: leg * maths.cos(half) }
}
