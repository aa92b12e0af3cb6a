import { expect, it } from 'vitest'
import { randomFrom } from '../../src/nest/random.js'

const draws = (count: number, draw: () => number): number[] => Array.from({ length: count }, draw)
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length

it('the same numbers for the same seed, others for another', () => {
  expect(draws(9, randomFrom(7))).toEqual(draws(9, randomFrom(7)))
  expect(draws(9, randomFrom(7))).not.toEqual(draws(9, randomFrom(8)))
})

it('lie from 0 to below 1 with the moments of the uniform distribution, 1/2 and 1/12, evenly in a hundred bins (chi-square, 0.1 %: NIST handbook, 1.3.6.7.4)', () => {
  const found = draws(100_000, randomFrom(1))
  expect(found.every((value) => value >= 0 && value < 1)).toBe(true)
  expect(mean(found)).toBeCloseTo(1 / 2, 2)
  expect(mean(found.map((value) => (value - 1 / 2) ** 2))).toBeCloseTo(1 / 12, 2)
  const bins = new Uint32Array(100)
  for (const value of found) {
    const bin = Math.floor(value * 100)
    bins[bin] = (bins[bin] ?? 0) + 1
  }
  // 99 degrees of freedom: 148.23 is passed once in a thousand.
  expect(bins.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0)).toBeLessThan(148.23)
})

it('do not begin alike for neighbouring seeds: correlation below 4 / sqrt(count)', () => {
  const firsts = Array.from({ length: 2000 }, (_, seed) => randomFrom(seed)())
  const product = mean(firsts.map((value, seed) => (value - 0.5) * (seed / 2000 - 0.5)))
  expect(Math.abs(product * 12)).toBeLessThan(4 / Math.sqrt(2000))
})
