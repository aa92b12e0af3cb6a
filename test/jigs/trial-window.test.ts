import { describe, expect, it, vi } from 'vitest'
import { partLettering } from '../../src/compose/jig-letters.js'
import { jigWords } from '../../src/compose/jig-words.js'
import { drawJig, jigOf } from '../../src/compose/jigs.js'
import { compensated } from '../../src/cutter/compensated.js'
import type { Outline } from '../../src/geometry/outline.js'
import type { Point } from '../../src/geometry/point.js'
import { trialWindow } from '../../src/jigs/trial-window.js'
import { removedWidth } from '../../src/order/removed-width.js'
import { areaBeyond, commonArea, grown, inside, openedBy, shrunk } from '../cutter/swept.js'
import { sweptPlans } from './sweep-plans.js'

vi.setConfig({ testTimeout: 120_000 })

const turns = (vertices: readonly Point[]): number[] =>
  vertices.map((at, index) => {
    const [a, b] = [vertices.at(index - 1) ?? at, vertices[(index + 1) % vertices.length] ?? at]
    const [u, v] = [
      [a.x - at.x, a.y - at.y],
      [b.x - at.x, b.y - at.y],
    ] as [number[], number[]]
    const [ux = 0, uy = 0] = u
    const [vx = 0, vy = 0] = v
    return (Math.atan2(Math.abs(ux * vy - uy * vx), ux * vx + uy * vy) * 180) / Math.PI
  })

const lengths = (vertices: readonly Point[]): number[] =>
  vertices.map((at, index) => {
    const next = vertices[(index + 1) % vertices.length] ?? at
    return Math.hypot(next.x - at.x, next.y - at.y)
  })

/** Of a polygon all of whose edges touch one circle: twice its area over its edges' length. */
const inscribed = ({ vertices }: Outline): number => {
  const area = vertices.reduce((sum, at, index) => {
    const next = vertices[(index + 1) % vertices.length] ?? at
    return sum + (at.x * next.y - next.x * at.y) / 2
  }, 0)
  return (2 * area) / lengths(vertices).reduce((sum, each) => sum + each, 0)
}

const SHOPS = [
  'cutter: { kind: laser, kerf: 0.2 }',
  'cutter: { kind: router, bit: 2 mm }, jig-stock: { tolerance: 0.5 mm, thickness: 18 mm }',
  'cutter: { kind: hand }, jig-stock: { tolerance: 0.15 mm }',
]

describe.each(SHOPS)('a trial window with %s', (shop) => {
  const plans = sweptPlans(shop).filter((_, index) => index % 4 === SHOPS.indexOf(shop))

  it("has the arm's opening as planned, and wider and narrower by the tolerance on every edge", () => {
    for (const { plan, order, name } of plans) {
      const window = trialWindow(plan, order.shop.jigStock, order.shop.cutter)
      const [go, nominal, noGo] = window?.parts[0]?.inner ?? []
      if (!go || !nominal || !noGo) throw new Error(`${name}: three openings`)
      const { tipAngle, points, tipEdge, jointEdge } = plan.star
      const side = (360 - tipAngle - 360 / points) / 2
      for (const { vertices } of [go, nominal, noGo]) {
        expect(vertices.length, name).toBe(4)
        for (const [index, angle] of [tipAngle, side, 360 / points, side].entries())
          expect(turns(vertices)[index], name).toBeCloseTo(angle, 7)
      }
      for (const [index, edge] of [tipEdge, jointEdge, jointEdge, tipEdge].entries())
        expect(lengths(nominal.vertices)[index], name).toBeCloseTo(edge, 7)
      const { tolerance } = order.shop.jigStock
      expect(inscribed(go) - inscribed(nominal), name).toBeCloseTo(tolerance, 7)
      expect(inscribed(nominal) - inscribed(noGo), name).toBeCloseTo(tolerance, 7)
    }
  })

  it('lets a good arm through GO as it is cut and stops it at NO GO, the plate as wide as it is thick between them', () => {
    for (const { plan, order, name } of plans.filter((_, index) => index % 4 === 0)) {
      const jig = jigOf('trial-window', plan, order)
      const part = jig.ok ? jig.value.parts[0] : undefined
      const lines = part && compensated(part, order.shop.cutter, order.lengths)
      // A bit that is too large for a slim tip is refused; that has its own tests.
      if (!part || !lines?.ok) continue
      const half = removedWidth(order.shop.cutter) / 2
      const cut = lines.value.inner.map((line) => (half > 0 ? openedBy(line, half) : inside(line)))
      const [go, nominal, noGo] = cut
      const arm = inside(part.inner[1] ?? part.outer)
      if (!go || !nominal || !noGo) throw new Error(`${name}: three openings`)
      expect(areaBeyond(shrunk(arm, 0.02), nominal), name).toBeLessThan(1e-6)
      // The narrow opening has no room for the arm anywhere: its incircle is smaller.
      expect(inscribed(part.inner[2] ?? part.outer), name).toBeLessThan(
        inscribed(part.inner[1] ?? part.outer),
      )
      const { thickness } = order.shop.jigStock
      const walls = cut.map((opening) => grown(opening, thickness / 2 - 0.001))
      walls.forEach((own, index) => {
        for (const other of walls.slice(index + 1)) expect(commonArea(own, other), name).toBe(0)
      })
      const plate = shrunk(inside(part.outer), thickness - 0.001)
      for (const opening of cut.slice(0, 3)) expect(areaBeyond(opening, plate), name).toBeLessThan(1e-6)
    }
  })

  it('names every opening on the plate, and by how much', () => {
    for (const { plan, order, name } of plans.slice(0, 40)) {
      const window = trialWindow(plan, order.shop.jigStock, order.shop.cutter)
      expect(
        window?.windows.map(({ wider }) => Math.sign(wider)),
        name,
      ).toEqual([1, 0, -1])
      const drawing = drawJig('trial-window', plan, order)
      if (!drawing.ok) continue
      const marks = drawing.value.drawing.figure.filter(({ layer }) => layer === 'MARK')
      const [outer] = drawing.value.drawing.figure.filter(({ layer }) => layer === 'CUT-OUTSIDE')
      if (outer?.kind !== 'path') throw new Error(`${name}: a plate`)
      const low = Math.min(...outer.vertices.map(({ y }) => y))
      const left = Math.min(...outer.vertices.map(({ x }) => x))
      const xs = marks.flatMap((mark) =>
        mark.kind === 'path' && mark.vertices.every(({ y }) => y < low + 32)
          ? mark.vertices.map(({ x }) => x - left)
          : [],
      )
      for (const { words } of window?.windows ?? [])
        expect(Math.min(...xs.map((x) => Math.abs(x - words.x))), name).toBeLessThan(12)
    }
  })
})

it.each(['', 'jig-stock: { thickness: 3 mm, tolerance: 1.25 mm }', 'cutter: { kind: router, bit: 8 mm }'])(
  'NO GO stands as large as GO and NOMINAL, capitals of 6 mm: %s',
  (shop) => {
    let read = 0
    for (const { plan, order, name } of sweptPlans(shop).filter((_, index) => index % 4 === 0)) {
      const jig = jigOf('trial-window', plan, order)
      const part = jig.ok ? jig.value.parts[0] : undefined
      if (!jig.ok || !part) continue
      const words = jigWords(jig.value, plan, order).onParts.window ?? []
      words.forEach(({ text }, index) => {
        if (!/GO|NOMINAL/.test(text)) return
        const before = partLettering(part, words.slice(0, index)).length
        const strokes = partLettering(part, words.slice(0, index + 1)).slice(before)
        const high = strokes.flatMap(({ vertices }) => vertices.map(({ y }) => y))
        expect(Math.max(...high) - Math.min(...high), `${name}: ${text}`).toBeCloseTo(6, 1)
        read += 1
      })
    }
    expect(read).toBeGreaterThan(100)
  },
)

it('is refused when the tolerance leaves nothing of the narrow opening', () => {
  const tiny = sweptPlans('jig-stock: { tolerance: 5 mm }').find(({ plan }) => plan.star.tipAngle === 3)
  if (!tiny) throw new Error('the sweep has a slim star')
  const jig = jigOf('trial-window', tiny.plan, tiny.order)
  expect(jig.ok ? [] : jig.problems).toEqual([
    {
      place: 'shop.jig-stock.tolerance',
      given: '5.0 mm',
      advice:
        'Nothing would be left of the narrow opening for an arm of "Star". Give a smaller tolerance, or leave the trial window out.',
    },
  ])
})
