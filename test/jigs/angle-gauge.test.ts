import { afterAll, describe, expect, it, vi } from 'vitest'
import { partLettering } from '../../src/compose/jig-letters.js'
import { jigWords } from '../../src/compose/jig-words.js'
import { drawJig } from '../../src/compose/jigs.js'
import { relievedPart } from '../../src/cutter/compensated.js'
import { forCutter } from '../../src/drawing/drawing.js'
import { strokeLettering } from '../../src/drawing/stroke-lettering.js'
import { boxOf, closedOutline, outlineSize, type Vertex } from '../../src/geometry/outline.js'
import { between, distance, point } from '../../src/geometry/point.js'
import { angleGauge } from '../../src/jigs/angle-gauge.js'
import { removedWidth } from '../../src/order/removed-width.js'
import { writeDxf } from '../../src/write/dxf.js'
import { openDxfReader } from '../read-back/read-dxf.js'
import { sweptPlans } from './sweep-plans.js'

vi.setConfig({ testTimeout: 120_000 })

const reader = openDxfReader()
afterAll(reader.close)

/** Angles between straight edges of the outline that are longer than 8 mm, as an instrument would lay on them. */
const anglesBetween = (vertices: readonly Vertex[]): number[] => {
  const long = vertices.flatMap((from, index) => {
    const to = vertices[(index + 1) % vertices.length] ?? from
    return Math.hypot(to.x - from.x, to.y - from.y) > 8 && !from.bulge
      ? [Math.atan2(to.y - from.y, to.x - from.x)]
      : []
  })
  // Between two edges of a slim notch the bit's slot may run, longer than those.
  return [1, 2].flatMap((step) =>
    long.map((way, index) => {
      const next = long[(index + step) % long.length] ?? way
      const turned = ((next - way) * 180) / Math.PI
      return 180 - Math.abs(((turned + 540) % 360) - 180)
    }),
  )
}

const CUTTERS = [
  ['hand', 'cutter: { kind: hand }'],
  ['laser', 'cutter: { kind: laser, kerf: 0.2 }'],
  ['router', 'cutter: { kind: router, bit: 1 mm }'],
] as const

/** Together the three measure every star of the sweep. */
describe.each(CUTTERS)('by %s', (kind, shop) => {
  const turn = CUTTERS.findIndex(([each]) => each === kind)

  it('the angles measured on the written DXF are those of the plan', async () => {
    let measured = 0
    for (const [index, { plan, order, name }] of sweptPlans(shop).entries()) {
      if (index % 3 !== turn) continue
      const drawing = drawJig('angle-gauge', plan, order)
      if (!drawing.ok) throw new Error(`${name}: ${drawing.problems[0]?.advice}`)
      const { outlines } = await reader.read(writeDxf(forCutter(drawing.value.drawing), 'r12'))
      const outer = outlines.find(({ layer }) => layer === 'CUT-OUTSIDE')
      const found = anglesBetween(outer?.vertices ?? [])
      const { tipAngle, centreAngle, points } = plan.star
      // By the sum of a kite's angles and of those around a point, not from the plan's own side angle.
      const side = (360 - tipAngle - 360 / points) / 2
      for (const angle of [tipAngle, centreAngle, side, tipAngle + 360 / points]) {
        const nearest = Math.min(...found.map((each) => Math.abs(each - angle)))
        expect(
          nearest,
          `${name}: ${angle}° among ${found.map((each) => each.toFixed(3)).join(' ')}`,
        ).toBeLessThan(0.001)
      }
      expect(removedWidth(order.shop.cutter)).toBeLessThanOrEqual(1)
      measured += 1
    }
    expect(measured).toBeGreaterThan(105)
  })
})

it('says so when a bit does not get into the narrowest notch, and which does', () => {
  const slim = sweptPlans('cutter: { kind: router, bit: 6 mm }').find(({ plan }) => plan.star.tipAngle === 3)
  if (!slim) throw new Error('the sweep has a slim star')
  const drawing = drawJig('angle-gauge', slim.plan, slim.order)
  expect(drawing.ok).toBe(false)
  expect(drawing.ok ? '' : drawing.problems[0]?.advice).toMatch(
    /^It does not get into the narrowest place of the angle gauge\. Allowed there: a bit of up to \d\.\d mm\./,
  )
})

it('goes into the pocket of an apron, whatever the star', () => {
  for (const shop of ['', 'cutter: { kind: laser }', 'cutter: { kind: router, bit: 3 mm }']) {
    for (const { plan, order, name } of sweptPlans(shop)) {
      const { jigStock, cutter } = order.shop
      const size = outlineSize(angleGauge(plan, jigStock, cutter).parts[0]?.outer ?? closedOutline([]))
      // Common practice, no published source: a carpenter's apron takes a hand's breadth and a half by a hand's length.
      expect(size.across, name).toBeLessThan(180)
      expect(size.height, name).toBeLessThan(150)
    }
  }
})

describe.each(['', 'cutter: { kind: laser }', 'cutter: { kind: router, bit: 1 mm }'])(
  'lettered for %s',
  (shop) => {
    it('every angle is written once, nearer to its own corner than to any other', () => {
      let read = 0
      for (const { plan, order, name } of sweptPlans(shop)) {
        const gauge = angleGauge(plan, order.shop.jigStock, order.shop.cutter)
        const [part] = gauge.parts
        if (!part) throw new Error('a gauge is one plate')
        const words = jigWords(gauge, plan, order).onParts.gauge ?? []
        const cut = { ...part, ...relievedPart(part, removedWidth(order.shop.cutter)) }
        const drawn = [...partLettering(cut, words)]
        for (const { text } of words.slice(0, 4)) {
          const [word, shown] = text.split(' ')
          const angle = gauge.angles.find((each) => each.word === word)
          expect(shown, name).toBe(`${Number(angle?.angle.toFixed(2))}°`)
          // Letters come word by word, as many strokes at any height.
          const strokes = drawn.splice(0, strokeLettering({ text, middle: point(0, 0), height: 1 }).length)
          const heights = boxOf(strokes)
          const capital = heights.max.y - heights.min.y
          expect(capital, `${name}: ${text}`).toBeGreaterThan(2)
          const middle = between(heights.min, heights.max, 0.5)
          const nearest = gauge.angles
            .map((each) => ({ word: each.word, away: distance(each.corner, middle) }))
            .reduce((a, b) => (b.away < a.away ? b : a))
          expect(nearest.word, `${name}: ${text}`).toBe(word)
          read += 1
        }
      }
      expect(read).toBeGreaterThan(4 * 300)
    })
  },
)
