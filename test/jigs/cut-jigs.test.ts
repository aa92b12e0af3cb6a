import { describe, expect, it, vi } from 'vitest'
import { drawJig, jigOf } from '../../src/compose/jigs.js'
import { compensated, relievedPart } from '../../src/cutter/compensated.js'
import type { CutPart } from '../../src/cutter/cut-part.js'
import { forCutter } from '../../src/drawing/drawing.js'
import type { Path } from '../../src/drawing/model.js'
import { side } from '../../src/geometry/leaves-room.js'
import type { Outline, Vertex } from '../../src/geometry/outline.js'
import { distance, type Point, point } from '../../src/geometry/point.js'
import { JIG_NAMES, type JigName, type Order, type Shop } from '../../src/order/order.js'
import { parseOrder } from '../../src/order/parse.js'
import { removedWidth } from '../../src/order/removed-width.js'
import { commonArea, inside, leftWithin, openedBy, partsBeyond, sameWithin, swept } from '../cutter/swept.js'
import { sweptPlans } from './sweep-plans.js'

vi.setConfig({ testTimeout: 120_000 })

/** Common practice, no published source: the narrowest and the widest that lasers and small routers remove. */
const MACHINES = [
  ['{ kind: laser, kerf: 0.1 }', 'thickness: 9 mm'],
  ['{ kind: laser, kerf: 0.4 }', 'thickness: 12 mm'],
  ['{ kind: router, bit: 3 mm }', 'thickness: 18 mm'],
  ['{ kind: router, bit: 1/4 in }', 'thickness: 18 mm, screw: 7 mm'],
] as const

const shopOf = (keys: string): Shop => {
  const order = parseOrder({
    text: `shop: { ${keys} }\nstars: [{ points: 5, tip-angle: 45, tip-edge: 140 }]`,
  })
  if (!order.ok) throw new Error('a good shop')
  return order.value.shop
}

/** No cutter changes a star's plan, nor does the panel of its jigs. */
const PLANS = sweptPlans('', 42)
/** Blank stops are for saws that reach cut 1 by themselves. */
const REACHED = sweptPlans('', 75)

/** An outline of a part as it is designed, reliefs and all, and the line that the cutter's middle follows for it. */
interface ToCut {
  readonly designed: Outline
  readonly line: Outline
  readonly isHole: boolean
  /** Of the cutter. */
  readonly radius: number
  /** Inside corners that nothing sits in: a bit leaves them round, and there it does not matter. */
  readonly rounded: readonly Point[]
}

/** Nothing of a part that the cutter does not get into: the maker is told so. */
const toCut = (part: CutPart, { shop, lengths }: Order): ToCut[] => {
  const width = removedWidth(shop.cutter)
  const lines = compensated(part, shop.cutter, lengths)
  if (!lines.ok) return []
  const shape = relievedPart(part, width)
  if (!shape) throw new Error(`${part.name} has no room for its relief`)
  const sat = (at: Point): boolean => part.seats.some((seat) => distance(seat, at) < 1e-6)
  const outlines = [
    { outline: part.outer, designed: shape.outer, line: lines.value.outer, isHole: false },
    ...part.inner.map((outline, index) => ({
      outline,
      designed: shape.inner[index] ?? outline,
      line: lines.value.inner[index] ?? outline,
      isHole: true,
    })),
  ]
  return outlines.map(({ outline, ...cut }) => ({
    ...cut,
    radius: width / 2,
    rounded: insideCorners(outline, cut.isHole).filter((at) => !sat(at)),
  }))
}

const insideCorners = ({ vertices }: Outline, isHole: boolean): Point[] =>
  vertices.filter((at, index) => {
    const [a, b] = [vertices.at(index - 1) ?? at, vertices[(index + 1) % vertices.length] ?? at]
    const turns = side(a, at, b)
    return !at.bulge && !a.bulge && (isHole ? turns > 0 : turns < 0)
  })

const square = ({ x, y }: { x: number; y: number }, half: number) => ({
  closed: true,
  vertices: [
    { x: x - half, y: y - half },
    { x: x + half, y: y - half },
    { x: x + half, y: y + half },
    { x: x - half, y: y + half },
  ],
})

/** Does a disc of the cutter, led along the line, leave what is designed? */
const comesOut = ({ designed, line, isHole, radius, rounded }: ToCut): boolean => {
  const left = isHole ? openedBy(line, radius) : leftWithin(line, radius)
  const free = rounded.flatMap((at) => inside(square(at, 2 * radius + 0.05)))
  return sameWithin(left, inside(designed), 0.02, free)
}

/** What is to be cut, wherever it lies: a screw's hole is there a thousand times, and one disc led round proves all. */
const wherever = ({ designed, line, isHole, radius, rounded }: ToCut): string => {
  const [from = point(0, 0)] = designed.vertices
  const told = ({ x, y, bulge = 0 }: Vertex): string =>
    `${(x - from.x).toFixed(6)} ${(y - from.y).toFixed(6)} ${bulge.toFixed(9)}`
  return [
    isHole,
    radius,
    ...[designed.vertices, line.vertices, rounded].map((all) => all.map(told).join()),
  ].join('|')
}

/** How many parts there must be at least, so that no check passes by checking nothing. */
const LEAST: Readonly<Record<JigName, number>> = {
  'blank-stop': 1100,
  'first-cut-wedge': 1100,
  'arm-cradle': 1500,
  'joint-cut-wedge': 300,
  'angle-gauge': 600,
  'trial-window': 600,
  'glue-up-frame': 700,
}

/** Every star of the sweep with every machine, for both hands, on a saw that needs fence wedges for many of them. */
describe.each(JIG_NAMES)('%s', (kind) => {
  it.each(MACHINES)(
    '%s, %s: a disc of the cutter led along every line leaves what is designed, within 0.02 mm',
    (cutter, panel) => {
      const sound = new Set<string>()
      const known = new Map<string, boolean>()
      let parts = 0
      for (const hand of ['left', 'right']) {
        const shop = shopOf(`saw: { limit: 42 }, cutter: ${cutter}, jig-stock: { ${panel}, side: ${hand} }`)
        for (const { plan, order: planned, name } of kind === 'blank-stop' ? REACHED : PLANS) {
          const order = { ...planned, shop }
          const jig = jigOf(kind, plan, order)
          if (!jig.ok) continue
          for (const part of jig.value.parts) {
            // Gauge, window and frame are the same for both hands, and so are many rails and bars.
            const same = JSON.stringify([part.outer, part.inner, part.seats, part.besideOthers])
            const cuts = known.has(same) ? [] : toCut(part, order)
            for (const cut of cuts) {
              const alike = wherever(cut)
              if (sound.has(alike)) continue
              expect(comesOut(cut), `${name}: ${part.name}, ${hand}`).toBe(true)
              sound.add(alike)
            }
            const isCut = known.get(same) ?? cuts.length > 0
            known.set(same, isCut)
            if (isCut) parts += 1
          }
        }
      }
      expect(parts).toBeGreaterThan(LEAST[kind])
    },
  )
})

const SHOPS = [
  'cutter: { kind: laser, kerf: 0.2 }, jig-stock: { side: left }',
  'cutter: { kind: router, bit: 3 mm }, jig-stock: { thickness: 18 mm }',
  'cutter: { kind: hand }',
]

describe.each(SHOPS)('%s', (shop) => {
  // Two of them need fence wedges.
  const plans = sweptPlans(shop, shop.includes('laser') ? 75 : 42).filter(
    (_, index) => index % 8 === SHOPS.indexOf(shop),
  )

  it('parts lie apart on the panel by more than the cutter takes, words and marks on their wood', () => {
    for (const { plan, order, name } of plans) {
      for (const kind of JIG_NAMES) {
        const drawing = drawJig(kind, plan, order)
        if (!drawing.ok) continue
        const shapes = forCutter(drawing.value.drawing).shapes as readonly Path[]
        const told = `${name}: ${kind}`
        expect(
          shapes.every((shape) => shape.kind === 'path'),
          told,
        ).toBe(true)
        const outer = shapes.filter(({ layer }) => layer === 'CUT-OUTSIDE')
        const taken = outer.map((line) => swept(line, 2))
        taken.forEach((own, index) => {
          for (const other of taken.slice(index + 1)) expect(commonArea(own, other), told).toBe(0)
        })
        // Each mark begins on wood: of the small square around its first place not all is left beside the wood.
        const begun = shapes.flatMap(({ layer, vertices: [from] }) =>
          layer === 'MARK' && from ? inside(square(from, 0.02)) : [],
        )
        const off = partsBeyond(begun, inside(...outer))
        expect(Math.max(0, ...off), told).toBeLessThan(0.04 ** 2 * 0.99)
      }
    }
  })
})
