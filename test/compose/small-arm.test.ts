import { describe, expect, it } from 'vitest'
import { armPattern } from '../../src/compose/arm-pattern.js'
import { cutPlan } from '../../src/compose/cut-plan.js'
import { jigCard } from '../../src/compose/jig-card.js'
import { shopCard } from '../../src/compose/shop-card.js'
import type { Drawing } from '../../src/drawing/model.js'
import { planOf } from '../orders.js'
import { FURNITURE } from '../prints.js'

/*
 * Nothing on paper may invite to saw an arm that nothing can hold beside the blade (common practice, no published source).
 * Oracle of its angles: 360° over the points, and what a kite's four angles add up to.
 */

const textsOf = ({ shapes }: Drawing): string[] =>
  shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : []))

describe('an arm too small for the saw', () => {
  const { order, stars } = planOf('stars: [{ name: Bell, points: 5, tip-angle: 45, across: 60 }]')
  const [star] = stars
  if (!star) throw new Error('the order has a star')
  const words = textsOf(shopCard(star, order)).join(' ')
  const pattern = armPattern(star, order, FURNITURE)

  it('is sawn by hand: no saw setting, no stop, no drawing of a cut', () => {
    expect(words).toContain('Too small for a miter saw: fine hand saw and miter box.')
    for (const word of ['Cut 1', 'Cuts 2', 'Nearest mark', 'Seen from above', 'Miter angles'])
      expect(words).not.toContain(word)
  })

  it('is sawn by hand in the cut plan and on the arm pattern too', () => {
    for (const text of [cutPlan({ order, stars }), textsOf(pattern).join(' ')]) {
      const told = text.replaceAll(/\s+/g, ' ')
      expect(told).toContain('Too small for a miter saw: fine hand saw and miter box.')
      expect(told).not.toMatch(/Cut [123]/)
    }
  })

  it('has neither saw readings nor a stop on its pattern, and no blade on its card of jigs', () => {
    const told = [pattern, jigCard(star, order)].flatMap(textsOf).join(' ')
    // By hand: the joint cuts 90° - 22.5° - 36° = 31.5° from square; its own angles are 45°, 72° and 121.5°.
    for (const word of ['31.5°', 'stop and blank side', 'fence', 'far side of the blade', 'lower the blade'])
      expect(told).not.toContain(word)
    expect(textsOf(pattern).filter((text) => ['1', '2', '3', 'stop'].includes(text))).toEqual([])
    for (const angle of ['45°', '72°', '121.5°']) expect(told).toContain(angle)
    expect(pattern.shapes.filter((shape) => shape.kind === 'path' && shape.pen === 'dashed')).toEqual([])
    expect(told).toContain("The saw's manual and local rules come first.")
  })

  it("gives the arm's angles and lengths all the same", () => {
    // Five points: 360/5 at the centre, sides (360 - 45 - 72)/2; across 60 is 2 R cos 18°.
    expect(words).toContain('Tip 45°, centre 72°, sides 121.5°')
  })
})
