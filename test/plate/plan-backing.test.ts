import { describe, expect, it, vi } from 'vitest'
import { signedArea } from '../../src/geometry/outline.js'
import { point } from '../../src/geometry/point.js'
import { type Star, solveStar, starOutline } from '../../src/geometry/star.js'
import type { BackingOrder } from '../../src/order/order.js'
import { degrees, mm } from '../../src/units/convert.js'
import { fromEdge, leftWithin } from '../cutter/swept.js'
import { area, stretch } from '../geometry/jts.js'
import { SHAPES, showShape, twoStarsOf } from '../geometry/sweep.js'
import { hanging, plateOf, ROUTER, refusalOf } from './backing-orders.js'
import { ARCS, EXACT, insetOf, SHAPED, toValley } from './shaped.js'

vi.setConfig({ testTimeout: 60_000 })

/* Distances, containment, hulls and centres of mass by JTS, over stars of every regime. */

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

it('nails are on the plate where the sight of one passes just through a corner of the chords of a disc', () => {
  const star = solveStar(3, degrees(3), 'board-width', mm(70))
  const plate = plateOf(star, orderOf(star, { shape: 'disc', fixing: { kind: 'nails', clear: mm(4) } }), {
    chamfer: star.edgeDistance / 10,
  })
  const farthest = Math.max(...(plate?.fixing?.marks ?? []).map(({ x, y }) => Math.hypot(x, y)))
  expect(farthest).toBeLessThan((plate?.across ?? 0) / 2 - 4 + EXACT)
})
