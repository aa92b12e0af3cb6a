import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'

/** The generator's first numbers still show its seed: neighbouring seeds would begin alike. */
const PASSED_OVER = 64

/** Random numbers in [0, 1), the same ones for the same whole number `seed` on every machine. */
export const seeded = (seed: number): (() => number) => {
  const generator = xoroshiro128plus(seed)
  for (let index = 0; index < PASSED_OVER; index++) generator.next()
  return () => uniformFloat64(generator)
}

/** A draw from the normal distribution of mean 0 and standard deviation 1: Box and Muller (1958). */
export const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
