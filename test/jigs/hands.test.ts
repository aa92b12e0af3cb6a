import { expect, it, vi } from 'vitest'
import { jigWords } from '../../src/compose/jig-words.js'
import { jigOf } from '../../src/compose/jigs.js'
import { type Outline, signedArea } from '../../src/geometry/outline.js'
import type { Jig } from '../../src/jigs/jig.js'
import { JIG_NAMES } from '../../src/order/order.js'
import { commonArea, fromEdge, inside } from '../cutter/swept.js'
import { sweptPlans } from './sweep-plans.js'

vi.setConfig({ testTimeout: 120_000 })

/** Left and right exchanged, corner by corner: a bulge that runs the other way round is the same arc. */
const inMirror = ({ vertices, closed }: Outline): Outline => ({
  closed,
  vertices: vertices.map(({ x, y, bulge }) => ({ x: -x, y, ...(bulge ? { bulge: -bulge } : {}) })),
})

const atTheSaw = new Set(['blank-stop', 'first-cut-wedge', 'arm-cradle', 'joint-cut-wedge'])

const outlinesOf = (jig: Jig): Outline[] => [
  ...jig.parts.flatMap(({ outer, inner, footprint }) => [outer, ...inner, ...(footprint ? [footprint] : [])]),
  ...(jig.inUse?.wood ?? []),
]

/** Two saws: one that reaches every cut of most stars, and one that needs wedges. */
it.each([75, 40])(
  'a saw that stops at %s°: every jig for the left is the mirror image of that for the right',
  (limit) => {
    const left = sweptPlans('jig-stock: { side: left }', limit)
    let compared = 0
    for (const [index, { plan, order, name }] of sweptPlans('', limit).entries()) {
      const other = left[index]
      if (other?.name !== name) throw new Error('both sweeps have the same stars')
      for (const kind of JIG_NAMES.filter((each) => atTheSaw.has(each))) {
        const [right, mirrored] = [jigOf(kind, plan, order), jigOf(kind, other.plan, other.order)]
        expect(mirrored.ok, `${name}: ${kind}`).toBe(right.ok)
        if (!right.ok || !mirrored.ok) continue
        const told = `${name}: ${kind}`
        const [ours, theirs] = [outlinesOf(right.value), outlinesOf(mirrored.value)]
        expect(theirs.length, told).toBe(ours.length)
        theirs.forEach((outline, at) => {
          const expected = inMirror(ours[at] ?? outline)
          expect(signedArea(outline), told).toBeCloseTo(-signedArea(expected), 6)
          expect(signedArea(outline), told).toBeGreaterThan(0)
          if (outline.vertices.every(({ bulge }) => !bulge)) {
            const same = commonArea(inside(outline), inside(expected))
            expect(Math.abs(same / signedArea(outline) - 1), told).toBeLessThan(1e-6)
          }
          for (const { x, y } of expected.vertices) {
            const nearest = Math.min(...outline.vertices.map((own) => Math.hypot(own.x - x, own.y - y)))
            expect(nearest, told).toBeLessThan(1e-9)
          }
        })
        mirrored.value.hands.forEach(({ at, fromBlade }, hand) => {
          const own = right.value.hands[hand]
          expect(at.x, told).toBeCloseTo(-(own?.at.x ?? 0), 9)
          expect(fromBlade, told).toBe(own?.fromBlade)
        })
        const words = [jigWords(right.value, plan, order), jigWords(mirrored.value, other.plan, other.order)]
        expect(words[0]?.steps[0], told).toContain('to the right of the blade')
        expect(words[1]?.steps[0], told).toContain('to the left of the blade')
        // Words that belong to an edge or a place of a part stand at that of the same hand.
        for (const { word, outer } of mirrored.value.parts) {
          for (const { near, text } of words[1]?.onParts[word] ?? []) {
            if (near) expect(fromEdge(near, inside(outer)), `${told}, ${text}`).toBeLessThan(100)
          }
        }
        compared += 1
      }
    }
    expect(compared).toBeGreaterThan(400)
  },
)
