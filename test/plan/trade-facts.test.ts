import { describe, expect, it } from 'vitest'
import lumber from '../../shared/lumber-sizes.json' with { type: 'json' }
import { solveStar } from '../../src/geometry/star.js'
import { degrees, inches, toInches } from '../../src/units/convert.js'
import { starPlan } from './shop-orders.js'

/*
 * Facts of the trade. Common practice, no published source: measured on finished stars with a rule, so they hold to
 * the per cent given with each. Only the true width of the board is published: American Softwood Lumber Standard,
 * DOC PS 20, a board sold as 4 inches wide measures 3 1/2 dressed and dry.
 */

const soldAsFour = lumber.board_width.find(({ nominal }) => nominal === 4)
const shop = {
  saw: { limit: 54, kerf: '3/32', 'reads-to': 0.5 },
  boards: [{ width: soldAsFour?.dry_in, length: '8 ft' }],
}
const starOf = (tipAngle: number) =>
  starPlan({ points: 5, 'tip-angle': tipAngle, 'board-width': soldAsFour?.dry_in }, shop, { units: 'in' })

const within = (share: number, got: number, expected: number) =>
  expect(Math.abs(got / expected - 1), `${got} for ${expected}`).toBeLessThanOrEqual(share)

describe('a five-point star from a 3 1/2 inch board', () => {
  const plan = starOf(45)

  it('comes from a board sold as 4 inches wide (PS 20)', () => {
    expect(soldAsFour?.dry_in).toBe(3.5)
    expect(plan.order.size.length).toBeCloseTo(88.9, 9)
  })

  it('first cut 45 degrees gives joint cuts of 31.5 degrees (common practice, no published source)', () => {
    expect(plan.firstCut.miter).toBe(45)
    expect(plan.jointCut.miter).toBe(31.5)
    expect(plan.jointCut.mark).toBe(31.5)
    expect(plan.feasible).toBe(true)
  })

  it('its tip edge measures 4 7/8 inches (common practice, no published source; 2 %)', () => {
    within(0.02, toInches(plan.star.tipEdge), 4 + 7 / 8)
    // On the whole width of the board: 3 1/2 / sin 45.
    within(0.0001, toInches(plan.star.tipEdge), 3.5 * Math.SQRT2)
  })

  it('with that tip edge it measures 13 1/4 by 12 3/4 inches (common practice, no published source; 2 %)', () => {
    const measured = solveStar(5, degrees(45), 'tip-edge', inches(4 + 7 / 8))
    within(0.02, toInches(measured.across), 13.25)
    within(0.02, toInches(measured.height), 12.75)
  })

  it('five arms 5 1/2 inches apart use about 31 1/2 inches of board (common practice, no published source; 2 %)', () => {
    within(0.02, toInches(plan.blank.firstTrim) + 5 * 5.5, 31.5)
  })

  it('the arms can stand about 5 1/4 inches apart (common practice, no published source; 1/4 inch)', () => {
    const pitch = toInches(plan.blank.pitch)
    expect(pitch).toBeLessThanOrEqual(5.25)
    expect(5.25 - pitch).toBeLessThan(0.25)
  })

  it('an 8 foot board gives three such stars (common practice, no published source)', () => {
    expect(Math.floor((plan.boardUse?.blanksPerBoard ?? 0) / 5)).toBe(3)
    // Three also 5 1/2 inches apart, and no fourth even without any waste between the blanks.
    expect(toInches(plan.blank.firstTrim) + 15 * 5.5).toBeLessThan(96)
    expect(toInches(plan.blank.firstTrim) + 20 * toInches(plan.blank.side)).toBeGreaterThan(96)
  })
})

describe('a first cut of 54 degrees', () => {
  const plan = starOf(36)

  it('gives the star whose valley line runs straight across (common practice, no published source)', () => {
    expect(plan.firstCut.miter).toBe(54)
    expect(plan.star.valleyLine.apart).toBe(2)
    expect(plan.star.valleyLine.dip).toBeCloseTo(0, 9)
  })

  it('15 1/2 inches wide (common practice, no published source; 1 %)', () => {
    within(0.01, toInches(plan.star.across), 15.5)
  })
})
