import { shapeExtents } from '../drawing/bounds.js'
import type { LayerName } from '../drawing/layers.js'
import { SMALL, textWidth } from '../drawing/lettering.js'
import type { Label, Path, Shape } from '../drawing/model.js'
import { movedShape } from '../drawing/moved.js'
import { firstClear } from '../drawing/place-label.js'
import { centredLabel, line, ring } from '../drawing/shapes.js'
import { hatch } from '../geometry/hatch.js'
import { boxesMeet, type Extents } from '../geometry/outline.js'
import { add, type Point, point } from '../geometry/point.js'
import { mm, radians } from '../units/convert.js'
import type { CornerEdge } from './corner-edges.js'
import type { Seam, SeamLine } from './seams.js'

/** What is drawn along one seam on one of its two pages, in page coordinates. */
export interface SeamFurniture {
  readonly words: Label
  readonly shapes: readonly Shape[]
  /** Lines to cut along. */
  readonly edges: readonly Shape[]
  readonly marks: readonly Point[]
}

/** How far the words of a trimmed edge stand inside it, the preferred place first. */
const INSIDE = [3, 6, 9, 12]

/** Words along an edge look this far into the page for lines to keep clear of. */
export const WORDS_REACH = 15

/** How far the words of a covered strip stand in it, as shares of its width. */
const INWARD = [0.5, 0.3, 0.7]

/** ISO 3098: the smallest lettering. */
const SMALLEST = mm(1.8)

/** Spacing of the hatching on a strip that will be covered. */
const SPACING = 4

/** Where along an edge its words may stand: from its middle, 0, to its ends, -1 and 1. */
const SHARES = [...Array(49).keys()].map((step) => ((step % 2 === 0 ? -1 : 1) * Math.ceil(step / 2)) / 24)

/**
 * On the later page the edge to trim, on the earlier one the strip that the later will cover, hatched; on both the
 * neighbour's name and the register points.
 *
 * @param trimmed is the page the later one?
 * @param name of the page on the other side
 * @param shift from the drawing's to the page's coordinates
 * @param shown what the page shows, in page coordinates; the words keep clear of it
 */
export const seamFurniture = (
  seam: Seam,
  trimmed: boolean,
  name: string,
  shift: Point,
  shown: readonly Shape[],
): SeamFurniture => {
  const marks = seam.marks.map((mark) => add(mark, shift))
  const words = seamWords(
    seam,
    trimmed ? `trim this edge, lay it on ${name}` : `${name} is laid on here`,
    trimmed ? INSIDE : INWARD.map((share) => share * Math.abs(seam.inner - seam.edge)),
    shift,
    [...shown, ...marks.map((mark) => ring('NOTE', mark, SMALL * 2))],
  )
  return trimmed
    ? { words, shapes: [], edges: [dashedEdge(seam, 'NOTE', shift)], marks }
    : {
        words,
        shapes: [dashedEdge(seam, 'GUIDE', shift), ...coveredStrip(seam, words, shift)],
        edges: [],
        marks,
      }
}

const dashedEdge = (seam: SeamLine, layer: LayerName, shift: Point): Path =>
  line(layer, along(seam, seam.from, 0, shift), along(seam, seam.to, 0, shift), 'dashed')

/** The edge of a page to trim where it meets others only at a corner. */
export const cornerFurniture = (
  { line: seam, on }: CornerEdge,
  shift: Point,
  shown: readonly Shape[],
): SeamFurniture => ({
  words: seamWords(seam, `trim this edge too, it lies on ${on.join(' and ')}`, INSIDE, shift, shown),
  shapes: [],
  edges: [dashedEdge(seam, 'NOTE', shift)],
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
  const [middle] = wordPlaces(seam, text, inward, shift)
  if (!middle) throw new RangeError('there are places along every seam')
  return firstClear(wordPlaces(seam, text, inward, shift), drawn) ?? middle
}

/** From the middle of the edge towards its ends; the words end before it does. */
function* wordPlaces(
  seam: SeamLine,
  text: string,
  inward: readonly number[],
  shift: Point,
): Generator<Label> {
  const turn = radians(seam.upright ? Math.PI / 2 : 0)
  const [half, whole] = [(seam.from + seam.to) / 2, seam.to - seam.from]
  for (const height of [SMALL, SMALLEST]) {
    const play = Math.max(0, whole - textWidth(text, height)) / 2
    for (const away of inward) {
      for (const share of SHARES) {
        yield centredLabel(text, along(seam, half + share * play, away, shift), { height, turn })
      }
    }
  }
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
