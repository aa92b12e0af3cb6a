import { shapeExtents } from '../drawing/bounds.js'
import { SMALL } from '../drawing/lettering.js'
import type { Label, Shape } from '../drawing/model.js'
import { movedShape } from '../drawing/moved.js'
import { firstClear } from '../drawing/place-label.js'
import { centredLabel, line, ring } from '../drawing/shapes.js'
import { hatch } from '../geometry/hatch.js'
import { boxesMeet, type Extents } from '../geometry/outline.js'
import { add, type Point, point } from '../geometry/point.js'
import { mm, radians } from '../units/convert.js'
import type { CornerEdge } from './corner-edges.js'
import { pageName } from './page-name.js'
import type { Seam, SeamLine } from './seams.js'

/** What is drawn along one seam on one of its two pages, in page coordinates. */
export interface SeamFurniture {
  readonly shapes: readonly Shape[]
  readonly marks: readonly Point[]
}

/** How far the words of a trimmed edge stand inside it. */
const INSIDE = 3

/** How far the words of a covered strip stand in it, as shares of its width. */
const INWARD = [0.5, 0.3, 0.7]

/** ISO 3098: the smallest lettering. */
const SMALLEST = mm(1.8)

/** Spacing of the hatching on a strip that will be covered. */
const SPACING = 4

/** Where along a seam its words may stand, as shares of it. */
const SHARES = [...Array(17).keys()].map(
  (step) => 0.5 + (step % 2 === 0 ? -1 : 1) * Math.ceil(step / 2) * 0.055,
)

/**
 * On the later page the edge to trim, on the earlier one the strip that the later will cover, hatched; on both the
 * neighbour's name and the register points.
 *
 * @param trimmed is the page the later one?
 * @param shift from the drawing's to the page's coordinates
 * @param shown what the page shows, in page coordinates; the words keep clear of it
 */
export const seamFurniture = (
  seam: Seam,
  trimmed: boolean,
  shift: Point,
  shown: readonly Shape[],
): SeamFurniture => {
  const marks = seam.marks.map((mark) => add(mark, shift))
  const other = trimmed ? seam.earlier : seam.later
  const name = pageName(other.row, other.column)
  const words = seamWords(
    seam,
    trimmed ? `trim this edge, lay it on ${name}` : `${name} is laid on here`,
    trimmed ? [INSIDE, 2 * INSIDE] : INWARD.map((share) => share * Math.abs(seam.inner - seam.edge)),
    shift,
    [...shown, ...marks.map((mark) => ring('NOTE', mark, SMALL * 2))],
  )
  const edge = line(
    trimmed ? 'NOTE' : 'GUIDE',
    along(seam, seam.from, 0, shift),
    along(seam, seam.to, 0, shift),
    'dashed',
  )
  return { shapes: [edge, words, ...(trimmed ? [] : coveredStrip(seam, words, shift))], marks }
}

/** The edge of a page to trim where it meets others only at a corner. */
export const cornerFurniture = (
  { line: seam, on }: CornerEdge,
  shift: Point,
  shown: readonly Shape[],
): SeamFurniture => ({
  shapes: [
    line('NOTE', along(seam, seam.from, 0, shift), along(seam, seam.to, 0, shift), 'dashed'),
    seamWords(seam, `trim this edge too, it lies on ${on.join(' and ')}`, [INSIDE, 2 * INSIDE], shift, shown),
  ],
  marks: [],
})

/** The point `at` along a seam and `inward` from its edge into the strip, on the page. */
const along = ({ upright, edge, inner }: SeamLine, at: number, inward: number, shift: Point): Point => {
  const across = edge + Math.sign(inner - edge) * inward
  return add(upright ? point(across, at) : point(at, across), shift)
}

const seamWords = (
  seam: SeamLine,
  text: string,
  inward: readonly number[],
  shift: Point,
  drawn: readonly Shape[],
): Label => {
  const turn = radians(seam.upright ? Math.PI / 2 : 0)
  const places = [SMALL, SMALLEST].flatMap((height) =>
    inward.flatMap((inward) =>
      SHARES.map((share) => {
        const middle = along(seam, seam.from + share * (seam.to - seam.from), inward, shift)
        return centredLabel(text, middle, { height, turn })
      }),
    ),
  )
  const [middle] = places
  if (!middle) throw new RangeError('there are places along every seam')
  return firstClear(places, drawn) ?? middle
}

/** Hatching over the strip, on both sides of its words. */
const coveredStrip = (seam: SeamLine, words: Label, shift: Point): Shape[] => {
  const box = shapeExtents([words])
  const [before, after] = seam.upright
    ? [box.min.y - shift.y - 1, box.max.y - shift.y + 1]
    : [box.min.x - shift.x - 1, box.max.x - shift.x + 1]
  const width = Math.abs(seam.inner - seam.edge)
  return [[seam.from, before] as const, [after, seam.to] as const].flatMap(([from, to]) =>
    hatch(
      [
        along(seam, from, 0, shift),
        along(seam, to, 0, shift),
        along(seam, to, width, shift),
        along(seam, from, width, shift),
      ],
      radians(Math.PI / 4),
      SPACING,
    ).map(([a, b]) => line('GUIDE', a, b)),
  )
}

/** Those of the shapes that reach into a box, moved onto the page. */
export const shapesNear = (shapes: ReadonlyMap<Shape, Extents>, box: Extents, shift: Point): Shape[] =>
  [...shapes].flatMap(([shape, reach]) => (boxesMeet(reach, box) ? [movedShape(shape, shift)] : []))
