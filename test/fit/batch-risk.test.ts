import { describe, expect, it, test } from 'vitest'
import { riskWords } from '../../src/compose/risk-report.js'
import { batchRisk } from '../../src/fit/batch-risk.js'
import { chanceOfBatch, chanceOfStar, repeatabilityFor } from '../../src/fit/chances.js'
import { acceptedClosure, type ClosureLaw, closureLaw, cutsOf, signedGap } from '../../src/fit/closure-law.js'
import { valleyStep } from '../../src/fit/valley-step.js'
import { wastedArms } from '../../src/fit/wasted-arms.js'
import { closureGap } from '../../src/plan/closure.js'
import { degrees, mm } from '../../src/units/convert.js'
import { planOf } from '../orders.js'
import { dryFitOf, measurement } from './dry-fits.js'

const asked = (keys: string, saw = '', rest = '') => {
  const { order, stars } = planOf(`shop: { saw: { limit: 75, ${saw} }, ${rest} }\nstars: [{ ${keys} }]`)
  const [plan] = stars
  if (!plan) throw new Error('an order of one star has one plan')
  return { plan, shop: order.shop }
}

const law = (mean: number, shared: number, own: number): ClosureLaw => ({
  mean: degrees(mean),
  shared: degrees(shared),
  own: degrees(own),
  shares: { setting: 0, bias: 0, firstCuts: 0, jointCuts: 0 },
})

/** Centre angle of an arm whose three cuts are off: the kite's fourth angle, or the rhombus's opposite one. */
const closureOfArms = (points: number, tip: number, errors: readonly number[], rhombus: boolean): number =>
  Array.from({ length: points }, (_, arm) => arm).reduce((closure, arm) => {
    if (rhombus) return closure - (tip + (errors[arm] ?? 0))
    const [first = 0, left = 0, right = 0] = errors.slice(3 * arm, 3 * arm + 3)
    const side = 180 - tip / 2 - 180 / points
    return closure - (360 - (tip + first) - (side + left) - (side + right))
  }, 360)

describe('the spread of the closure is GUM (JCGM 100:2008) equation 10', () => {
  test.each([
    [5, 45],
    [5, 72],
    [6, 60],
    [8, 50],
    [24, 110],
  ])('%i points, tip angle %s: by differences of the arms themselves', (points, tip) => {
    const { plan, shop } = asked(
      `points: ${points}, tip-angle: ${tip}, radius: 200`,
      'repeats-to: 0.07, true-to: 0',
    )
    const rhombus = Math.abs(tip - 360 / points) < 1e-9
    const count = rhombus ? points : 3 * points
    const variance = Array.from({ length: count }, (_, input) => {
      const errors = new Array<number>(count).fill(0)
      errors[input] = 1e-3
      return closureOfArms(points, tip, errors, rhombus) / 1e-3
    }).reduce((sum, sensitivity) => sum + (sensitivity * 0.07) ** 2, 0)
    expect(closureLaw(plan, shop.saw, 'told').own).toBeCloseTo(Math.sqrt(variance), 8)
  })

  it('ten faces of 0.1° make 0.316°, a bias of 0.1° on all of them 1° (derived from equation 10)', () => {
    const { plan, shop } = asked('points: 5, tip-angle: 45, radius: 200', 'repeats-to: 0.1, true-to: 0.2')
    const { own, shared, shares } = closureLaw(plan, shop.saw, 'told')
    // Five first cuts beside the ten faces: a third of the variance.
    expect(Math.sqrt(own ** 2 - 5 * 0.1 ** 2)).toBeCloseTo(0.316227766016838, 12)
    // true-to is two standard deviations; the scale may be off by it at the five first cuts too, and otherwise.
    expect(shared).toBeCloseTo(Math.hypot(0.5, 1), 12)
    expect(shares.firstCuts + shares.jointCuts + shares.bias).toBeCloseTo(1, 12)
    expect(shares.jointCuts / shares.firstCuts).toBeCloseTo(2, 12)
  })

  it('a saw on its marks brings what the marks leave open; a learned bias that is left in, ten times itself', () => {
    const { plan, shop } = asked('points: 5, tip-angle: 45.2, radius: 200', 'reads-to: 1')
    const { mean } = closureLaw(plan, shop.saw, 'marks')
    // 44.8° and 31.4° are set to 45° and 31°: each arm's tip 0.2° slimmer, each side 0.4° slimmer.
    expect(mean).toBeCloseTo(5 * -0.2 + 10 * -0.4, 9)
    const learned = { ...shop.saw, bias: { miter: degrees(-0.2), uncertainty: degrees(0.1) } }
    expect(closureLaw(plan, learned, 'bare')).toMatchObject({ mean: -2 })
    expect(closureLaw(plan, learned, 'bare').shared).toBeCloseTo(0.5, 12)
    expect(closureLaw(plan, learned, 'told').mean).toBe(0)
  })
})

it('the accepted closure is the one whose gap is the accepted gap', () => {
  for (const gap of [0.1, 0.5, 3]) {
    expect(closureGap(mm(64.5), acceptedClosure(mm(64.5), mm(gap)))).toBeCloseTo(gap, 12)
    expect(signedGap(mm(64.5), -acceptedClosure(mm(64.5), mm(gap)))).toBeCloseTo(-gap, 12)
  }
  expect(acceptedClosure(mm(5), mm(20))).toBe(180)
})

describe('the chances', () => {
  it('without anything shared the stars of a batch are independent', () => {
    const own = law(0.1, 0, 0.2)
    const star = chanceOfStar(own, degrees(0.4))
    expect(chanceOfBatch(own, degrees(0.4), 7)).toBeCloseTo(star ** 7, 12)
  })

  it('with everything shared all close or none', () => {
    const shared = law(0.1, 0.2, 0)
    expect(chanceOfBatch(shared, degrees(0.4), 7)).toBeCloseTo(chanceOfStar(shared, degrees(0.4)), 12)
  })

  it('the repeatability that is needed gives back the chance it was asked for', () => {
    for (const wanted of [0.95, 0.99]) {
      const given = { law: law(0.1, 0.05, 9), accepted: degrees(0.44), quantity: 6, cuts: 15 }
      const repeats = repeatabilityFor(wanted, given)
      const own = degrees((repeats ?? Number.NaN) * Math.sqrt(15))
      expect(chanceOfBatch({ ...given.law, own }, given.accepted, 6)).toBeCloseTo(wanted, 9)
    }
  })

  it('no repeatability is enough for a saw that is further off than accepted', () => {
    expect(
      repeatabilityFor(0.95, { law: law(0.5, 0, 0.1), accepted: degrees(0.44), quantity: 1, cuts: 15 }),
    ).toBeUndefined()
  })
})

describe('closed form and simulation agree within four standard errors:', () => {
  test.each([
    ['a saw nobody checked', 'points: 5, tip-angle: 45, board-width: 70, quantity: 6', '', 'told'],
    ['a saw that is true', 'points: 5, tip-angle: 45, board-width: 70, quantity: 6', 'true-to: 0', 'told'],
    ['on marks that leave a gap', 'regular: 7/3, across: 300, quantity: 3', 'reads-to: 1', 'marks'],
    ['a rhombus', 'regular: 6/2, across: 300, quantity: 10', 'true-to: 0.1', 'told'],
    ['many points', 'regular: 24/7, across: 500, quantity: 2', 'repeats-to: 0.01, true-to: 0.01', 'told'],
    ['three points', 'points: 3, tip-angle: 30, across: 300, quantity: 4', 'true-to: 0.3', 'told'],
    ['an ideal saw', 'points: 5, tip-angle: 45, across: 300', 'repeats-to: 0, true-to: 0', 'told'],
  ] as const)('%s', (_, keys, saw, set) => {
    const { plan, shop } = asked(keys, saw)
    const risk = batchRisk(plan, shop, { set, seed: 20261128, simulated: 200_000 })
    const { simulated, wasted, histogram } = risk
    const near = (value: number, estimate: { value: number; error: number }) =>
      expect(Math.abs(value - estimate.value)).toBeLessThanOrEqual(4 * estimate.error + 1e-12)
    near(risk.star, simulated.star)
    near(risk.batch, simulated.batch)
    near(wasted.cutAll, simulated.wasted.cutAll)
    near(wasted.cutOneFitOne, simulated.wasted.cutOneFitOne)
    near(0.95, risk.stopRepeatsTo === 0 ? { value: 0.95, error: 0 } : simulated.stepWithin)
    expect(simulated.deviation).toBeCloseTo(Math.hypot(risk.law.shared, risk.law.own), 1)
    expect(histogram.shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12)
    expect(histogram.expected.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12)
    histogram.shares.forEach((share, bar) => {
      expect(Math.abs(share - (histogram.expected[bar] ?? 0))).toBeLessThan(0.02)
    })
  })
})

describe('arms wasted', () => {
  it('a saw that is off and repeats without spread: one star is wasted when each is fitted, all when none is', () => {
    expect(wastedArms(law(2, 0, 0), degrees(0.44), 5, 6, degrees(0))).toEqual({ cutAll: 30, cutOneFitOne: 5 })
  })

  it('a true saw: none under either', () => {
    expect(wastedArms(law(0, 0, 0), degrees(0.44), 5, 6, degrees(0))).toEqual({ cutAll: 0, cutOneFitOne: 0 })
  })

  it('where the stars share nothing, fitting teaches nothing', () => {
    const { cutAll, cutOneFitOne } = wastedArms(law(0, 0, 0.3), degrees(0.44), 5, 6, degrees(0))
    expect(cutOneFitOne).toBeCloseTo(cutAll, 12)
  })

  it('where they share something, fitting never wastes more, whatever the spread', () => {
    for (const own of [0.01, 0.1, 0.3, 1, 3]) {
      for (const shared of [0.1, 0.5, 2]) {
        const { cutAll, cutOneFitOne } = wastedArms(law(0, shared, own), degrees(0.44), 5, 12, degrees(0))
        expect(cutOneFitOne).toBeLessThanOrEqual(cutAll + 1e-12)
      }
    }
  })
})

describe('a saw that one dry fit has corrected', () => {
  const { plan, shop } = asked('points: 5, tip-angle: 45, board-width: 70, quantity: 6', 'repeats-to: 0.05')
  const risk = batchRisk(plan, shop, { set: 'told', seed: 1, simulated: 1000 })

  it('keeps what the gap was misread by (0.3 mm, rectangular) and the scatter of the star it was read on', () => {
    // Fifteen cuts of 0.05 degrees, twice; 0.3 / sqrt 3 mm over a joint edge of 64.45 mm, in degrees.
    const own = 0.05 * Math.sqrt(15)
    const read = ((0.3 / Math.sqrt(3) / 64.4516) * 180) / Math.PI
    const deviation = Math.hypot(own, own, read)
    const accepted = (2 * Math.asin(0.25 / 64.4516) * 180) / Math.PI
    const steps = 100_000
    // The normal density summed up.
    const sum = Array.from(
      { length: steps },
      (_, step) => (((step + 0.5) / steps) * 2 - 1) * accepted,
    ).reduce((all, x) => all + Math.exp(-(x ** 2) / (2 * deviation ** 2)), 0)
    const chance = (sum * 2 * accepted) / steps / (deviation * Math.sqrt(2 * Math.PI))
    expect(risk.corrected.star).toBeCloseTo(chance, 5)
    expect(risk.corrected.star).toBeLessThan(risk.settled.star)
    expect(risk.star).toBeLessThan(risk.corrected.star)
  })

  it('agrees with what a dry fit of that gap says to expect, within a tenth', () => {
    const fit = dryFitOf(plan, [measurement('gap', -2.2, 0.3)], {
      spread: { angle: degrees(0.05), stop: mm(0.1) },
    })
    const own = 0.05 * Math.sqrt(15)
    const read = ((0.3 / Math.sqrt(3) / 64.4516) * 180) / Math.PI
    const ratio = fit.recutUncertainty / 2 / Math.hypot(own, own, read)
    expect(ratio).toBeGreaterThan(0.85)
    expect(ratio).toBeLessThan(1.05)
  })

  it('teaches nothing when there is one star only, and that is the reason told', () => {
    const one = asked('points: 5, tip-angle: 45, board-width: 70')
    const alone = batchRisk(one.plan, one.shop, { set: 'told', seed: 1, simulated: 1000 })
    const wasted = riskWords(alone, planOf('stars: [{ points: 5, tip-angle: 45, board-width: 70 }]').order)
    expect(wasted.find(({ heading }) => heading === 'Wasted')?.text).toContain('there is no second star')
  })
})

describe('the step at the valleys', () => {
  const { plan } = asked('points: 5, tip-angle: 45, radius: 200')

  it('spreads √2 times the slop at the stop (GUM, equation 10)', () => {
    expect(valleyStep(plan.star, mm(0.1)).usual).toBeCloseTo(0.1 * Math.SQRT2, 12)
  })

  it('of one edge of a rhombus, as far as the slop itself', () => {
    const rhombus = asked('regular: 6/2, radius: 200').plan
    expect(cutsOf(rhombus)).toEqual({ first: 6, joint: 0 })
    expect(valleyStep(rhombus.star, mm(0.1)).usual).toBe(0.1)
  })

  it('of five valleys stays within 2.57 standard deviations in 95 of 100 stars (Šidák: 1 - 0.95^(1/5), from memory)', () => {
    const { usual, largest } = valleyStep(plan.star, mm(0.1))
    expect(largest / usual).toBeCloseTo(2.569, 2)
    expect(valleyStep(plan.star, mm(0)).largest).toBe(0)
  })
})

it('the same seed cuts the same stars', () => {
  const { plan, shop } = asked('points: 5, tip-angle: 45, radius: 200, quantity: 3')
  const run = (seed: number) => batchRisk(plan, shop, { set: 'told', seed, simulated: 3_000 }).simulated
  expect(run(4)).toEqual(run(4))
  expect(run(4).counts).not.toEqual(run(5).counts)
})
