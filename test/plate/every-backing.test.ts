import { describe, expect, it, vi } from 'vitest'
import { plateCuts } from '../../src/compose/plate-cuts.js'
import type { Outline } from '../../src/geometry/outline.js'
import { between, distance, point, scale } from '../../src/geometry/point.js'
import { cornerDirection, type Star, starOutline } from '../../src/geometry/star.js'
import type { BackingOrder, Cutter } from '../../src/order/order.js'
import type { BackingPlan } from '../../src/plate/plan-backing.js'
import { mm } from '../../src/units/convert.js'
import { area, type Jts, place, stretch } from '../geometry/jts.js'
import { SHAPES, showShape, twoStarsOf } from '../geometry/sweep.js'
import { hanging, plateOf, ROUTER } from './backing-orders.js'
import { ARCS, EXACT, insetOf, SHAPED, toValley } from './shaped.js'

vi.setConfig({ testTimeout: 60_000 })

/* Every shape of plate with every way to hang it, nailed, its edge cut with tabs: judged by JTS over stars of every regime. */

const HANGINGS = ['none', 'cord', 'screws', 'keyhole'] as const

const TABS = { count: 3, length: mm(6) }
const TABBED: Cutter = { ...ROUTER, tabs: TABS }

const STARS = SHAPES.flatMap((shape) =>
  twoStarsOf(shape)
    .slice(0, 1)
    .map((star) => [showShape(shape), star] as const),
)

/** A third of them, another for the next shape or hanging: each shape and each hanging meets every star. */
const starsFor = (turn: number) => STARS.filter((_, index) => (index + turn) % 3 === 0)

/** Wall around openings, and what nails keep clear of: so little that most stars have room for both. */
const WALL = 3
const CLEAR = 4

/** With nails where they find room, without them where they do not. */
const plateFor = (
  star: Star,
  shape: Partial<BackingOrder>,
  kind: (typeof HANGINGS)[number],
  chamfer: number,
) => {
  const order: BackingOrder = {
    shape: 'star',
    inset: mm(insetOf(star)),
    covers: mm(0.4 * star.jointEdge),
    ...shape,
    ...(kind === 'none' ? {} : { hanging: hanging(kind, { wall: mm(WALL) }) }),
  }
  const shop = { chamfer, cutter: TABBED }
  return (
    plateOf(star, { ...order, fixing: { kind: 'nails', clear: mm(CLEAR) } }, shop) ??
    plateOf(star, order, shop)
  )
}

const armsOf = (star: Star): Jts[] =>
  Array.from({ length: star.points }, (_, arm) => {
    const by = cornerDirection(star.points, arm)
    const tip = scale(point(Math.cos(by), Math.sin(by)), star.radius)
    const [before, after] = [toValley(star, arm - 1, star.jointEdge), toValley(star, arm, star.jointEdge)]
    return area({ vertices: [point(0, 0), before, tip, after], closed: true })
  })

const jointsOf = (star: Star, length: number): Jts[] =>
  Array.from({ length: star.points }, (_, arm) => stretch(point(0, 0), toValley(star, arm, length)))

const expectInside = (plate: BackingPlan, star: Star, chamfer: number, exact: number, told: string) => {
  const [wood, board] = [area(starOutline(star)), area(plate.outline)]
  expect(wood.contains(board), told).toBe(true)
  expect(plate.margin, told).toBeGreaterThanOrEqual(plate.order.inset + chamfer - EXACT)
  expect(wood.getBoundary().distance(board), told).toBeGreaterThan(plate.margin - exact)
  expect(plate.covers, told).toBeGreaterThanOrEqual((plate.order.covers ?? 0) - EXACT)
  for (const joint of jointsOf(star, plate.covers - 2 * exact)) expect(board.covers(joint), told).toBe(true)
}

/** Without its holes the star's centre of mass is its centre; arms of 19 mm, a plate twice as heavy as they. */
const centreOfMass = (star: Star, plate: BackingPlan): number => {
  const wood = area(starOutline(star))
  const board = area(plate.outline, plate.part.inner)
  const [arms, back] = [19 * wood.getArea(), 8 * board.getArea()]
  return (arms * wood.getCentroid().getY() + back * board.getCentroid().getY()) / (arms + back)
}

const expectHung = (plate: BackingPlan, star: Star, told: string) => {
  const openings = plate.part.inner.map((opening) => area(opening))
  const { kind, wall, height } = plate.hanging ?? { kind: 'none', wall: Infinity, height: Infinity }
  expect(openings, told).toHaveLength(kind === 'none' ? 0 : kind === 'keyhole' ? 1 : 2)
  if (kind === 'none') return
  const board = area(plate.outline)
  const rim = board.getBoundary()
  const joints = jointsOf(star, star.jointEdge)
  expect(wall, told).toBeGreaterThanOrEqual(WALL - EXACT)
  const lowest = centreOfMass(star, plate)
  expect(height, told).toBeGreaterThan(lowest)
  expect(openings.reduce((sum, each) => sum + each.getCentroid().getX(), 0)).toBeCloseTo(0, 6)
  for (const opening of openings) {
    expect(board.contains(opening), told).toBe(true)
    expect(opening.distance(rim), told).toBeGreaterThan(wall - ARCS)
    expect(opening.getEnvelopeInternal().getMinY(), told).toBeGreaterThan(lowest)
    for (const joint of joints) expect(opening.distance(joint), told).toBeGreaterThan(wall - ARCS)
  }
  if (openings[0] && openings[1]) expect(openings[0].distance(openings[1]), told).toBeGreaterThan(WALL - ARCS)
}

const expectNailed = (plate: BackingPlan, star: Star, told: string) => {
  const { marks, clear } = plate.fixing ?? { marks: [], clear: 0 }
  expect(clear, told).toBeGreaterThanOrEqual(CLEAR - EXACT)
  const board = area(plate.outline, plate.part.inner)
  const [rim, arms] = [board.getBoundary(), armsOf(star)]
  // The hanger's metal, or the cord, lies between two holes.
  const [one, other] = plate.part.inner.map((opening) => area(opening))
  const hung = one && other ? one.union(other).convexHull() : undefined
  const inArms = arms.map((arm) => marks.filter((mark) => arm.contains(place(mark))))
  expect(
    inArms.map((inArm) => inArm.length),
    told,
  ).toEqual(arms.map(() => 2))
  arms.forEach((arm, index) => {
    for (const mark of inArms[index] ?? []) {
      expect(board.contains(place(mark)), told).toBe(true)
      expect(rim.distance(place(mark)), told).toBeGreaterThan(clear - ARCS)
      if (hung) expect(hung.distance(place(mark)), told).toBeGreaterThan(clear - ARCS)
      expect(arm.getBoundary().distance(place(mark)), told).toBeGreaterThan(clear - ARCS)
    }
  })
}

/** What the bit leaves standing lies on straight edge, and all else of the line is cut. */
const expectTabbed = (plate: BackingPlan, told: string): number => {
  const cuts = plateCuts(plate, TABBED).flatMap((shape): Outline[] =>
    shape.kind === 'path' && shape.layer === 'CUT-OUTSIDE' ? [shape] : [],
  )
  const tabs = cuts.filter(({ closed }) => !closed)
  expect(tabs.length, told).toBeLessThanOrEqual(TABS.count)
  if (tabs.length === 0) {
    expect(cuts, told).toHaveLength(1)
    return 0
  }
  expect(cuts, told).toEqual(tabs)
  const line = area(plate.cut.outer).getBoundary()
  tabs.forEach(({ vertices }, index) => {
    const [end, start] = [vertices.at(-1), tabs[(index + 1) % tabs.length]?.vertices[0]]
    if (!end || !start) throw new Error('a piece of the line has two ends')
    expect(distance(end, start), told).toBeCloseTo(TABS.length + ROUTER.bit, 6)
    for (const share of [0, 0.25, 0.5, 0.75, 1])
      expect(line.distance(place(between(end, start, share))), told).toBeLessThan(EXACT)
  })
  return tabs.length
}

describe.each(SHAPED)('a %s plate', (name, shaped) => {
  const exact = name === 'disc' || name === 'rounded' ? ARCS : EXACT

  it.each(HANGINGS)('hung by %s is inside the star, and everything is inside it and clear', (kind) => {
    const made = { plates: 0, nailed: 0, tabs: 0 }
    const stars = starsFor(SHAPED.findIndex(([shape]) => shape === name) + HANGINGS.indexOf(kind))
    for (const [told, star] of stars) {
      const chamfer = star.edgeDistance / 10
      const plate = plateFor(star, shaped(star), kind, chamfer)
      if (!plate) continue
      made.plates++
      expectInside(plate, star, chamfer, exact, told)
      expectHung(plate, star, told)
      if (plate.fixing) {
        expectNailed(plate, star, told)
        made.nailed++
      }
      made.tabs += expectTabbed(plate, told)
    }
    expect(made.plates).toBeGreaterThan(stars.length / 5)
    expect(made.nailed).toBeGreaterThan(stars.length / 8)
    if (name === 'disc') expect(made.tabs).toBe(0)
    else expect(made.tabs).toBeGreaterThan(made.plates)
  })
})
