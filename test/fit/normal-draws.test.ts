import { expect, it } from 'vitest'
import { normalDraws } from '../../src/fit/normal-draws.js'
import { chanceBelow } from '../../src/fit/normal-law.js'

const COUNT = 2_000_000
const draws = (seed: number, count: number): Float64Array => {
  const drawn = new Float64Array(count)
  normalDraws(seed)(drawn)
  return drawn
}
const DRAWN = draws(7, COUNT)

it('gives the same draws for the same seed, others for another', () => {
  expect(draws(7, 1000)).toEqual(DRAWN.subarray(0, 1000))
  expect(draws(8, 1)[0]).not.toBe(DRAWN[0])
})

it('gives the same draws one by one and many at once', () => {
  const fill = normalDraws(7)
  const [one, five] = [new Float64Array(1), new Float64Array(5)]
  const drawn = Array.from({ length: 100 }, () => {
    fill(one)
    fill(five)
    return [...one, ...five]
  }).flat()
  expect(drawn).toEqual([...DRAWN.subarray(0, 600)])
})

it('falls into 80 bins and both tails as the normal law says (chi-square, 0.1 %: NIST handbook, 1.3.6.7.4)', () => {
  const bins = new Uint32Array(82)
  for (const x of DRAWN) {
    const bin = Math.min(81, Math.max(0, Math.floor(x * 10) + 41))
    bins[bin] = (bins[bin] ?? 0) + 1
  }
  const chiSquare = bins.reduce((sum, count, bin) => {
    const from = bin === 0 ? 0 : chanceBelow((bin - 41) / 10)
    const to = bin === 81 ? 1 : chanceBelow((bin - 40) / 10)
    const expected = COUNT * (to - from)
    return sum + (count - expected) ** 2 / expected
  }, 0)
  // 81 degrees of freedom: 126.08 is passed once in a thousand.
  expect(chiSquare).toBeLessThan(126.08)
})

it('shows no memory from one draw to the next (six standard errors)', () => {
  let [sum, products] = [0, 0]
  DRAWN.forEach((x, index) => {
    sum += x
    products += x * (DRAWN[index + 1] ?? 0)
  })
  expect(Math.abs(sum / COUNT)).toBeLessThan(6 / Math.sqrt(COUNT))
  expect(Math.abs(products / COUNT)).toBeLessThan(6 / Math.sqrt(COUNT))
})

it('reaches beyond its widest layer, as often as the law says', () => {
  const beyond = DRAWN.filter((x) => Math.abs(x) > 3.442619855899).length
  const expected = COUNT * 2 * chanceBelow(-3.442619855899)
  expect(Math.abs(beyond - expected)).toBeLessThan(4 * Math.sqrt(expected))
})
