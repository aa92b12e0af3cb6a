import { circle, closedOutline, type Outline } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import { DEFAULTS } from '../order/defaults.js'
import type { BackingPlaces, HangingOrder } from '../order/order.js'
import { done, type Outcome, refused } from '../order/problem.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { type LengthStyle, showAtLeast, showAtMost, showGivenLength, showLength } from '../units/show.js'
import { type Capsule, type Obstacles, wallOf } from './clearance.js'

/** Openings on the plate's upper axis that the star hangs by. */
export interface Hanging {
  readonly kind: HangingOrder['kind']
  /** Counter-clockwise. */
  readonly openings: readonly Outline[]
  /** What nails and screws keep clear of: the openings, and all between two holes, where hanger or cord lies. */
  readonly takes: readonly Capsule[]
  /** Where the weight hangs, above the centre: the middle of holes, the upper end of a slot. */
  readonly height: Mm
  /** Of holes, middle to middle. */
  readonly apart?: Mm
  /** The least wood between an opening and an edge or joint. */
  readonly wall: Mm
}

/** A smaller hole than this, or a keyhole's head so little wider than its slot, is not worth advising. */
const LEAST_HOLE = mm(1)
/** How far advice may stay below the largest value that does. */
const ADVICE = 0.01

/** Places tried up the axis, and how often the best is then looked at more closely. */
const PLACES = 200
const HALVINGS = 24

/**
 * The openings as far as they go from edges and joints alike. They lie above the centre of mass: without them that is
 * the star's centre, the joints keep them above it, and they take weight off above it only.
 *
 * @param top how far the plate reaches up the axis
 * @param more what leaves more room in the upper arm, for advice
 */
export const planHanging = (
  order: HangingOrder,
  at: BackingPlaces,
  obstacles: Obstacles,
  top: number,
  more: readonly string[],
  lengths: LengthStyle,
): Outcome<Hanging> => {
  const place = (hole: number, apart: number): Placed =>
    bestPlace({ ...order, hole: mm(hole) }, apart, obstacles, top)
  const does = (placed: Placed): boolean => placed.wall >= order.wall - 1e-9
  const least = order.kind === 'keyhole' ? 0 : order.hole + order.wall
  const nearest = place(order.hole, least)
  if (!does(nearest)) {
    const holds = (each: number): boolean =>
      does(place(each, order.kind === 'keyhole' ? 0 : each + order.wall))
    const smallest = order.kind === 'keyhole' ? order.slot + LEAST_HOLE : LEAST_HOLE
    const smaller = holds(smallest)
      ? `Allowed here: holes of up to ${showAtMost(mm(mostThat(holds, order.hole, smallest)), lengths)}; or`
      : 'Allowed:'
    return refused([
      {
        ...at.hanging,
        given: `${order.kind}, ${showGivenLength(order.hole, lengths)}`,
        advice: `The plate has no room for it in the upper arm, ${showLength(order.wall, lengths)} from edges and joints. ${smaller} another kind, a smaller wall, ${more.join(', ')}, or none.`,
      },
    ])
  }
  if (order.kind === 'keyhole') return done(hangingOf(order, 0, nearest))
  const usual = order.kind === 'cord' ? DEFAULTS.cordApart : DEFAULTS.hangerApart
  const wanted = order.apart ?? Math.max(least, usual)
  const most = does(place(order.hole, wanted))
    ? wanted
    : mostThat((apart) => apart >= least && does(place(order.hole, apart)), wanted, least)
  if (order.apart !== undefined && (order.apart < least || most < order.apart)) {
    return refused([
      {
        ...at.apart,
        given: showGivenLength(order.apart, lengths),
        advice:
          order.apart < least
            ? `Too little wood would be left between the holes. Allowed here: from ${showAtLeast(mm(least), lengths)}.`
            : `The upper arm is too narrow for that. Allowed here: up to ${showAtMost(mm(most), lengths)}.`,
      },
    ])
  }
  return done(hangingOf(order, most, place(order.hole, most)))
}

interface Placed {
  readonly height: number
  readonly wall: number
}

const hangingOf = (order: HangingOrder, apart: number, { height, wall }: Placed): Hanging => {
  const capsules = capsulesAt(order, apart, height)
  const [left, right] = capsules
  return {
    kind: order.kind,
    takes: order.kind === 'keyhole' || !left || !right ? capsules : [{ ...left, to: right.to }],
    openings:
      order.kind === 'keyhole'
        ? [keyhole(order, height)]
        : capsules.map(({ from, radius }) => circle(from, radius)),
    height: mm(height),
    wall: mm(wall),
    ...(order.kind === 'keyhole' ? {} : { apart: mm(apart) }),
  }
}

/** The opening's parts when the star hangs at that height. */
const capsulesAt = ({ kind, hole, slot, rise }: HangingOrder, apart: number, height: number): Capsule[] => {
  if (kind === 'keyhole') {
    const head = point(0, height - rise)
    return [
      { from: head, to: head, radius: hole / 2 },
      { from: head, to: point(0, height), radius: slot / 2 },
    ]
  }
  return [-apart / 2, apart / 2].map((x) => ({
    from: point(x, height),
    to: point(x, height),
    radius: hole / 2,
  }))
}

const bestPlace = (order: HangingOrder, apart: number, obstacles: Obstacles, top: number): Placed => {
  const at = (height: number): Placed => ({
    height,
    wall: Math.min(...capsulesAt(order, apart, height).map((capsule) => wallOf(capsule, obstacles))),
  })
  const better = (a: Placed, b: Placed): Placed => (b.wall > a.wall ? b : a)
  // The joints meet in the centre, so what stands clear of them stands above it; below it the walls grow again.
  const lowest = order.kind === 'keyhole' ? order.rise : 0
  const tried = Array.from({ length: PLACES }, (_, step) => at(lowest + ((top - lowest) * step) / PLACES))
  let best = tried.reduce(better)
  let step = Math.max(0, top - lowest) / PLACES
  for (let halving = 0; halving < HALVINGS; halving++) {
    best = [at(best.height - step), at(best.height + step)].reduce(better, best)
    step /= 2
  }
  return best
}

/** The largest value between one that does and one that does not, by halving. */
const mostThat = (does: (value: number) => boolean, most: number, least: number): number => {
  let [works, fails] = [least, most]
  while (fails - works > ADVICE) {
    const middle = (works + fails) / 2
    if (does(middle)) works = middle
    else fails = middle
  }
  return works
}

/** A round end for the screw's head, and above it a slot for its shank. */
const keyhole = ({ hole, slot, rise }: HangingOrder, height: number): Outline => {
  const [head, shank] = [hole / 2, slot / 2]
  const middle = height - rise
  const joins = middle + Math.sqrt(head * head - shank * shank)
  const half = Math.PI - maths.asin(shank / head)
  return closedOutline([
    point(shank, joins),
    { x: shank, y: height, bulge: 1 },
    point(-shank, height),
    { x: -shank, y: joins, bulge: maths.tan(half / 4) },
    { x: 0, y: middle - head, bulge: maths.tan(half / 4) },
  ])
}
