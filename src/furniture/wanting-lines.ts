import {
  add,
  cross,
  direction,
  distance,
  dot,
  type Point,
  point,
  scale,
  subtract,
} from '../geometry/point.js'
import { inches, mm } from '../units/convert.js'
import { SAME_POINT } from '../units/tolerance.js'
import type { FurnitureName } from './furniture-names.js'
import { type Look, looksOf, UNSEEN } from './painted.js'
import type { DrawnPiece } from './read-furniture.js'
import { edgeColour, type Stroke, spotsAlong, strokesOf } from './straight-strokes.js'
import type { Refuse, Tell } from './svg-refusal.js'

/** A stroke, as printed, may be this far off: less than a line is wide. */
const LINE = 0.05
/** A stroke a rule can be laid to, and so much of it must be seen. */
const SHORTEST = 1

/** What each scale check carries at least. */
const RULERS: Readonly<Partial<Record<FurnitureName, { readonly length: number; readonly words: string }>>> =
  {
    'scale-check-mm': { length: mm(100), words: '100 mm' },
    'scale-check-in': { length: inches(4), words: '4 in (101.6 mm)' },
  }

/** A scale check must show its ruler, a register mark where its middle is. */
export const wantingLines = (name: FurnitureName, piece: DrawnPiece, tell: Tell, refuse: Refuse): void => {
  const ruler = RULERS[name]
  if (ruler) wantingRuler(ruler, piece, tell, refuse)
  if (name === 'register-mark') wantingCrossing(piece, tell, refuse)
}

const wantingRuler = (
  { length, words }: { readonly length: number; readonly words: string },
  piece: DrawnPiece,
  tell: Tell,
  refuse: Refuse,
): void => {
  const upright = piece.artwork.marks
    .flatMap(strokesOf)
    .filter(({ from, to }) => Math.abs(to.x - from.x) < LINE && Math.abs(to.y - from.y) >= SHORTEST)
  const looks = strokeLooks(piece, upright)
  const seen = upright.filter((stroke) => looks.get(stroke) === 'seen')
  if (pairApart(seen, length)) return
  const unseen = pairApart(upright, length)?.find((stroke) => looks.get(stroke) !== 'seen')
  if (unseen) refuseUnseen(unseen, looks, piece, refuse)
  else tell('a drawing without a ruler', `Draw two upright strokes ${words} apart, to lay a steel rule on.`)
}

/** Two strokes so far apart. */
const pairApart = (strokes: readonly Stroke[], length: number): readonly [Stroke, Stroke] | undefined => {
  const sorted = strokes.toSorted((a, b) => a.to.x - b.to.x)
  let next = 0
  for (const from of sorted) {
    while ((sorted[next]?.to.x ?? Infinity) < from.to.x + length - LINE) next += 1
    const to = sorted[next]
    if (to && to.to.x <= from.to.x + length + LINE) return [from, to]
  }
  return undefined
}

/** Lines that leave the middle itself open begin at most so far from it; so much of them around it must be seen. */
const OPEN = 1
const AROUND = 3
/** Sine of the least angle between two lines that cross: 30°. */
const CROSSING = 0.5

const wantingCrossing = (piece: DrawnPiece, tell: Tell, refuse: Refuse): void => {
  const { across, height, marks } = piece.artwork
  const middle = point(across / 2, height / 2)
  const strokes = marks.flatMap(strokesOf).filter(({ from, to }) => distance(from, to) >= SHORTEST)
  const through = strokes.flatMap((stroke) => aroundMiddle(stroke, middle))
  const looks = strokeLooks(piece, through)
  const seen = through.filter((stroke) => looks.get(stroke) === 'seen')
  if (areCrossed(seen)) return
  const unseen = through.find((stroke) => looks.get(stroke) !== 'seen')
  if (unseen && areCrossed(through)) {
    refuseUnseen(unseen, looks, piece, refuse)
    return
  }
  const [nearest] = strokes
    .filter((stroke) => aroundMiddle(stroke, middle).length === 0)
    .sort((a, b) => fromMiddle(a, middle) - fromMiddle(b, middle))
  const advice = `Two straight lines must cross at the middle of the drawing, ${middle.x} ${middle.y}: that is the point laid on the neighbour's.`
  const element = nearest && elementOf(nearest, piece)
  if (element) refuse(element, undefined, advice)
  else tell('a drawing without a crossing at its middle', advice)
}

/** What of a line lies around the middle, where the line passes through it or would if it ran on a little. */
const aroundMiddle = ({ mark, from, to }: Stroke, middle: Point): Stroke[] => {
  const along = direction(from, to)
  const start = dot(subtract(from, middle), along)
  const end = dot(subtract(to, middle), along)
  const isAside = Math.abs(cross(along, subtract(from, middle))) > LINE
  if (isAside || start > OPEN || end < -OPEN) return []
  const spot = (far: number): Point => add(middle, scale(along, far))
  return [{ mark, from: spot(Math.max(start, -AROUND)), to: spot(Math.min(end, AROUND)) }]
}

/** How far the middle is from the endless line. */
const fromMiddle = ({ from, to }: Stroke, middle: Point): number =>
  Math.abs(cross(direction(from, to), subtract(from, middle)))

const areCrossed = (strokes: readonly Stroke[]): boolean => {
  const [first, ...more] = strokes.map(({ from, to }) => direction(from, to))
  return first !== undefined && more.some((each) => Math.abs(cross(first, each)) >= CROSSING)
}

/** A stroke is seen where enough of it is. */
const strokeLooks = ({ artwork }: DrawnPiece, strokes: readonly Stroke[]): ReadonlyMap<Stroke, Look> => {
  const spots = strokes.map(spotsAlong)
  const looks = looksOf(
    artwork,
    strokes.map(({ mark }, index) => ({ mark, spots: spots[index] ?? [], colour: edgeColour(mark) })),
  )
  return new Map(
    strokes.map((stroke, index) => {
      const here = looks[index] ?? []
      const seen = here.filter((look) => look === 'seen').length / here.length
      const isSeen = seen * distance(stroke.from, stroke.to) >= SHORTEST - SAME_POINT
      return [stroke, isSeen ? 'seen' : here.includes('covered') ? 'covered' : 'pale']
    }),
  )
}

const refuseUnseen = (
  stroke: Stroke,
  looks: ReadonlyMap<Stroke, Look>,
  piece: DrawnPiece,
  refuse: Refuse,
): void => {
  const element = elementOf(stroke, piece)
  const look = looks.get(stroke)
  if (element && look && look !== 'seen') refuse(element, undefined, UNSEEN[look])
}

const elementOf = ({ mark }: Stroke, { drawn }: DrawnPiece) =>
  drawn.find((each) => each.mark === mark)?.element
