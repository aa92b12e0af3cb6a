import { describe, expect, it, vi } from 'vitest'
import { signedArea } from '../../src/geometry/outline.js'
import { type Point, point, scale } from '../../src/geometry/point.js'
import { cornerDirection, type Star, starOutline } from '../../src/geometry/star.js'
import type { BackingOrder } from '../../src/order/order.js'
import type { BackingPlan } from '../../src/plate/plan-backing.js'
import { mm } from '../../src/units/convert.js'
import { fromEdge, leftWithin } from '../cutter/swept.js'
import { area, place, stretch } from '../geometry/jts.js'
import { SHAPES, showShape, twoStarsOf } from '../geometry/sweep.js'
import { hanging, plateOf, ROUTER, refusalOf } from './backing-orders.js'

vi.setConfig({ testTimeout: 60_000 })

/* Distances, containment, hulls and centres of mass by JTS, over stars of every regime. */

/** Straight edges are exact; chords leave arcs by less than this. */
const EXACT = 1e-6
const ARCS = 0.005

const insetOf = (star: Star): number => Math.min(12, star.valleyRadius / 5, star.edgeDistance / 4)

const SHAPED: readonly (readonly [string, (star: Star) => Partial<BackingOrder>])[] = [
  ['star', () => ({ shape: 'star' })],
  ['rounded', (star) => ({ shape: 'star', cornerRadius: mm(star.edgeDistance / 8) })],
  ['polygon', () => ({ shape: 'polygon' })],
  ['disc', () => ({ shape: 'disc' })],
  ['auto', () => ({ shape: 'auto' })],
]

const toValley = (star: Star, arm: number, length: number): Point => {
  const by = cornerDirection(star.points, arm + 0.5)
  return scale(point(Math.cos(by), Math.sin(by)), length)
}

const orderOf = (star: Star, more: Partial<BackingOrder>): BackingOrder => ({
  shape: 'star',
  inset: mm(insetOf(star)),
  ...more,
})

const STARS = SHAPES.flatMap((shape) =>
  twoStarsOf(shape)
    .slice(0, 1)
    .map((star) => [showShape(shape), star] as const),
)

describe.each(SHAPED)('a %s plate', (name, shaped) => {
  const exact = name === 'disc' || name === 'rounded' ? ARCS : EXACT

  it('stays inside the star by the margin everywhere, chamfer included, and covers the joints as told', () => {
    let made = 0
    for (const [shape, star] of STARS) {
      const chamfer = star.edgeDistance / 10
      const order = orderOf(star, shaped(star))
      const plate = plateOf(star, order, { chamfer })
      if (!plate) continue
      made++
      const [wood, board] = [area(starOutline(star)), area(plate.outline)]
      expect(wood.contains(board), shape).toBe(true)
      const margin = wood.getBoundary().distance(board)
      expect(plate.margin, shape).toBeGreaterThanOrEqual(order.inset + chamfer - EXACT)
      expect(margin, shape).toBeGreaterThan(plate.margin - exact)
      for (const arm of [0, 1, star.points - 1]) {
        const covered = (length: number) => board.covers(stretch(point(0, 0), toValley(star, arm, length)))
        expect(covered(plate.covers - 2 * exact), shape).toBe(true)
        expect(covered(plate.covers + 2 * exact), shape).toBe(false)
      }
    }
    expect(made).toBeGreaterThan(STARS.length / 3)
  })

  it('is refused with the largest inset that works', () => {
    for (const [shape, star] of STARS.filter((_, index) => index % 7 === 0)) {
      const order = { ...orderOf(star, shaped(star)), inset: mm(2000) }
      const told = refusalOf(star, order, { chamfer: 0.5 })
      const most = Number(/up to ([\d.]+) mm/.exec(told)?.[1])
      if (told.includes('too small')) continue
      const sharp = { ...order, inset: mm(most) }
      delete (sharp as { cornerRadius?: number }).cornerRadius
      expect(plateOf(star, sharp, { chamfer: 0.5 }), `${shape}: ${told}`).toBeDefined()
      expect(plateOf(star, { ...sharp, inset: mm(most + 0.2) }, { chamfer: 0.5 }), shape).toBeUndefined()
    }
  })
})

it('the smallest plate that covers the joints is their convex hull, and no other shape is smaller', () => {
  for (const [shape, star] of STARS) {
    const covers = mm(0.7 * star.jointEdge)
    const smallest = plateOf(star, orderOf(star, { shape: 'auto', covers, inset: mm(0.1) }))
    if (!smallest) continue
    const hull = Array.from({ length: star.points }, (_, arm) =>
      stretch(point(0, 0), toValley(star, arm, covers)),
    )
      .reduce((all, joint) => all.union(joint), stretch(point(0, 0), toValley(star, 0, covers)))
      .convexHull()
    expect(signedArea(smallest.outline) / hull.getArea(), shape).toBeCloseTo(1, 6)
    for (const other of ['star', 'polygon', 'disc'] as const) {
      const inset = /inset of up to ([\d.]+) mm/.exec(
        refusalOf(star, orderOf(star, { shape: other, covers: mm(star.jointEdge - 0.001), inset: mm(5) })),
      )
      expect(inset?.[1] ?? '0', shape).toMatch(/^0(?:\.0)?$/)
      const plate = plateOf(star, orderOf(star, { shape: other, covers, inset: mm(0.3 * star.edgeDistance) }))
      if (plate) expect(signedArea(smallest.outline)).toBeLessThanOrEqual(signedArea(plate.outline))
    }
  }
})

/** Without its holes the star's centre of mass is its centre; arms of 19 mm, a plate twice as heavy as they. */
const centreOfMass = (star: Star, plate: BackingPlan): number => {
  const wood = area(starOutline(star))
  const board = area(plate.outline, plate.part.inner)
  const [arms, back] = [19 * wood.getArea(), 8 * board.getArea()]
  return (arms * wood.getCentroid().getY() + back * board.getCentroid().getY()) / (arms + back)
}

describe.each(['cord', 'screws', 'keyhole'] as const)('openings to hang by: %s', (kind) => {
  it('lie in the upper arm, inside the plate and clear of joints by the wall, above the centre of mass', () => {
    let made = 0
    for (const [index, [shape, star]] of STARS.entries()) {
      const [, shaped] = SHAPED[index % SHAPED.length] ?? SHAPED[0] ?? []
      const order = orderOf(star, { ...shaped?.(star), hanging: hanging(kind) })
      const plate = plateOf(star, order)
      if (!plate?.hanging) continue
      made++
      const rim = area(plate.outline).getBoundary()
      const openings = plate.part.inner.map((opening) => area(opening))
      expect(openings).toHaveLength(kind === 'keyhole' ? 1 : 2)
      expect(plate.hanging.wall).toBeGreaterThanOrEqual(3 - EXACT)
      const lowest = centreOfMass(star, plate)
      expect(plate.hanging.height).toBeGreaterThan(lowest)
      expect(openings.reduce((sum, each) => sum + each.getCentroid().getX(), 0)).toBeCloseTo(0, 6)
      for (const opening of openings) {
        expect(area(plate.outline).contains(opening), shape).toBe(true)
        expect(opening.distance(rim), shape).toBeGreaterThan(plate.hanging.wall - ARCS)
        expect(opening.getEnvelopeInternal().getMinY(), shape).toBeGreaterThan(lowest)
        for (let arm = 0; arm < star.points; arm++) {
          const joint = stretch(point(0, 0), toValley(star, arm, star.jointEdge))
          expect(opening.distance(joint), shape).toBeGreaterThan(plate.hanging.wall - ARCS)
        }
      }
      if (openings[0] && openings[1]) expect(openings[0].distance(openings[1])).toBeGreaterThan(3 - ARCS)
    }
    expect(made).toBeGreaterThan(STARS.length / 4)
  })
})

it('holes wider than their usual distance keep the wall between them all the same', () => {
  let made = 0
  for (const [shape, star] of SHAPES.flatMap((each) =>
    twoStarsOf(each).map((sized) => [showShape(each), sized] as const),
  )) {
    for (const [kind, hole] of [
      ['cord', 39],
      ['screws', 29],
    ] as const) {
      const plate = plateOf(star, orderOf(star, { hanging: hanging(kind, { hole: mm(hole), wall: mm(6) }) }))
      const [one, other] = plate?.part.inner.map((opening) => area(opening)) ?? []
      if (!one || !other) continue
      expect(one.distance(other), shape).toBeGreaterThan(6 - ARCS)
      made++
    }
  }
  expect(made).toBeGreaterThan(3)
})

it('nails stand two in each arm, clear of edges, joints and holes', () => {
  let made = 0
  for (const [index, [shape, star]] of STARS.entries()) {
    const [, shaped] = SHAPED[index % SHAPED.length] ?? SHAPED[0] ?? []
    const kind = (['cord', 'screws', 'keyhole'] as const)[index % 3] ?? 'cord'
    const order = orderOf(star, {
      ...shaped?.(star),
      ...(index % 4 === 0 ? {} : { hanging: hanging(kind) }),
      fixing: { kind: 'nails', clear: mm(4) },
    })
    const plate = plateOf(star, order)
    if (!plate?.fixing) continue
    made++
    const { marks, clear } = plate.fixing
    expect(clear).toBeGreaterThanOrEqual(4 - EXACT)
    const board = area(plate.outline, plate.part.inner)
    const arms = Array.from({ length: star.points }, (_, arm) => {
      const [before, after] = [toValley(star, arm - 1, star.jointEdge), toValley(star, arm, star.jointEdge)]
      const by = cornerDirection(star.points, arm)
      const tip = scale(point(Math.cos(by), Math.sin(by)), star.radius)
      return area({ vertices: [point(0, 0), before, tip, after], closed: true })
    })
    for (const arm of arms) expect(marks.filter((mark) => arm.contains(place(mark))).length, shape).toBe(2)
    for (const mark of marks) {
      expect(board.contains(place(mark)), shape).toBe(true)
      expect(board.getBoundary().distance(place(mark)), shape).toBeGreaterThan(clear - ARCS)
      for (const arm of arms)
        expect(arm.getBoundary().distance(place(mark)), shape).toBeGreaterThan(clear - ARCS)
    }
  }
  expect(made).toBeGreaterThan(STARS.length / 4)
})

it('what a bit leaves of a plate still keeps the margin: its roundness stays in the valleys', () => {
  for (const [shape, star] of STARS.filter((_, index) => index % 5 === 0)) {
    const plate = plateOf(star, orderOf(star, { inset: mm(Math.max(1.6, insetOf(star) / 2)) }), {
      cutter: ROUTER,
    })
    if (!plate) continue
    const edge = [starOutline(star).vertices.map(({ x, y }) => ({ x, y }))]
    const left = leftWithin(plate.cut.outer, ROUTER.bit / 2)
    for (const corner of left.flat())
      expect(fromEdge(corner, edge), shape).toBeGreaterThan(plate.margin - 0.002)
  }
})
