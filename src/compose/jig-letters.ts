import type { Box } from '../drawing/bounds.js'
import type { Path } from '../drawing/model.js'
import { boxIsClearOf } from '../drawing/place-label.js'
import { outlineSides, type Side, sidesOf } from '../drawing/sides.js'
import { strokeLettering, strokeWidth } from '../drawing/stroke-lettering.js'
import { crossingsAt } from '../geometry/crossings.js'
import { boxOf, type Outline } from '../geometry/outline.js'
import { add, distance, type Point, point, scale, turn } from '../geometry/point.js'
import type { JigPart } from '../jigs/jig.js'
import type { Radians } from '../units/brand.js'
import { radians } from '../units/convert.js'

/** A line of words on a part. */
export interface PartWords {
  readonly text: string
  /** What it belongs to: it stands beside that, or is left out. Anywhere on the part when there is no such place. */
  readonly near?: Point
  /** Direction of reading; level when left out, or upwards where only that has room. */
  readonly turn?: Radians
}

/** Heights of capitals, in mm, the largest that fits first; smaller ones a router's bit would fill. */
const HEIGHTS = [6, 4.5, 3.5, 2.5]
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
export const partLettering = (part: JigPart, words: readonly PartWords[]): Path[] => {
  const outlines = [part.outer, ...part.inner, ...part.marks]
  const taken: Side[] = outlines.flatMap(outlineSides)
  const within = [part.outer, ...part.inner].map((outline) => outlineSides(outline).map(([from]) => from))
  return words.flatMap((line) => {
    const found = placeOf(line, part.outer, within, taken)
    if (!found) return []
    taken.push(...sidesOf(found.box))
    return strokeLettering({ text: line.text, middle: found.middle, height: found.height, turn: found.turn })
  })
}

interface Found {
  readonly middle: Point
  readonly height: number
  readonly turn: Radians
  readonly box: Box
}

const placeOf = (
  { text, near, turn: wanted }: PartWords,
  outer: Outline,
  within: readonly (readonly Point[])[],
  taken: readonly Side[],
): Found | undefined => {
  const { min, max } = boxOf([outer])
  const aim = near ?? point((min.x + max.x) / 2, (min.y + max.y) / 2)
  const places = Array.from({ length: PLACES * PLACES }, (_, index) =>
    point(
      min.x + ((max.x - min.x) * ((index % PLACES) + 0.5)) / PLACES,
      min.y + ((max.y - min.y) * (Math.floor(index / PLACES) + 0.5)) / PLACES,
    ),
  )
  const nearest = [aim, ...places].sort((a, b) => distance(a, aim) - distance(b, aim))
  const turns = wanted === undefined ? [radians(0), radians(Math.PI / 2)] : [wanted]
  for (const height of HEIGHTS) {
    for (const reading of turns) {
      const width = strokeWidth(text, height)
      for (const middle of nearest) {
        if (near && distance(middle, near) > 0.6 * width + BESIDE) break
        if (!isInside(middle, within)) continue
        const box = boxAround(middle, width, height * 1.5, reading)
        if (boxIsClearOf(box, taken, CLEARANCE)) return { middle, height, turn: reading, box }
      }
    }
  }
  return undefined
}

const isInside = ({ x, y }: Point, within: readonly (readonly Point[])[]): boolean =>
  within.filter((polygon) => crossingsAt(polygon, y).filter((at) => at < x).length % 2 === 1).length === 1

const boxAround = (middle: Point, width: number, height: number, reading: Radians): Box => {
  const corner = (x: number, y: number): Point =>
    add(middle, turn(scale(point(x * width, y * height), 0.5), reading))
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)]
}
