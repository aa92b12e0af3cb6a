import { type ArtMark, type ArtPath, type ArtStep, type ArtText, MITER_LIMIT } from '../drawing/artwork.js'
import { TAIL, textWidth } from '../drawing/lettering.js'
import type { Extents } from '../geometry/outline.js'
import { add, direction, distance, type Point, point, scale, subtract, turn } from '../geometry/point.js'
import * as maths from '../units/maths.js'
import { SAME_POINT } from '../units/tolerance.js'
import { linesDrop, READABLE, slotsIn } from './slots.js'

/** Accents over capitals reach that much above the baseline, over the height of a capital (Helvetica: Å 936). */
const ACCENTED = 0.936 / 0.718

/** The box around a mark's ink: a line's width, its mitred corners, and the room of a text that is yet to be filled. */
export const artExtents = (mark: ArtMark): Extents =>
  boxAround(mark.kind === 'text' ? textCorners(mark) : [...pathInk(mark)])

const boxAround = (spots: readonly Point[]): Extents => {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const { x, y } of spots) {
    // NaN must not slip through.
    if (!Number.isFinite(x) || !Number.isFinite(y)) return ENDLESS
    left = Math.min(left, x)
    right = Math.max(right, x)
    bottom = Math.min(bottom, y)
    top = Math.max(top, y)
  }
  return { min: point(left, bottom), max: point(right, top) }
}

const ENDLESS: Extents = { min: point(-Infinity, -Infinity), max: point(Infinity, Infinity) }

const textCorners = (mark: ArtText): Point[] => {
  const { text, at, anchor, height, turn: angle, room } = mark
  const across = room ?? textWidth(text, height)
  const left = anchor === 'start' ? 0 : anchor === 'middle' ? -across / 2 : -across
  const accented = slotsIn(text).length > 0 || /[^\x20-\x7e]/.test(text)
  const top = accented ? height * ACCENTED : height
  // Further lines are lower than a first that stands alone.
  const bottom = Math.max(TAIL * height, linesDrop(mark) + TAIL * Math.min(height, READABLE))
  return [left, left + across].flatMap((x) => [-bottom, top].map((y) => add(at, turn(point(x, y), angle))))
}

function* pathInk({ steps, stroke }: ArtPath): Generator<Point> {
  const half = (stroke?.width ?? 0) / 2
  const around = (spot: Point): Point[] => [
    point(spot.x - half, spot.y - half),
    point(spot.x + half, spot.y + half),
  ]
  for (const spots of subpaths(steps)) {
    for (const piece of spots) for (const spot of extremes(piece)) yield* around(spot)
    if (stroke?.join === 'miter') for (const tip of miterTips(spots, half)) yield tip
  }
}

/** One edge by its control points: two of a line, four of a curve; a move by itself is one. */
type Piece = readonly Point[]

/** The edges of each part of the path, the closing one too. */
const subpaths = (steps: readonly ArtStep[]): Piece[][] => {
  const parts: Piece[][] = []
  let [start, now] = [point(0, 0), point(0, 0)]
  for (const step of steps) {
    if (step.to === 'move') {
      parts.push([[step.at]])
      start = step.at
    } else if (step.to === 'start') parts.at(-1)?.push([now, start])
    else parts.at(-1)?.push(step.to === 'curve' ? [now, step.from, step.toward, step.at] : [now, step.at])
    now = step.to === 'start' ? start : step.at
  }
  return parts
}

/** The ends of an edge, and where a curve turns back in x or in y: the roots of its derivative. */
const extremes = (piece: Piece): Point[] => {
  const [a, b, c, d] = piece
  if (!a || !b || !c || !d) return [...piece]
  const turns = (['x', 'y'] as const).flatMap((axis) => {
    const [p, q, r] = [b[axis] - a[axis], c[axis] - b[axis], d[axis] - c[axis]]
    return roots(p - 2 * q + r, 2 * (q - p), p)
  })
  return [a, d, ...turns.filter((t) => t > 0 && t < 1).map((t) => onCurve(a, b, c, d, t))]
}

/** a t² + b t + c = 0, in the form that loses no digits. */
const roots = (a: number, b: number, c: number): number[] => {
  const inside = b * b - 4 * a * c
  if (inside < 0) return []
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(inside)) / 2
  return [q / a, c / q]
}

const onCurve = (a: Point, b: Point, c: Point, d: Point, t: number): Point => {
  const u = 1 - t
  return [scale(a, u * u * u), scale(b, 3 * u * u * t), scale(c, 3 * u * t * t), scale(d, t * t * t)].reduce(
    add,
  )
}

/** The outer corners of mitred joins within the limit. */
const miterTips = (pieces: readonly Piece[], half: number): Point[] => {
  const drawn = pieces.filter((piece) => piece.some((spot) => distance(spot, piece[0] ?? spot) > SAME_POINT))
  const [first, last] = [drawn[0], drawn.at(-1)]
  const [start, end] = [first?.[0], last?.at(-1)]
  const closed = start && end && distance(start, end) < SAME_POINT
  const pairs = drawn.map(
    (piece, index) => [piece, drawn[index + 1] ?? (closed ? first : undefined)] as const,
  )
  return pairs.flatMap(([into, out]) => (into && out ? miterTip(into, out, half) : []))
}

const miterTip = (into: Piece, out: Piece, half: number): Point[] => {
  const corner = into.at(-1)
  const before = into.findLast((spot) => corner && distance(spot, corner) > SAME_POINT)
  const after = out.find((spot) => corner && distance(spot, corner) > SAME_POINT)
  if (!corner || !before || !after) return []
  // Points out of the corner, as long as twice the sine of half the turn from edge to edge.
  const outward = subtract(direction(before, corner), direction(corner, after))
  const bend = maths.hypot(outward.x, outward.y)
  // Half the angle between the edges and half the turn make a right angle.
  const sine = Math.sqrt(Math.max(0, 1 - maths.square(bend / 2)))
  if (bend < SAME_POINT || sine * MITER_LIMIT < 1) return []
  return [add(corner, scale(outward, half / (sine * bend)))]
}
