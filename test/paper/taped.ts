import type { Extents } from '../../src/geometry/outline.js'
import type { Point } from '../../src/geometry/point.js'
import type { ReadStroke } from '../read-back/read-pdf.js'
import type { Join, TiledPage } from '../read-back/read-seams.js'
import { back, fitted, leftOver, type Motion, moveBy, STILL } from './motion.js'

/** A page where it lies after taping; later ones lie on earlier ones. */
export interface TapedPage {
  readonly page: TiledPage
  /** From the page to the table. */
  readonly onTable: Motion
}

export interface Taped {
  readonly pages: readonly TapedPage[]
  /** The worst distance between the two halves of a register mark, over all seams and both their marks, in mm. */
  readonly marksApart: number
  readonly seams: number
}

/** Tapes pages as their words and register marks say, the first page first. */
export const tape = (pages: readonly TiledPage[]): Taped => {
  const placed = new Map<string, Motion>()
  const [first] = pages
  if (first) placed.set(first.name, STILL)
  for (const name of placed.keys()) {
    const [page, lies] = [named(pages, name), placed.get(name) ?? STILL]
    for (const join of page.joins) {
      const other = named(pages, join.neighbour)
      if (placed.has(other.name)) continue
      const marks = answer(page, join, other).marks
      placed.set(other.name, fitted(marks, onTable(lies, join.marks)))
    }
  }
  if (placed.size !== pages.length) throw new Error('some pages hang on no other')
  const seams = pages.flatMap((page) =>
    page.joins.filter(({ trimmed }) => trimmed).map((join) => ({ page, join })),
  )
  const apart = seams.map(({ page, join }) => {
    const other = named(pages, join.neighbour)
    const [one, two] = [placed.get(page.name) ?? STILL, placed.get(other.name) ?? STILL]
    return leftOver(STILL, onTable(one, join.marks), onTable(two, answer(page, join, other).marks))
  })
  return {
    pages: pages.map((page) => ({ page, onTable: placed.get(page.name) ?? STILL })),
    marksApart: Math.max(0, ...apart),
    seams: seams.length,
  }
}

const onTable = (motion: Motion, points: readonly Point[]): Point[] =>
  points.map((point) => moveBy(motion, point))

const named = (pages: readonly TiledPage[], name: string): TiledPage => {
  const found = pages.filter((page) => page.name === name)
  if (found.length !== 1 || !found[0]) throw new Error(`${found.length} pages are called ${name}`)
  return found[0]
}

/** What the neighbour says of the same seam: the other way round, with as many marks, two or more. */
const answer = (page: TiledPage, { trimmed, upright, marks }: Join, other: TiledPage): Join => {
  const found = other.joins.filter(
    (join) => join.neighbour === page.name && join.upright === upright && join.trimmed !== trimmed,
  )
  if (found.length !== 1 || !found[0]) throw new Error(`${other.name} does not know of ${page.name}`)
  if (marks.length < 2 || found[0].marks.length !== marks.length)
    throw new Error(`${page.name} and ${other.name} have ${marks.length} and ${found[0].marks.length} marks`)
  return found[0]
}

/** A stretch of a stroke: from and to, measured along it. */
export type Stretch = readonly [number, number]

/**
 * What is seen of a stroke on the taped pages: it lies in the frame of its page, and no later page's paper is on it.
 * Paper is opaque, and trimmed only where its own words say so: its white margins cover too.
 */
export const seenOf = (stroke: ReadStroke, lies: TapedPage, later: readonly TapedPage[]): Stretch[] => {
  const points = stroke.closed ? [...stroke.points, ...stroke.points.slice(0, 1)] : stroke.points
  const covers = later.map(({ page, onTable }) => ({ paper: inset(page.paper), toPage: back(onTable) }))
  const frame = inset(lies.page.frame)
  const found: Stretch[] = []
  let start = 0
  points.slice(1).forEach((to, index) => {
    const from = points[index] ?? to
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    const shown = within(from, to, frame)
    let seen: Stretch[] = shown ? [shown] : []
    const [a, b] = onTable(lies.onTable, [from, to])
    for (const { paper, toPage } of covers) {
      if (seen.length === 0 || !a || !b) break
      const covered = within(moveBy(toPage, a), moveBy(toPage, b), paper)
      if (covered) seen = seen.flatMap((stretch) => without(stretch, covered))
    }
    found.push(...seen.map(([low, high]): Stretch => [start + low * length, start + high * length]))
    start += length
  })
  return found
}

/** A line that runs along an edge is taken to be on the page below, whichever way 32-bit readers round it. */
const EDGE = 0.0005

const inset = ({ min, max }: Extents): Extents => ({
  min: { x: min.x + EDGE, y: min.y + EDGE },
  max: { x: max.x - EDGE, y: max.y - EDGE },
})

/** The shares of a straight line between which it runs in a box (Liang and Barsky). */
const within = (from: Point, to: Point, { min, max }: { min: Point; max: Point }): Stretch | undefined => {
  let [low, high] = [0, 1]
  for (const [start, way, least, most] of [
    [from.x, to.x - from.x, min.x, max.x],
    [from.y, to.y - from.y, min.y, max.y],
  ] as const) {
    if (way === 0) {
      if (start < least || start > most) return undefined
      continue
    }
    const [one, two] = [(least - start) / way, (most - start) / way]
    low = Math.max(low, Math.min(one, two))
    high = Math.min(high, Math.max(one, two))
  }
  return low < high ? [low, high] : undefined
}

const without = ([low, high]: Stretch, [from, to]: Stretch): Stretch[] =>
  [[low, Math.min(high, from)] as const, [Math.max(low, to), high] as const].filter(([a, b]) => a < b)
