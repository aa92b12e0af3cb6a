import { describe, expect, it, vi } from 'vitest'
import { compensated, relievedPart } from '../../src/cutter/compensated.js'
import type { CutPart } from '../../src/cutter/cut-part.js'
import { insetOutline } from '../../src/geometry/inset.js'
import { kite, kiteOutline } from '../../src/geometry/kite.js'
import { circle, closedOutline, outlineSize } from '../../src/geometry/outline.js'
import { between, point } from '../../src/geometry/point.js'
import { solveStar, starOutline } from '../../src/geometry/star.js'
import type { Cutter } from '../../src/order/order.js'
import { removedWidth } from '../../src/order/removed-width.js'
import { mm } from '../../src/units/convert.js'
import { SHAPES, showShape } from '../geometry/sweep.js'
import { commonArea, farthestApart, fromEdge, inside, leftWithin, openedBy, shrunk } from './swept.js'

vi.setConfig({ testTimeout: 60_000 })

const SHOWN = { units: 'mm', nearest: 32 } as const

const cutter = (kind: Cutter['kind'], width = 0.2): Cutter => ({
  kind,
  dxf: 'r12',
  kerf: mm(width),
  bit: mm(width),
})

const part = (given: Partial<CutPart> & Pick<CutPart, 'outer'>): CutPart => ({
  name: 'plate',
  inner: [],
  seats: [],
  ...given,
})

const lines = (of: CutPart, by: Cutter) => {
  const outcome = compensated(of, by, SHOWN)
  if (!outcome.ok) throw new Error(outcome.problems.map(({ advice }) => advice).join())
  return outcome.value
}

/** A V open at the top of a plate, of the given angle at its corner and edges of two lengths. */
const notched = (angle: number, left: number, right: number): CutPart => {
  const half = (angle * Math.PI) / 360
  const corner = point(0, -Math.max(left, right) * Math.cos(half) - 1)
  const at = (length: number, side: number) =>
    point(corner.x + side * length * Math.sin(half), corner.y + length * Math.cos(half))
  const [a, b] = [at(left, -1), at(right, 1)]
  const [wide, deep] = [Math.max(left, right) + 80, Math.max(left, right) + 80]
  const outer = closedOutline([
    point(-wide, -deep),
    point(wide, -deep),
    point(wide, b.y),
    b,
    corner,
    a,
    point(-wide, a.y),
  ])
  return part({ outer, seats: [corner] })
}

/** Common practice, no published source: what lasers and routers remove. */
const WIDTHS = [
  ['laser', 0.15],
  ['laser', 0.4],
  ['router', 1],
  ['router', 3.175],
  ['router', 6.35],
] as const

describe('a disc of the cutter led along the line leaves the part', () => {
  it.each(WIDTHS)('%s of %s mm, arms of every regime', (kind, width) => {
    for (const shape of SHAPES) {
      const star = solveStar(shape.points, shape.tipAngle, 'tip-edge', mm(90))
      const arm = part({ outer: kiteOutline(kite(star)) })
      const { outer } = lines(arm, cutter(kind, width))
      const left = leftWithin(outer, width / 2)
      expect(farthestApart(left, inside(arm.outer)), showShape(shape)).toBeLessThan(0.02)
    }
  })

  it('takes half the width out of openings, arcs too', () => {
    const opening = circle(point(20, 10), 12)
    const of = part({ outer: circle(point(20, 10), 40), inner: [opening] })
    for (const [kind, width] of WIDTHS) {
      const { inner, outer } = lines(of, cutter(kind, width))
      expect(outlineSize(inner[0] ?? opening).across).toBeCloseTo(24 - width, 9)
      expect(outlineSize(outer).across).toBeCloseTo(80 + width, 9)
      expect(farthestApart(openedBy(inner[0] ?? opening, width / 2), inside(opening))).toBeLessThan(0.01)
    }
  })

  it('lets the openings of a slot and of a rounded corner keep their arcs', () => {
    const slot = closedOutline([
      point(0, 0),
      { x: 40, y: 0, bulge: 1 },
      point(40, 12),
      { x: 0, y: 12, bulge: 1 },
    ])
    const outer = closedOutline([
      point(-60, -60),
      point(100, -60),
      point(100, 60),
      { x: -40, y: 60, bulge: Math.tan(Math.PI / 8) },
      point(-60, 40),
    ])
    const { inner, outer: line } = lines(part({ outer, inner: [slot] }), cutter('router', 6))
    expect(farthestApart(openedBy(inner[0] ?? slot, 3), inside(slot))).toBeLessThan(0.01)
    expect(farthestApart(leftWithin(line, 3), inside(outer))).toBeLessThan(0.01)
  })

  it.each([10, 18, 36, 45, 60, 89, 90, 91, 108, 126, 150, 170])('gets into a seat of %s°', (angle) => {
    for (const [left, right] of [
      [70, 60],
      [60, 70],
      [70, 70],
    ] as const) {
      const notch = notched(angle, left, right)
      const { outer } = lines(notch, cutter('router', 3.175))
      const cut = leftWithin(outer, 3.175 / 2)
      const shape = relievedPart(notch, mm(3.175)) ?? notch
      expect(farthestApart(cut, inside(shape.outer))).toBeLessThan(0.02)
      // What is to sit in the notch finds nothing in its way.
      const piece = inside(closedOutline(notch.outer.vertices.slice(3, 6)))
      expect(commonArea(shrunk(piece, 0.02), cut)).toBeLessThan(1e-6)
      // And the longer edge bears along its whole length, right into the corner.
      const [corner, longer] = [notch.outer.vertices[4], notch.outer.vertices[left >= right ? 5 : 3]]
      if (!corner || !longer) throw new Error('a notch has corners')
      for (let step = 0; step <= 40; step++) {
        expect(fromEdge(between(corner, longer, step / 40), cut)).toBeLessThan(0.005)
      }
    }
  })
})

it('agrees with the scaling by which a whole star grows: every edge line lies at one distance from the centre', () => {
  for (const shape of SHAPES.filter(({ tipAngle }) => tipAngle >= 30)) {
    const star = solveStar(shape.points, shape.tipAngle, 'across', mm(400))
    const plate = part({ outer: insetOutline(star, 'star', mm(star.edgeDistance / 3)) })
    const { outer } = lines(plate, cutter('laser', 0.5))
    const grown = insetOutline(star, 'star', mm(star.edgeDistance / 3 - 0.25))
    outer.vertices.forEach(({ x, y }, index) => {
      expect(
        Math.hypot(x - (grown.vertices[index]?.x ?? 0), y - (grown.vertices[index]?.y ?? 0)),
      ).toBeLessThan(1e-8)
    })
  }
})

it('leaves the outline alone for a hand saw', () => {
  const outer = starOutline(solveStar(5, 45 as never, 'across', mm(300)))
  expect(lines(part({ outer }), cutter('hand', 6))).toEqual({ outer, inner: [] })
  expect(removedWidth(cutter('hand', 6))).toBe(0)
})

describe('what is too narrow for the cutter', () => {
  const slot = (width: number) =>
    part({
      outer: closedOutline([point(-50, -50), point(50, -50), point(50, 50), point(-50, 50)]),
      inner: [closedOutline([point(-20, 0), point(20, 0), point(20, width), point(-20, width)])],
    })

  it('is refused with the largest bit that gets in', () => {
    expect(compensated(slot(5), cutter('router', 6.35), SHOWN)).toEqual({
      ok: false,
      problems: [
        {
          place: 'shop.cutter.bit',
          given: '6.35 mm',
          advice:
            'It does not get into the narrowest place of the plate. Allowed there: a bit of up to 4.9 mm. Use a smaller one, or saw it by hand from its PDF: cutter: { kind: hand }.',
        },
      ],
    })
    expect(compensated(slot(5), cutter('router', 4.9), SHOWN).ok).toBe(true)
  })

  it('is seen from outside too: a slit in the edge', () => {
    const slit = part({
      outer: closedOutline([
        point(0, 0),
        point(100, 0),
        point(100, 50),
        point(53, 50),
        point(53, 10),
        point(50, 10),
        point(50, 50),
        point(0, 50),
      ]),
    })
    expect(compensated(slit, cutter('router', 3.2), SHOWN).ok).toBe(false)
    expect(compensated(slit, cutter('router', 2.9), SHOWN).ok).toBe(true)
  })

  it('is a seat whose shorter edge has no room for the relief', () => {
    expect(compensated(notched(10, 30, 30), cutter('router', 6.35), SHOWN).ok).toBe(false)
    expect(compensated(notched(10, 30, 30), cutter('laser', 0.3), SHOWN).ok).toBe(true)
  })
})
