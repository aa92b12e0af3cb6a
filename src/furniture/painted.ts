import type { ArtFill, ArtMark, ArtPath, ArtStep, Artwork } from '../drawing/artwork.js'
import { distance, type Point, point } from '../geometry/point.js'
import { standsOut } from './contrast.js'

/** Side of the cells in which a piece is looked at, in mm: a sixth of the lowest capital. */
const CELL = 0.25
/** A line of that width hides lettering as a filled shape does; narrower ones may run through. */
const HIDES = 1
/** Straight pieces of a curve. */
const CHORDS = 16

/** Bare paper. */
export const PAPER = '#ffffff'

/** Spots of a mark that must be seen, and the colour it has there. */
export interface Looked {
  readonly mark: ArtMark
  readonly spots: readonly Point[]
  readonly colour: string
}

/** How a spot comes out in print: well seen, too pale for what lies under it, or hidden by what is painted later. */
export type Look = 'seen' | Unseen
export type Unseen = 'pale' | 'covered'

interface Paint {
  readonly mark: ArtMark
  readonly colour: string
}

/** How the spots of each look once all marks are painted, one over the other. */
export const looksOf = ({ across, height, marks }: Artwork, looked: readonly Looked[]): readonly Look[][] => {
  const [columns, rows] = [Math.ceil(across / CELL), Math.ceil(height / CELL)]
  /** The number of the paint on top in each cell; 0 is bare paper. */
  const top = new Uint16Array(columns * rows)
  const paints: (Paint | undefined)[] = [undefined]
  const onTop = (spots: readonly Point[]): number[] =>
    spots.map(
      ({ x, y }) =>
        top[within(Math.floor(y / CELL), rows) * columns + within(Math.floor(x / CELL), columns)] ?? 0,
    )
  const under = new Map<Looked, readonly number[]>()
  const byMark = new Map<ArtMark, Looked[]>()
  for (const each of looked) byMark.set(each.mark, [...(byMark.get(each.mark) ?? []), each])
  for (const mark of marks) {
    for (const each of byMark.get(mark) ?? []) under.set(each, onTop(each.spots))
    if (mark.kind === 'text') continue
    for (const { colour, parts, rule } of paintedParts(mark)) {
      paints.push({ mark, colour })
      for (const part of parts) fillCells(part, rule, columns, rows, top, paints.length - 1)
    }
  }
  return looked.map((each) => {
    const after = onTop(each.spots)
    return (under.get(each) ?? []).map((before, index): Look => {
      const now = after[index] ?? 0
      if (now !== before && paints[now]?.mark !== each.mark) return 'covered'
      return standsOut(each.colour, paints[before]?.colour ?? PAPER) ? 'seen' : 'pale'
    })
  })
}

/** What is said of a mark that a page needs and nobody sees. */
export const UNSEEN: Readonly<Record<Unseen, string>> = {
  pale: 'It hardly shows on what lies under it, and a page cannot do without it. Allowed: ink that does, such as black on white.',
  covered:
    'What stands later in the file is painted over it, and a page cannot do without it. Draw that before it, or elsewhere.',
}

const within = (index: number, count: number): number => Math.min(Math.max(index, 0), count - 1)

/** Polygons that are filled together. */
type Part = readonly (readonly Point[])[]

interface PaintedParts {
  readonly colour: string
  readonly parts: readonly Part[]
  readonly rule: ArtFill['rule']
}

const paintedParts = ({ steps, fill, stroke }: ArtPath): PaintedParts[] => {
  const chains = straightened(steps)
  return [
    ...(fill ? [{ ...fill, parts: [chains] }] : []),
    ...(stroke && stroke.width >= HIDES
      ? [{ colour: stroke.colour, parts: widened(chains, stroke.width), rule: 'nonzero' as const }]
      : []),
  ]
}

/** The path's parts as chains of points; one that is closed ends where it began. */
const straightened = (steps: readonly ArtStep[]): Point[][] => {
  const chains: Point[][] = []
  for (const step of steps) {
    const chain = chains.at(-1)
    const [first, last] = [chain?.[0], chain?.at(-1)]
    if (step.to === 'move') chains.push([step.at])
    else if (!chain || !first || !last) throw new RangeError('artwork begins with a move')
    else if (step.to === 'start') chain.push(first)
    else if (!('from' in step)) chain.push(step.at)
    else {
      for (let part = 1; part <= CHORDS; part++) chain.push(onCurve(last, step, part / CHORDS))
    }
  }
  return chains
}

type Curve = Extract<ArtStep, { to: 'curve' }>

const onCurve = (start: Point, { from, toward, at }: Curve, t: number): Point => {
  const u = 1 - t
  const along = (axis: 'x' | 'y'): number =>
    u * u * u * start[axis] + 3 * u * u * t * from[axis] + 3 * u * t * t * toward[axis] + t * t * t * at[axis]
  return point(along('x'), along('y'))
}

/** Each straight piece of a line as wide as the line is. */
const widened = (chains: readonly (readonly Point[])[], width: number): Part[] =>
  chains.flatMap((chain) =>
    chain.slice(1).flatMap((to, index): Part[] => {
      const from = chain[index]
      if (!from || distance(from, to) === 0) return []
      const aside = width / 2 / distance(from, to)
      const [x, y] = [(to.y - from.y) * aside, (from.x - to.x) * aside]
      return [
        [
          [
            point(from.x + x, from.y + y),
            point(to.x + x, to.y + y),
            point(to.x - x, to.y - y),
            point(from.x - x, from.y - y),
          ],
        ],
      ]
    }),
  )

/** Writes the paint into every cell whose middle lies inside. */
const fillCells = (
  part: Part,
  rule: ArtFill['rule'],
  columns: number,
  rows: number,
  top: Uint16Array,
  paint: number,
): void => {
  let [low, high] = [Infinity, -Infinity]
  for (const polygon of part)
    for (const { y } of polygon) {
      low = Math.min(low, y)
      high = Math.max(high, y)
    }
  const last = Math.min(Math.ceil(high / CELL), rows)
  for (let row = Math.max(Math.floor(low / CELL), 0); row < last; row++) {
    const met = crossings(part, (row + 0.5) * CELL)
    let winding = 0
    met.forEach(({ x, up }, index) => {
      winding += rule === 'evenodd' ? 1 : up ? 1 : -1
      const next = met[index + 1]
      const inside = rule === 'evenodd' ? winding % 2 === 1 : winding !== 0
      if (!inside || !next) return
      const from = Math.max(Math.ceil(x / CELL - 0.5), 0)
      const to = Math.min(Math.ceil(next.x / CELL - 0.5), columns)
      if (to > from) top.fill(paint, row * columns + from, row * columns + to)
    })
  }
}

/** Where the polygons' edges cross a level, from left to right. */
const crossings = (part: Part, level: number): { x: number; up: boolean }[] => {
  const met: { x: number; up: boolean }[] = []
  for (const polygon of part) {
    let a = polygon.at(-1)
    for (const b of polygon) {
      if (a && a.y <= level !== b.y <= level)
        met.push({ x: a.x + ((level - a.y) / (b.y - a.y)) * (b.x - a.x), up: b.y > level })
      a = b
    }
  }
  return met.sort((a, b) => a.x - b.x)
}
