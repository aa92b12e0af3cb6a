import { describe, expect, it, test } from 'vitest'
import { chanceBelow, chanceWithin, fallsTo, meanOver } from '../../src/fit/normal-law.js'

describe('the normal law', () => {
  // Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 26.1, values from memory; the tails at 5 and
  // 6 are those of the C library's erfc, as Python's math.erfc prints it.
  test.each([
    [0, 0.5],
    [0.5, 0.691462461274],
    [1, 0.841344746069],
    [1.644853626951, 0.95],
    [1.95996398454, 0.975],
    [2.575829303549, 0.995],
    [3, 0.998650101968],
    [3.5, 0.999767370921],
  ])('chance below %s', (x, chance) => {
    expect(chanceBelow(x)).toBeCloseTo(chance, 11)
    expect(chanceBelow(-x)).toBeCloseTo(1 - chance, 11)
  })

  test.each([
    [-5, 2.866515718791939e-7],
    [-6, 9.865876450376981e-10],
  ])('far out, at %s, it keeps its digits', (x, chance) => {
    expect(chanceBelow(x) / chance).toBeCloseTo(1, 10)
  })

  it('its two ways agree where they meet, and it never falls', () => {
    let before = 0
    for (let index = 0; index <= 800; index++) {
      const chance = chanceBelow(index / 100 - 4)
      expect(chance).toBeGreaterThan(before)
      before = chance
    }
  })

  it('68.27, 95.45 and 99.73 % lie within one, two and three standard deviations (GUM, G.1.3 and table G.1)', () => {
    const within = [1, 2, 3].map((limit) => chanceWithin(limit * 0.3, 0, 0.3))
    expect(within.map((chance) => Number((chance * 100).toFixed(2)))).toEqual([68.27, 95.45, 99.73])
  })

  it('without spread a draw is where its mean is', () => {
    expect([chanceWithin(1, 1, 0), chanceWithin(1, -1.01, 0)]).toEqual([1, 0])
  })
})

describe('the mean over a normal law', () => {
  it('has the moments of the law: mean, variance, third and fourth', () => {
    const [m, s] = [0.7, 1.3]
    expect(meanOver(m, s, (x) => x)).toBeCloseTo(m, 12)
    expect(meanOver(m, s, (x) => (x - m) ** 2)).toBeCloseTo(s ** 2, 11)
    expect(meanOver(m, s, (x) => (x - m) ** 3)).toBeCloseTo(0, 11)
    expect(meanOver(m, s, (x) => (x - m) ** 4)).toBeCloseTo(3 * s ** 4, 10)
  })

  it('of a chance is the chance of the sum of both draws', () => {
    expect(meanOver(0.2, 0.9, (off) => chanceWithin(0.5, off, 0.4))).toBeCloseTo(
      chanceWithin(0.5, 0.2, Math.hypot(0.9, 0.4)),
      10,
    )
  })
})

it('finds where a function falls to a value', () => {
  expect(fallsTo(0.25, 10, (x) => 1 / (1 + x))).toBeCloseTo(3, 12)
})
