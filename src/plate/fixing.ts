import { NEIGHBOURS, type Point, point, turn } from '../geometry/point.js'
import type { Star } from '../geometry/star.js'
import type { BackingOrder, BackingPlaces, FixingOrder } from '../order/order.js'
import { done, type Outcome, type Problem, refused, sentences } from '../order/problem.js'
import type { Mm } from '../units/brand.js'
import { mm, radians } from '../units/convert.js'
import { type LengthStyle, showAtLeast, showAtMost, showGivenLength, showLength } from '../units/show.js'
import { SAME_POINT } from '../units/tolerance.js'
import { clearOf, type Obstacles } from './clearance.js'

/** Where nails or screws hold the plate. */
export interface Fixing {
  readonly kind: FixingOrder['kind']
  /** Unknown when absent. */
  readonly length?: Mm
  /** Two in each arm, from the upper one on counter-clockwise. */
  readonly marks: readonly Point[]
  /** The least distance of a mark to edges, joints and holes. */
  readonly clear: Mm
}

/** Places tried along and across an arm. */
const PLACES = 60
const HALVINGS = 20

/** The pair of marks of the upper arm, and its least distance to obstacles, or to the other mark's half-way line. */
interface Pair {
  readonly marks: readonly [Point, Point]
  readonly clear: number
}

/**
 * Two marks in each arm, side by side or one above the other, whichever keeps further from everything. The upper arm
 * has a pair of its own where the star hangs by openings in it.
 *
 * @param top how far the plate reaches up the axis
 * @param more what leaves more room in the upper arm, for advice
 */
export const planFixing = (
  order: FixingOrder,
  at: BackingPlaces,
  star: Star,
  obstacles: Obstacles,
  top: number,
  more: readonly string[],
  lengths: LengthStyle,
): Outcome<Fixing> => {
  const plain = bestPair({ ...obstacles, takes: [] }, top)
  const upper = obstacles.takes.length === 0 ? plain : bestPair(obstacles, top)
  const clear = Math.min(plain.clear, upper.clear)
  if (clear < order.clear - SAME_POINT) {
    return refused([
      {
        ...at.fixing,
        given: `${showGivenLength(order.clear, lengths)} clear`,
        advice:
          clear >= 1
            ? `Two ${order.kind} in an arm find no room so far from edges, joints and holes. Allowed here: clear of up to ${showAtMost(mm(clear), lengths)}; or ${more.join(' or ')}.`
            : `Two ${order.kind} in an arm find no room beside edges, joints and holes. Leave fixing out, or take ${more.join(' or ')}.`,
      },
    ])
  }
  const marks = Array.from({ length: star.points }, (_, arm) => {
    const by = radians((arm * 2 * Math.PI) / star.points)
    return (arm === 0 ? upper : plain).marks.map((mark) => turn(mark, by))
  }).flat()
  return done({
    kind: order.kind,
    marks,
    clear: mm(clear),
    ...(order.length === undefined ? {} : { length: order.length }),
  })
}

const bestPair = (obstacles: Obstacles, top: number): Pair => {
  const beside = bestOf(([up, aside]) => sideBySide(up, aside, obstacles), top)
  const known = new Map<number, number>()
  const onAxis = (height: number): number => {
    const clear = known.get(height) ?? clearOf(point(0, height), obstacles)
    known.set(height, clear)
    return clear
  }
  const above = bestOf(([low, high]) => oneAboveOther(low, high, onAxis), top)
  return above.clear > beside.clear ? above : beside
}

/** A point of the left half of an arm keeps the same distance from everything as its mirror image. */
const sideBySide = (up: number, aside: number, obstacles: Obstacles): Pair => ({
  marks: [point(-aside, up), point(aside, up)],
  clear: Math.min(aside, clearOf(point(aside, up), obstacles)),
})

const oneAboveOther = (low: number, high: number, onAxis: (height: number) => number): Pair => ({
  marks: [point(0, low), point(0, high)],
  clear: Math.min((high - low) / 2, onAxis(low), onAxis(high)),
})

/** The best of a grid, then nearer and nearer to it. */
const bestOf = (pairAt: (place: readonly [number, number]) => Pair, top: number): Pair => {
  let place: readonly [number, number] = [0, 0]
  let best = pairAt(place)
  const consider = (next: readonly [number, number]): void => {
    const pair = pairAt(next)
    if (pair.clear > best.clear) [place, best] = [next, pair]
  }
  for (let first = 1; first < PLACES; first++)
    for (let second = 1; second < PLACES; second++)
      consider([(first * top) / PLACES, (second * top) / PLACES])
  let step = top / PLACES
  for (let halving = 0; halving < HALVINGS; halving++) {
    const [a, b] = place
    for (const [i, j] of NEIGHBOURS) consider([a + i * step, b + j * step])
    step /= 2
  }
  return best
}

/** A fastener's end stays this far under the face: nearer it lifts the wood. Common practice, no published source. */
const UNDER_FACE = mm(2)
/** Less than this in the arm holds nothing. Common practice, no published source. */
const LEAST_HOLD = mm(5)

/** The longest nail or screw that does not come through plate and arm. */
export const longestFastener = (plate: Mm, arm: Mm): Mm => mm(plate + arm - UNDER_FACE)

/**
 * Is the fastener too long for plate and arm together, or too short to hold?
 *
 * @param thicker what thicker wood there is, for one that is too long
 */
export const fastenerProblem = (
  { fixing }: BackingOrder,
  at: BackingPlaces,
  plate: Mm | undefined,
  arm: Mm | undefined,
  thicker: string | undefined,
  lengths: LengthStyle,
): Problem | undefined => {
  if (fixing?.length === undefined || plate === undefined || arm === undefined) return undefined
  const [least, most] = [mm(plate + LEAST_HOLD), longestFastener(plate, arm)]
  if (fixing.length >= least - SAME_POINT && fixing.length <= most + SAME_POINT) return undefined
  const together = `the plate is ${showLength(plate, lengths)} thick, the arm ${showLength(arm, lengths)}`
  const why =
    fixing.length > most
      ? `The ${fixing.kind} would come through or lift the wood of the face: ${together}.`
      : `The ${fixing.kind} would hardly reach into the arm.`
  return {
    ...at.fixingLength,
    given: showGivenLength(fixing.length, lengths),
    advice: sentences(
      why,
      most >= least
        ? `Allowed: from ${showAtLeast(least, lengths)} to ${showAtMost(most, lengths)}.`
        : `Plate and arm are too thin for ${fixing.kind}: leave fixing out.`,
      fixing.length > most ? thicker : undefined,
    ),
  }
}
