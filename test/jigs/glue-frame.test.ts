import { describe, expect, it, vi } from 'vitest'
import { drawJig, jigOf } from '../../src/compose/jigs.js'
import { closedOutline, type Outline, outlineSize } from '../../src/geometry/outline.js'
import { type Point, point } from '../../src/geometry/point.js'
import { starOutline } from '../../src/geometry/star.js'
import { type GlueFrame, glueFrame } from '../../src/jigs/glue-frame.js'
import { areaBeyond, commonArea, fromEdge, grown, inside, openedBy, shrunk } from '../cutter/swept.js'
import { type SweptPlan, sweptPlans } from './sweep-plans.js'

vi.setConfig({ testTimeout: 120_000 })

/** Stars as large as they are glued in a frame; those whose arms have no room for wedges are refused. */
const framed = (shop = ''): SweptPlan[] =>
  sweptPlans(shop).filter(({ plan, order }) => jigOf('glue-up-frame', plan, order).ok)

const PLANS = framed()

const frameOf = ({ plan, order }: SweptPlan, pieces = 1): GlueFrame =>
  glueFrame(plan, order.shop.jigStock, pieces)

const wedgesOf = (frame: GlueFrame): readonly Outline[] => frame.parts.at(-1)?.copies ?? []

const disc = ({ x, y }: Point, radius: number): Outline =>
  closedOutline([
    { x: x + radius, y, bulge: 1 },
    { x: x - radius, y, bulge: 1 },
  ])

const moved = ({ vertices, closed }: Outline, dx: number, dy: number): Outline => ({
  closed,
  vertices: vertices.map((vertex) => ({ ...vertex, x: vertex.x + dx, y: vertex.y + dy })),
})

it('sweeps every regime', () => {
  expect(PLANS.length).toBeGreaterThan(120)
  expect(new Set(PLANS.map(({ plan }) => plan.star.points)).size).toBeGreaterThan(18)
  expect(PLANS.filter(({ plan }) => plan.star.tipAngle >= 90).length).toBeGreaterThan(15)
})

describe('a star in the glue-up frame, by an independent geometry library (Clipper2)', () => {
  it('lies clear of it everywhere by the clearance; tips and valleys have room for glue', () => {
    for (const swept of PLANS) {
      const frame = frameOf(swept)
      const [part] = frame.parts
      const [opening] = part?.inner ?? []
      if (!part || !opening) throw new Error('a frame has an opening')
      const star = inside(starOutline(swept.plan.star))
      const { clearance } = swept.order.shop.jigStock
      // At a valley the frame's nose is cut back further than that; elsewhere a disc of the clearance rolls round.
      expect(areaBeyond(grown(star, clearance - 0.01), inside(opening)), swept.name).toBeLessThan(0.01)
      const wedges = wedgesOf(frame).map((wedge) => inside(wedge))
      for (const [index, corner] of starOutline(swept.plan.star).vertices.entries()) {
        const room = inside(disc(corner, 4))
        expect(areaBeyond(room, inside(opening)), `${swept.name}, corner ${index}`).toBeLessThan(1e-6)
        for (const wedge of wedges.slice(0, 4))
          expect(commonArea(room, wedge), `${swept.name}, corner ${index}`).toBeLessThan(1e-6)
      }
    }
  })

  it('has a wedge along every tip edge that bears on it, and on the frame, along its whole length', () => {
    for (const swept of PLANS) {
      const frame = frameOf(swept)
      const opening = inside(frame.parts[0]?.inner[0] ?? closedOutline([]))
      const star = inside(starOutline(swept.plan.star))
      const wedges = wedgesOf(frame)
      expect(wedges.length, swept.name).toBe(2 * swept.plan.star.points)
      for (const [index, wedge] of wedges.entries()) {
        const told = `${swept.name}, wedge ${index}`
        expect(commonArea(shrunk(inside(wedge), 1e-3), star), told).toBeLessThan(1e-6)
        expect(areaBeyond(shrunk(inside(wedge), 1e-3), opening), told).toBeLessThan(1e-6)
        const edges = wedge.vertices.map((from, at) => [from, wedge.vertices[(at + 1) % 4] ?? from] as const)
        const on = (region: ReturnType<typeof inside>) =>
          edges.filter((edge) =>
            [0, 0.25, 0.5, 0.75, 1].every(
              (share) =>
                fromEdge(
                  point(
                    edge[0].x + (edge[1].x - edge[0].x) * share,
                    edge[0].y + (edge[1].y - edge[0].y) * share,
                  ),
                  region,
                ) < 1e-5,
            ),
          )
        expect(on(star).length, `${told} on the star`).toBe(1)
        expect(on(opening).length, `${told} on the frame`).toBe(1)
      }
    }
  })

  it('is closed by wedges pushed towards the valleys, and freed by pulling them out, by as much as is told', () => {
    for (const swept of PLANS) {
      const frame = frameOf(swept)
      const opening = inside(frame.parts[0]?.inner[0] ?? closedOutline([]))
      const outline = starOutline(swept.plan.star)
      const star = inside(outline)
      for (const wedge of wedgesOf(frame).slice(0, 2)) {
        // The frame's side of the wedge is the edge that slopes; along it the wedge is pushed.
        const [a, b, c, d] = wedge.vertices as [Point, Point, Point, Point]
        const onFrame = [
          [a, b],
          [c, d],
        ].sort(([p], [q]) => fromEdge(p as Point, opening) - fromEdge(q as Point, opening))[0] as [
          Point,
          Point,
        ]
        const nearer = (at: Point): number =>
          Math.min(
            ...outline.vertices.filter((_, i) => i % 2 === 1).map((v) => Math.hypot(v.x - at.x, v.y - at.y)),
          )
        const [from, to] = nearer(onFrame[0]) > nearer(onFrame[1]) ? onFrame : [onFrame[1], onFrame[0]]
        const length = Math.hypot(to.x - from.x, to.y - from.y)
        const slope = 1 / 8
        const push = (frame.closes / slope) * Math.hypot(1, slope)
        const [dx, dy] = [((to.x - from.x) / length) * push, ((to.y - from.y) / length) * push]
        for (const share of [0.5, 1]) {
          const pushed = inside(moved(wedge, dx * share, dy * share))
          expect(areaBeyond(shrunk(pushed, 1e-3), opening), `${swept.name}, pushed`).toBeLessThan(1e-6)
          const pressed = commonArea(pushed, star)
          const wide = Math.hypot(c.x - b.x, c.y - b.y) // its thin end
          expect(wide, swept.name).toBeGreaterThan(5)
          // A strip as long as the wedge and as deep as the edge is pressed in; less at the tip's end of a short arm.
          const inner = Math.hypot(d.x - c.x, d.y - c.y)
          const strip = frame.closes * share * inner
          expect(pressed / strip, `${swept.name}, pushed`).toBeGreaterThan(0.95)
          expect(pressed / strip, `${swept.name}, pushed`).toBeLessThan(1.01)
          const pulled = inside(moved(wedge, -dx * share, -dy * share))
          expect(commonArea(pulled, star), `${swept.name}, pulled`).toBeLessThan(1e-6)
          expect(areaBeyond(shrunk(pulled, 1e-3), opening), `${swept.name}, pulled`).toBeLessThan(1e-6)
        }
      }
    }
  })
})

describe('in parts', () => {
  it('covers what the frame in one piece does, overlaps nowhere, and no part can be pulled off another', () => {
    for (const swept of PLANS.filter((_, index) => index % 6 === 0)) {
      const whole = frameOf(swept).parts[0]
      const ring = inside(whole?.outer ?? closedOutline([]), whole?.inner[0] ?? closedOutline([]))
      for (const pieces of [2, 3]) {
        const told = `${swept.name}, in ${pieces}`
        const placed = frameOf(swept, pieces)
          .parts.slice(0, -1)
          .flatMap(({ copies }) => copies ?? [])
        expect(placed.length, told).toBe(pieces)
        // What the keys are loose by is all that is missing.
        const all = grown(
          placed.flatMap((part) => inside(part)),
          0.11,
        )
        // Chords stand for arcs here, in the ring for longer ones than in the parts.
        const chords = outlineSize(whole?.outer ?? closedOutline([])).across * 0.0004
        expect(areaBeyond(shrunk(ring, 0.05 + chords), all), told).toBeLessThan(1e-3)
        placed.forEach((part, index) => {
          const next = placed[(index + 1) % placed.length] ?? part
          expect(commonArea(shrunk(inside(part), 1e-3), inside(next)), told).toBeLessThan(1e-6)
          // Pulled straight off its neighbour's joint, its key catches.
          const [, end] = part.vertices
          if (!end) throw new Error('a part ends on an arc')
          const radius = Math.hypot(end.x, end.y)
          const off = moved(part, end.y / radius, -end.x / radius)
          expect(commonArea(inside(off), inside(next)), `${told}, pulled off`).toBeGreaterThan(1)
        })
      }
    }
  })

  it('goes onto the bed in as few parts as it takes, and says so when none does', () => {
    const bed = 'cutter: { kind: router, bit: 3 mm, bed: { width: 260, length: 380 } }'
    let parted = 0
    for (const swept of framed(bed).filter((_, index) => index % 3 === 0)) {
      const jig = jigOf('glue-up-frame', swept.plan, swept.order)
      if (!jig.ok) continue
      const pieces = (jig.value as GlueFrame).pieces
      for (const { outer } of jig.value.parts) {
        const { across, height } = outlineSize(outer)
        expect(Math.min(across, height), swept.name).toBeLessThanOrEqual(257)
        expect(Math.max(across, height), swept.name).toBeLessThanOrEqual(377)
      }
      if (pieces > 1) {
        parted += 1
        const fewer = glueFrame(swept.plan, swept.order.shop.jigStock, pieces - 1).parts.map(({ outer }) =>
          outlineSize(outer),
        )
        expect(
          fewer.some(
            ({ across, height }) => Math.min(across, height) > 257 || Math.max(across, height) > 377,
          ),
          swept.name,
        ).toBe(true)
      }
    }
    expect(parted).toBeGreaterThan(20)
    const names = new Set(PLANS.map(({ name }) => name))
    const small = sweptPlans('cutter: { kind: laser, bed: { width: 60, length: 80 } }').find(
      ({ plan, name }) => plan.star.points === 5 && names.has(name),
    )
    const told = small && drawJig('glue-up-frame', small.plan, small.order)
    expect(told?.ok ? '' : told?.problems[0]?.advice).toMatch(
      /^Even in 5 parts, each \d+\.\d × \d+\.\d mm, the frame of "Star" does not go onto 80\.0 × 60\.0 mm\. Give a larger panel or bed, or leave it out and glue with tape\.$/,
    )
  })

  it('comes out of the router with keys that still go into each other, and as wide as the panel is thick around them', () => {
    const shop = 'cutter: { kind: router, bit: 3 mm }'
    for (const swept of framed(shop).filter((_, index) => index % 12 === 0)) {
      const frame = frameOf(swept, 2)
      for (const part of frame.parts.slice(0, -1)) {
        const wood = inside(part.outer)
        // Nothing of the part is thinner than the panel but the key's corners and the nose's blunt end.
        const thick = grown(
          shrunk(wood, swept.order.shop.jigStock.thickness / 2 - 0.5),
          swept.order.shop.jigStock.thickness / 2 - 0.5,
        )
        const thin = areaBeyond(wood, thick)
        expect(thin / areaBeyond(wood, []), swept.name).toBeLessThan(0.08)
        for (const hole of part.inner) expect(areaBeyond(inside(hole), wood), swept.name).toBeLessThan(1e-6)
        expect(openedBy(part.inner[0] ?? part.outer, 1.5).length, swept.name).toBeGreaterThan(0)
      }
    }
  })
})

it('is refused where arms have no room for wedges, with the room there is', () => {
  const crowded = sweptPlans().find(({ plan, order }) => {
    const jig = jigOf('glue-up-frame', plan, order)
    return !jig.ok
  })
  if (!crowded) throw new Error('the sweep has a star without room')
  const jig = jigOf('glue-up-frame', crowded.plan, crowded.order)
  expect(jig.ok ? '' : jig.problems[0]?.advice).toMatch(
    /^Beside the arms of "Star" there is no room for wedges: \d+\.\d mm of each tip edge is free, and they need 30\.0 mm\./,
  )
})
