import { describe, expect, it, vi } from 'vitest'
import { assembly } from '../../src/compose/jig-assembly.js'
import { jigCards } from '../../src/compose/jig-card.js'
import { drawJigs, jigOf } from '../../src/compose/jigs.js'
import { labelBox } from '../../src/drawing/bounds.js'
import type { Drawing, Label } from '../../src/drawing/model.js'
import { labelIsClear } from '../../src/drawing/place-label.js'
import { JIG_NAMES } from '../../src/order/order.js'
import { parseOrder } from '../../src/order/parse.js'
import { planOrder } from '../../src/plan/plan.js'
import { commonArea, inside } from '../cutter/swept.js'
import { sweptPlans } from './sweep-plans.js'

vi.setConfig({ testTimeout: 120_000 })

const labelsOf = ({ shapes }: Pick<Drawing, 'shapes'>): Label[] =>
  shapes.flatMap((shape) => (shape.kind === 'label' ? [shape] : []))

it.each([75, 40])(
  'a saw that stops at %s°: no number of a part stands on another, by Clipper2, or on a line',
  (limit) => {
    let numbers = 0
    const plans = sweptPlans('', limit).filter((_, index) => index % 3 === limit % 3)
    for (const { plan, order, name } of plans)
      for (const kind of JIG_NAMES) {
        const jig = jigOf(kind, plan, order)
        if (!jig.ok) continue
        const picture = assembly(jig.value)
        const labels = labelsOf(picture)
        expect(labels.map(({ text }) => text).sort(), name).toEqual(
          jig.value.parts.map((_, index) => String(index + 1)),
        )
        const boxes = labels.map((label) => inside({ closed: true, vertices: labelBox(label) }))
        for (const label of labels) {
          const others = picture.shapes.filter((other) => other !== label)
          expect(labelIsClear(label, others, 0.1), `${name}: ${kind}, ${label.text}`).toBe(true)
          // What stands above the picture is not run into.
          expect(Math.max(...labelBox(label).map(({ y }) => y))).toBeLessThan(0.2)
        }
        boxes.forEach((own, index) => {
          for (const other of boxes.slice(index + 1))
            expect(commonArea(own, other), `${name}: ${kind}`).toBeLessThan(1e-6)
          numbers += 1
        })
      }
    expect(numbers).toBeGreaterThan(800)
  },
)

describe('the caution for jigs beside the blade', () => {
  const cardsWith = (jigs: string): string[] => {
    const order = parseOrder({
      text: `jigs: [${jigs}]\nstars: [{ name: Wren, points: 5, tip-angle: 50, tip-edge: 140 }]`,
    })
    const plan = order.ok ? planOrder(order.value) : order
    const star = plan.ok ? plan.value.stars[0] : undefined
    if (!order.ok || !star) throw new Error('a good order')
    return jigCards(drawJigs(star, order.value, [star]), star, order.value).map((card) =>
      labelsOf(card)
        .map(({ text }) => text)
        .join(' '),
    )
  }

  it.each([
    ['angle-gauge, trial-window, glue-up-frame', false],
    ['blank-stop', true],
    ['angle-gauge, arm-cradle', true],
  ])('with %s: %s', (jigs, cautioned) => {
    const cards = cardsWith(jigs)
    expect(cards.length).toBeGreaterThan(0)
    for (const card of cards) expect(card.includes('lower the blade with the saw off')).toBe(cautioned)
  })

  it('stands on every page that has such a jig, and on no other', () => {
    const cards = cardsWith(JIG_NAMES.join(', '))
    expect(cards.length).toBeGreaterThan(1)
    for (const card of cards)
      expect(card.includes('lower the blade with the saw off'), card).toBe(
        /BLANK STOP,|ARM CRADLE,/.test(card),
      )
  })
})
