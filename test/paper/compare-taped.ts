import type { Point } from '../../src/geometry/point.js'
import type { ReadPage, ReadStroke } from '../read-back/read-pdf.js'
import { tiledPages } from '../read-back/read-seams.js'
import { fitted, leftOver, type Motion, moveBy } from './motion.js'
import { type Stretch, seenOf, tape } from './taped.js'

/** What taped pages differ by from the single page of the same drawing; lengths in mm. */
export interface Difference {
  readonly pages: number
  readonly seams: number
  readonly marksApart: number
  /** How the drawing was turned to be laid on the pages, in degrees from -180 to 180. */
  readonly turned: number
  /** Corners, ends and curves: the worst distance on any page, whether the place is seen there or not. */
  readonly displaced: number
  /** Length that no page shows, of the worst stroke. */
  readonly missing: number
  /** Length that two pages show, of the worst stroke. */
  readonly doubled: number
  /** Strokes of the pages that are none of the single page's. */
  readonly leftOver: number
  /** Strokes of the single page of which the pages show nothing at all. */
  readonly absent: readonly ReadStroke[]
}

/** Strokes are the same when they meet this closely: what a seam may be off. */
const SAME = 0.1

/** Tapes pages by their marks and lays the drawing of the single page over them. */
export const layOver = (tiled: readonly ReadPage[], single: ReadPage) => {
  const drawn = single.strokes.filter(({ clip }) => clip)
  const taped = tape(tiledPages(tiled))
  const strokes = taped.pages.flatMap((lies, index) =>
    lies.page.figure.map((stroke) => ({
      stroke,
      points: stroke.points.map((point) => moveBy(lies.onTable, point)),
      seen: seenOf(stroke, lies, taped.pages.slice(index + 1)),
    })),
  )
  return { drawn, taped, strokes, motion: motionOnto(drawn, strokes) }
}

/** How taped pages and the single page differ, stroke by stroke. */
export const compareTaped = (tiled: readonly ReadPage[], single: ReadPage): Difference => {
  const { drawn, taped, strokes, motion } = layOver(tiled, single)
  const moved = new Map(drawn.map((stroke) => [stroke, [] as Stretch[][]]))
  const displaced: number[] = []
  let left = 0
  for (const { stroke, points, seen } of strokes) {
    const match = matchOf({ stroke, points }, drawn, motion)
    if (match) {
      moved.get(match)?.push(seen)
      displaced.push(leftOver(motion, match.points, points))
    } else if (seen.length > 0) left++
  }
  const seenStrokes = [...moved].map(([stroke, seen]) => ({ stroke, seen: seen.flat() }))
  return {
    pages: taped.pages.length,
    seams: taped.seams,
    marksApart: taped.marksApart,
    turned: (Math.atan2(motion.sin, motion.cos) * 180) / Math.PI,
    displaced: Math.max(0, ...displaced),
    ...worst(
      seenStrokes
        .filter(({ seen }) => seen.length > 0)
        .map(({ stroke, seen }) => coverage(lengthOf(stroke), seen)),
    ),
    leftOver: left,
    absent: seenStrokes.filter(({ seen }) => seen.length === 0).map(({ stroke }) => stroke),
  }
}

const worst = (covered: readonly { missing: number; doubled: number }[]) => ({
  missing: Math.max(0, ...covered.map(({ missing }) => missing)),
  doubled: Math.max(0, ...covered.map(({ doubled }) => doubled)),
})

const isAlike = (a: ReadStroke, b: ReadStroke): boolean =>
  a.colour === b.colour &&
  a.closed === b.closed &&
  a.points.length === b.points.length &&
  Math.abs(a.width - b.width) < 1e-4

interface OnTable {
  readonly stroke: ReadStroke
  readonly points: readonly Point[]
}

/**
 * The rigid motion that lays a stroke of the single page on one of the pages. A stroke unlike all others is taken, of
 * several the longest; where others are like it, the motion counts that finds most of the rest.
 */
const motionOnto = (drawn: readonly ReadStroke[], strokes: readonly OnTable[]): Motion => {
  const alike = (stroke: ReadStroke): number => drawn.filter((other) => isAlike(other, stroke)).length
  const [first] = drawn
    .map((stroke) => ({ stroke, alike: alike(stroke), length: lengthOf(stroke) }))
    .sort((a, b) => a.alike - b.alike || b.length - a.length)
  const fits = strokes
    .filter(({ stroke }) => first && isAlike(stroke, first.stroke))
    .map(({ points }) => ({ motion: fitted(first?.stroke.points ?? [], points), points }))
    .filter(({ motion, points }) => leftOver(motion, first?.stroke.points ?? [], points) < SAME)
    .map(({ motion }) => ({ motion, found: strokes.filter((one) => matchOf(one, drawn, motion)).length }))
    .sort((a, b) => b.found - a.found)
  if (!fits[0]) throw new Error('the pages do not show the drawing')
  return fits[0].motion
}

/** The stroke of the single page that meets it closest. */
const matchOf = (
  { stroke, points }: OnTable,
  drawn: readonly ReadStroke[],
  motion: Motion,
): ReadStroke | undefined =>
  drawn
    .filter((one) => isAlike(one, stroke))
    .map((one) => ({ one, off: leftOver(motion, one.points, points) }))
    .filter(({ off }) => off < SAME)
    .sort((a, b) => a.off - b.off)[0]?.one

const lengthOf = ({ points, closed }: ReadStroke): number =>
  (closed ? [...points, ...points.slice(0, 1)] : points)
    .slice(1)
    .reduce(
      (sum, to, index) => sum + Math.hypot(to.x - (points[index]?.x ?? 0), to.y - (points[index]?.y ?? 0)),
      0,
    )

/** How much of a stroke is shown by none of the stretches, and how much by more than one. */
const coverage = (length: number, stretches: readonly Stretch[]): { missing: number; doubled: number } => {
  let [end, missing, doubled] = [0, 0, 0]
  for (const [from, to] of [...stretches].sort((a, b) => a[0] - b[0])) {
    missing += Math.max(0, from - end)
    doubled += Math.max(0, Math.min(end, to) - from)
    end = Math.max(end, to)
  }
  return { missing: missing + Math.max(0, length - end), doubled }
}
