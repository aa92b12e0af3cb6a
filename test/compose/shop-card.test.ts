import { describe, expect, it } from 'vitest'
import { shopCard } from '../../src/compose/shop-card.js'
import { drawingExtents, labelBox } from '../../src/drawing/bounds.js'
import type { Drawing, Label, Path } from '../../src/drawing/model.js'
import { labelIsClear } from '../../src/drawing/place-label.js'
import { parseOrder } from '../../src/order/parse.js'
import { planOrder } from '../../src/plan/plan.js'
import { planOf } from '../orders.js'

/*
 * The card over stars of all regimes and orders of every length of word. Oracles: the sheet (ISO 216 A4 and ANSI Letter
 * with 10 mm margins leave 190.0 x 259.4 mm between them); ISO 129-1, figures are not crossed by lines; ISO 3098 for
 * the heights of lettering; the kite's angles for what the drawn blades must show.
 */

const cardsOf = (text: string): { drawing: Drawing; labels: readonly Label[]; paths: readonly Path[] }[] => {
  const order = parseOrder({ text })
  if (!order.ok) throw new Error(JSON.stringify(order.problems))
  const plan = planOrder(order.value)
  // Some stars of the sweep are too small for a saw; they are refused in words, which is tested elsewhere.
  if (!plan.ok) return []
  return plan.value.stars.map((star) => {
    const drawing = shopCard(star, plan.value.order)
    return {
      drawing,
      labels: drawing.shapes.filter((shape) => shape.kind === 'label'),
      paths: drawing.shapes.filter((shape) => shape.kind === 'path'),
    }
  })
}

const PLAIN = 'shop: { saw: { limit: 75, kerf: 3 mm, reads-to: 0.5 } }'
/** Wedges, warnings of every kind, boards to rip and to buy. */
const RICH = `shop: { saw: { limit: 45, kerf: 3 mm, reads-to: 0.5, crosscut: 50 mm },
  boards: [{ width: 30 mm, length: 2000 mm }, { width: 400 mm, length: 3000 mm, count: 1 }],
  panels: [{ length: 50 mm, width: 50 mm }] }`
const WORDY = 'The lantern star over the long wood jetty by the old stop'
const WIDE = 'W'.repeat(60)

const ORDERS = [3, 4, 5, 6, 7, 8, 9, 12, 16, 24].flatMap((points) =>
  [10, 20, 36, 45, 60, 72, 90, 110, 135, 160]
    .filter((tip) => tip < 178 - 360 / points)
    .flatMap((tip, row) =>
      ['across: 60 mm', 'across: 11 13/16 in', 'radius: 700 mm', 'across: 3000 mm'].flatMap((size, column) =>
        (row + column) % 2 === 0
          ? [`units: mm\nstars: [{ name: Jetty, points: ${points}, tip-angle: ${tip}, ${size} }]\n${PLAIN}`]
          : [
              `units: in\nstars: [{ name: ${column === 0 ? WIDE : WORDY}, quantity: 300, points: ${points}, tip-angle: ${tip}, ${size}, thickness: 19 mm, chamfer: 0.3 mm, backing: { inset: 0.4 mm, thickness: 4 mm } }]\n${RICH}`,
            ],
      ),
    ),
)

describe.each(ORDERS)('the card of %s', (text) => {
  const cards = cardsOf(text)

  it('fills its box exactly, and nothing lies outside', () => {
    for (const { drawing } of cards) {
      const { min, max } = drawingExtents(drawing)
      const box = [min.x, min.y, max.x, max.y].map((value) => Number(value.toFixed(6)))
      expect(box).toEqual([0, 0, 186, 250])
      expect(drawing.trueSize).toEqual({ across: 186, height: 250 })
    }
  })

  it('has every label clear of all lines and of each other', () => {
    for (const { drawing, labels } of cards) {
      const crossed = labels.filter(
        (label) =>
          !labelIsClear(
            label,
            drawing.shapes.filter((other) => other !== label),
            0.2,
          ),
      )
      expect(crossed.map(({ text }) => text)).toEqual([])
      // A label inside another crosses none of its sides.
      const inside = labels.filter((label) =>
        labels.some((other) => other !== label && contains(other, label)),
      )
      expect(inside.map(({ text }) => text)).toEqual([])
    }
  })

  it('letters what must be read at the saw 3.5 mm or higher, settings 10 mm, and nothing below 2.5 mm', () => {
    for (const { labels } of cards) {
      expect(Math.min(...labels.map(({ height }) => height))).toBeGreaterThanOrEqual(2.5)
      const figures = labels.filter(({ height }) => height >= 10 && height <= 14).map(({ text }) => text)
      for (const { star, firstCut, jointCut } of planOf(text).stars) {
        const rhombus = Math.abs(star.tipAngle - star.centreAngle) < 1e-9
        const cuts = rhombus ? [firstCut] : [firstCut, jointCut]
        for (const { reading, wedge } of cuts) {
          expect(figures).toContain(`${Number(reading.toFixed(2))}°`)
          if (wedge) expect(figures).toContain(`${wedge.angle}°`)
        }
        expect(figures.filter((figure) => /(?:mm|in)$/.test(figure)).length).toBe(cuts.length)
      }
    }
  })
})

const contains = (outer: Label, inner: Label): boolean => {
  const [box, within] = [labelBox(outer), labelBox(inner)]
  const range = (pick: (corner: { x: number; y: number }) => number, corners: typeof box) => [
    Math.min(...corners.map(pick)),
    Math.max(...corners.map(pick)),
  ]
  return [({ x }: { x: number }) => x, ({ y }: { y: number }) => y].every((pick) => {
    const [[low = 0, high = 0], [least = 0, most = 0]] = [
      range(pick as never, box),
      range(pick as never, within),
    ]
    return least >= low && most <= high
  })
}

it('most of the sweep is drawn', () => {
  const drawn = ORDERS.filter((text) => cardsOf(text).length > 0)
  expect(drawn.length / ORDERS.length).toBeGreaterThan(0.85)
})
