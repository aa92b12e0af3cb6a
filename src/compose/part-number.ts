import type { Shape } from '../drawing/model.js'
import { centredLabel, line } from '../drawing/shapes.js'
import { outlineSides } from '../drawing/sides.js'
import { encloses } from '../geometry/crossings.js'
import { gridOver } from '../geometry/grid-over.js'
import { distanceToEdge } from '../geometry/leaves-room.js'
import { boxOf, edges, type Outline } from '../geometry/outline.js'
import { distance, type Point, point } from '../geometry/point.js'

/** Room on either side of the picture for numbers that have none in it, in mm. */
export const BESIDE = 5
/** Heights of numbers, the largest that has room first, and the room that one's box needs around its middle. */
const LARGE = 3
const HEIGHTS = [LARGE, 2.2]
const NEEDS = 0.95
/** The middle of a number beside the picture lies so far below its top, or the number would run into what stands there. */
const BELOW_TOP = 1.5
/** Numbers beside the picture stand so far apart. */
const APART = 4
/** How much higher or lower than its part a number beside the picture may stand. */
const LIFTS = [0, 1.1 * APART, -1.1 * APART, 2.2 * APART, -2.2 * APART]
/** Places tried across and up a part. */
const PLACES = 30

/** A part as it lies in the picture. */
export interface Placed {
  /** As in the list beside the picture, from 1 on. */
  readonly number: number
  readonly outline: Outline
  readonly holes: readonly Outline[]
}

/** Parts, from the lowest up, the wood on them, and lines that cover nothing; the picture reaches from {@link BESIDE} to `right`. */
export interface Picture {
  readonly placed: readonly Placed[]
  readonly wood: readonly Outline[]
  readonly lines: readonly Outline[]
  readonly right: number
}

/**
 * Every part's number in its roomiest place; beside the picture, at the end of a line, where no place has room. Numbers,
 * as ISO 6433 has them for parts in an assembly: letters stand for kinds of blanks.
 */
export const partNumbers = (count: number, picture: Picture): Shape[] => {
  const ends: Point[] = []
  const numbers: Point[] = []
  const within: Shape[] = []
  const without: (readonly [number, readonly Point[]])[] = []
  for (let number = 1; number <= count; number += 1) {
    const own = picture.placed.filter((each) => each.number === number)
    // Of copies the one that is nearest to the right edge, so that the line crosses little.
    const chosen = own.reduce<Placed | undefined>(
      (a, b) => (a && rightOf(a) >= rightOf(b) ? a : b),
      undefined,
    )
    if (!chosen) continue
    const places = placesOn(chosen, picture).filter((place) =>
      numbers.every((other) => distance(place, other) > APART),
    )
    const { place, room } = roomiest(places, picture)
    const height = HEIGHTS.find((each) => room >= NEEDS * each)
    if (height === undefined) without.push([number, places.length > 0 ? places : [place]])
    else {
      numbers.push(place)
      within.push(centredLabel(String(number), place, { height, layer: 'PATTERN' }))
    }
  }
  // Lines are drawn when all numbers in the picture are known, for they pass beside them.
  const beside = without.flatMap(([number, places]) => {
    const { from, end } = lineOut(places, ends, numbers, picture)
    ends.push(end)
    return [
      line('NOTE', from, end),
      centredLabel(String(number), point(end.x + (end.x > from.x ? 2 : -2), end.y), {
        height: LARGE,
        layer: 'PATTERN',
      }),
    ]
  })
  return [...within, ...beside]
}

/** The shortest line from a part to either side of the picture, level or nearly so, that ends apart from others. */
const lineOut = (
  places: readonly Point[],
  ends: readonly Point[],
  numbers: readonly Point[],
  { right }: Picture,
): { readonly from: Point; readonly end: Point } => {
  const lines = places.flatMap((from) =>
    [BESIDE - 1, right + 1].flatMap((x) =>
      LIFTS.map((lift) => {
        const end = point(x, from.y + lift)
        return { from, end, length: distance(from, end) }
      }),
    ),
  )
  const low = lines.filter(({ end }) => end.y <= -BELOW_TOP)
  const free = low.filter(
    ({ from, end }) =>
      ends.every((other) => distance(end, other) > APART) &&
      numbers.every((other) => isBeside(other, from, end)),
  )
  return (free.length > 0 ? free : lines).reduce((a, b) => (b.length < a.length ? b : a))
}

/** Does a line pass beside a number? */
const isBeside = (number: Point, from: Point, end: Point): boolean =>
  edges({ closed: false, vertices: [from, end] }).every(
    (edge) => distanceToEdge(number, edge) > NEEDS * LARGE,
  )

const rightOf = ({ outline }: Placed): number => boxOf([outline]).max.x

const cornersOf = (outline: Outline): Point[] => outlineSides(outline).map(([corner]) => corner)

/** Places on a part that neither parts above it nor wood cover. */
const placesOn = (own: Placed, { placed, wood }: Picture): Point[] => {
  const part = cornersOf(own.outline)
  const above = [...placed.slice(placed.indexOf(own) + 1).map(({ outline }) => outline), ...wood]
  const covered = [...own.holes, ...above].map(cornersOf)
  return gridOver(own.outline, PLACES).filter(
    (place) => encloses(part, place) && !covered.some((corners) => encloses(corners, place)),
  )
}

/** The place that is farthest from every line. */
const roomiest = (
  places: readonly Point[],
  { placed, wood, lines: more }: Picture,
): { readonly place: Point; readonly room: number } => {
  const lines = [...placed.flatMap(({ outline, holes }) => [outline, ...holes]), ...wood, ...more].flatMap(
    edges,
  )
  return places.reduce(
    (best, place) =>
      lines.every((edge) => distanceToEdge(place, edge) > best.room)
        ? { place, room: Math.min(...lines.map((edge) => distanceToEdge(place, edge))) }
        : best,
    { place: places[0] ?? point(0, 0), room: 0 },
  )
}
