/** Random numbers that are the same in every run (mulberry32, public domain). */
export const seeded = (seed: number) => {
  let state = seed
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
  const whole = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1))
  return {
    /** A whole number from `least` to `most`. */
    whole,
    /** One of a list. */
    one: <Value>(values: readonly Value[]): Value => values[whole(0, values.length - 1)] as Value,
  }
}
