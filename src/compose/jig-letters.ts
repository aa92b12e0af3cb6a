import type { Box } from '../drawing/bounds.js'
import type { Path } from '../drawing/model.js'
import { boxIsClearOf } from '../drawing/place-label.js'
import { outlineSides, type Side, sidesOf } from '../drawing/sides.js'
import { strokeLettering, strokeWidth } from '../drawing/stroke-lettering.js'
import { encloses } from '../geometry/crossings.js'
import { gridOver } from '../geometry/grid-over.js'
import { distanceToEdge } from '../geometry/leaves-room.js'
import { boxOf, edges } from '../geometry/outline.js'
import { add, between, distance, type Point, point, scale, turn } from '../geometry/point.js'
import type { JigPart } from '../jigs/jig.js'
import type { Radians } from '../units/brand.js'
import { radians } from '../units/convert.js'

/** What words on a part keep clear of. */
type LetteredPart = Pick<JigPart, 'outer' | 'inner' | 'marks'>

/** A line of words on a part. */
export interface PartWords {
  readonly text: string
  /** In place of the text where that finds no room; level where it finds none along the line either. */
  readonly short?: string
  /** What it belongs to: it stands beside that, or is left out. Anywhere on the part when there is no such place. */
  readonly near?: Point
  /** Its middle, where it has room of its own, so many mm across; letters that run further are not tried. */
  readonly in?: { readonly middle: Point; readonly across: number }
  /** Direction of reading; level when left out, or upwards where only that has room. */
  readonly turn?: Radians
}

/** The words of a part that is turned about the origin. */
export const turnedWords = (
  { near, in: own, turn: reading, ...line }: PartWords,
  by: Radians,
): PartWords => ({
  ...line,
  ...(near ? { near: turn(near, by) } : {}),
  ...(own ? { in: { ...own, middle: turn(own.middle, by) } } : {}),
  ...(reading === undefined ? {} : { turn: readable(radians(reading + by)) }),
})

/** Words along a line that leans past upright would stand on their heads. */
export const readable = (turn: Radians): Radians => radians(turn - Math.PI * Math.ceil(turn / Math.PI - 0.5))

/**
 * Heights of capitals, in mm, the largest that fits first; smaller ones a router's bit would fill. Words of a part read
 * one way where they can: upright only what would be very small else.
 */
const SIZES = [
  ...[6, 4.5, 3.5].map((height) => ({ height, upright: false })),
  ...[6, 4.5, 3.5].map((height) => ({ height, upright: true })),
  { height: 2.5, upright: false },
  { height: 2.5, upright: true },
]
const isLevel = ({ upright }: (typeof SIZES)[number]): boolean => !upright

/** Wood between words and everything cut or marked. */
const CLEARANCE = 2
/** Words that belong to a place begin or end at most about so far from it. */
const BESIDE = 12
/** Places tried across and up the part. */
const PLACES = 28

/**
 * Words as single strokes on a part, clear of its edges, its marks and each other, each as large as fits and as near
 * as can be to where it should stand. What finds no room is left out: the notes on paper say it too.
 */
export const partLettering = (part: LetteredPart, words: readonly PartWords[]): Path[] => {
  const sides = [part.outer, ...part.inner, ...part.marks].flatMap(outlineSides)
  const roomAt = roomOn(part)
  const places = gridOver(part.outer, PLACES)
  const { min, max } = boxOf([part.outer])
  const boxes: Box[] = []
  return words.flatMap((line) => {
    const aim = line.in?.middle ?? line.near ?? between(min, max, 0.5)
    const roomBeside = (at: Point): number => (boxes.some((box) => isInside(at, [box])) ? 0 : roomAt(at))
    const tried = line.in ? [aim] : nearestFirst([aim, ...places], aim)
    const taken = [...sides, ...boxes.flatMap(sidesOf)]
    const { short, turn: _, ...level } = line
    for (const each of [
      line,
      ...(short === undefined
        ? []
        : [
            { ...line, text: short },
            { ...level, text: short },
          ]),
    ]) {
      const found = placeOf(each, tried, roomBeside, taken)
      if (!found) continue
      boxes.push(found.box)
      return strokeLettering({
        text: each.text,
        middle: found.middle,
        height: found.height,
        turn: found.turn,
      })
    }
    return []
  })
}

/** How far a place is from the nearest of the part's lines; 0 off its wood. Each place is worked out once. */
const roomOn = (part: LetteredPart): ((at: Point) => number) => {
  const within = [part.outer, ...part.inner].map((outline) => outlineSides(outline).map(([from]) => from))
  const lines = [part.outer, ...part.inner, ...part.marks].flatMap(edges)
  const known = new Map<Point, number>()
  return (at) => {
    const room =
      known.get(at) ?? (isInside(at, within) ? Math.min(...lines.map((line) => distanceToEdge(at, line))) : 0)
    known.set(at, room)
    return room
  }
}

interface Found {
  readonly middle: Point
  readonly height: number
  readonly turn: Radians
  readonly box: Box
}

const nearestFirst = (places: readonly Point[], aim: Point): Point[] =>
  places
    .map((at) => ({ at, away: distance(at, aim) }))
    .sort((a, b) => a.away - b.away)
    .map(({ at }) => at)

/** @param places where the line's middle may be, those to be preferred first */
const placeOf = (
  { text, near, in: own, turn: wanted }: PartWords,
  places: readonly Point[],
  roomAt: (at: Point) => number,
  taken: readonly Side[],
): Found | undefined => {
  for (const { height, upright } of wanted === undefined && !own ? SIZES : SIZES.filter(isLevel)) {
    const [width, high] = [strokeWidth(text, height), height * 1.5]
    if (own && width > own.across) continue
    const reading = radians((wanted ?? 0) + (upright ? Math.PI / 2 : 0))
    // A line nearer than this would run through the words, however they are turned.
    const needed = Math.min(width, high) / 2 + CLEARANCE
    for (const at of places) {
      if (near && distance(at, near) > 0.6 * width + BESIDE) break
      if (roomAt(at) < needed) continue
      const box = boxAround(at, width, high, reading)
      if (boxIsClearOf(box, taken, CLEARANCE)) return { middle: at, height, turn: reading, box }
    }
  }
  return undefined
}

const isInside = (at: Point, within: readonly (readonly Point[])[]): boolean =>
  within.filter((polygon) => encloses(polygon, at)).length === 1

const boxAround = (middle: Point, width: number, height: number, reading: Radians): Box => {
  const corner = (x: number, y: number): Point =>
    add(middle, turn(scale(point(x * width, y * height), 0.5), reading))
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)]
}
