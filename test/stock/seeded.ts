import { randomFrom } from '../../src/nest/random.js'

/** Choices that are the same in every run. */
export const seeded = (seed: number) => {
  const next = randomFrom(seed)
  const whole = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1))
  return {
    /** A whole number from `least` to `most`. */
    whole,
    /** One of a list. */
    one: <Value>(values: readonly Value[]): Value => values[whole(0, values.length - 1)] as Value,
  }
}
