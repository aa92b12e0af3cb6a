import { describe, expect, it } from 'vitest'
import { cutPlan } from '../../src/compose/cut-plan.js'
import { shopCard } from '../../src/compose/shop-card.js'
import { planOf } from '../orders.js'
import { FAR_SAW, starPlan } from './shop-orders.js'

const STAR = { points: 5, 'tip-angle': 45, 'board-width': 70 }
const biased = (miter: number) => ({ saw: { ...FAR_SAW, bias: { miter, uncertainty: 0.03 } } })

describe('a learned bias', () => {
  it('turns the joint cuts by as much against it (wanted less bias), and leaves the first cut alone', () => {
    const plan = starPlan(STAR, biased(-0.2))
    expect(plan.jointCut.reading).toBeCloseTo(31.7, 12)
    expect(plan.jointCut.miter).toBe(31.5)
    expect(plan.firstCut.reading).toBe(45)
  })

  it('is in what a mark leaves open: at 31.5 the saw cuts 31.3, and ten faces 0.2 degrees too shallow leave 2', () => {
    const plan = starPlan(STAR, biased(-0.2))
    expect(plan.jointCut.mark).toBe(31.5)
    expect(plan.jointCut.closureAtMark).toBeCloseTo(-2, 9)
  })

  it('turns the first cut of a rhombus arm, the only one that closes it', () => {
    const plan = starPlan({ regular: '6/2', across: 300 }, biased(0.3))
    expect(plan.firstCut.reading).toBeCloseTo(30 - 0.3, 12)
  })

  it('moves the reach of the saw with it: at 45 it cuts 44.5, and the slenderest 12-point star is fatter by 1', () => {
    // 180 - 30 - 2 * 45 = 60, and with 44.5 one degree more.
    const at45 = { ...FAR_SAW, limit: 45 }
    const slenderest = { points: 12, slenderest: true, across: 300 }
    expect(starPlan(slenderest, { saw: at45 }).star.tipAngle).toBeCloseTo(60, 9)
    const plan = starPlan(slenderest, { saw: { ...at45, bias: { miter: -0.5 } } })
    expect(plan.star.tipAngle).toBeCloseTo(61, 9)
    expect(plan.jointCut.reading).toBeCloseTo(45, 9)
    expect(plan.feasible).toBe(true)
  })

  it('stands in the plan and on the shop card', () => {
    const plan = planOf(JSON.stringify({ shop: biased(-0.2), stars: [STAR] }))
    const says =
      'ead 31.7° to cut 31.5°: this saw cuts 0.2° shallower than its scale says, give or take 0.03°'
    expect(cutPlan(plan).replaceAll(/\s+/g, ' ')).toContain(says)
    const [star] = plan.stars
    const lettered = star
      ? shopCard(star, plan.order).shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : []))
      : []
    expect(lettered.join(' ')).toContain(says)
  })
})
