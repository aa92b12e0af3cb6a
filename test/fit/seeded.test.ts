import { describe, expect, it } from 'vitest'
import { normal, seeded } from '../../src/fit/seeded.js'

const draws = (count: number, draw: () => number): number[] => Array.from({ length: count }, draw)
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length

describe('seeded random numbers', () => {
  it('are the same for the same seed, others for another', () => {
    expect(draws(9, seeded(7))).toEqual(draws(9, seeded(7)))
    expect(draws(9, seeded(7))).not.toEqual(draws(9, seeded(8)))
  })

  it('lie in [0, 1) with the moments of the uniform distribution: 1/2 and 1/12', () => {
    const found = draws(100_000, seeded(1))
    expect(found.every((value) => value >= 0 && value < 1)).toBe(true)
    expect(mean(found)).toBeCloseTo(1 / 2, 2)
    expect(mean(found.map((value) => (value - 1 / 2) ** 2))).toBeCloseTo(1 / 12, 2)
  })

  it('do not begin alike for neighbouring seeds: correlation below 4 / sqrt(count)', () => {
    const firsts = Array.from({ length: 2000 }, (_, seed) => seeded(seed)())
    const product = mean(firsts.map((value, seed) => (value - 0.5) * (seed / 2000 - 0.5)))
    expect(Math.abs(product * 12)).toBeLessThan(4 / Math.sqrt(2000))
  })
})

describe('normal', () => {
  it('has mean 0, variance 1 and 68.27, 95.45, 99.73 % within 1, 2, 3 (GUM, JCGM 100:2008, table G.1, from memory)', () => {
    const random = seeded(3)
    const found = draws(200_000, () => normal(random))
    expect(mean(found)).toBeCloseTo(0, 2)
    expect(mean(found.map((value) => value ** 2))).toBeCloseTo(1, 1)
    for (const [width, share] of [
      [1, 0.6827],
      [2, 0.9545],
      [3, 0.9973],
    ] as const) {
      expect(found.filter((value) => Math.abs(value) < width).length / found.length).toBeCloseTo(share, 2)
    }
  })
})
