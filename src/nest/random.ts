/*
 * The one source of chance: mulberry32, from memory. Each draw goes one step on and scrambles where it then stands, so
 * it needs nothing but a whole number to go on from.
 */

export const STEP = 0x6d2b79f5

/** The 32 bits of a draw, as a whole number above or below zero. */
export const bitsAt = (state: number): number => {
  let mixed = Math.imul(state ^ (state >>> 15), state | 1)
  mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
  return mixed ^ (mixed >>> 14)
}

/** Numbers from 0 to below 1, the same on every machine for a seed. */
export const randomFrom = (seed: number): (() => number) => {
  let state = seed | 0
  return () => {
    state = (state + STEP) | 0
    return (bitsAt(state) >>> 0) / 2 ** 32
  }
}
