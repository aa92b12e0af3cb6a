import * as maths from '../units/maths.js'
import { WRITTEN } from '../units/tolerance.js'

/** Decimals of a length in mm, so that the last one is worth {@link WRITTEN}. */
const LENGTH_DECIMALS = Math.round(-maths.log10(WRITTEN))
const PER_MM = Number(`1e${LENGTH_DECIMALS}`)

/**
 * A number as files hold it: a dot, no exponent, no `-0`, no more decimals than asked for and no trailing zeros.
 *
 * @param decimals 4 for lengths in mm; more for pure ratios, which are multiplied by lengths later
 */
export const writeNumber = (value: number, decimals: number = LENGTH_DECIMALS): string => {
  if (!(Math.abs(value) < 1e21)) throw new RangeError(`${value} cannot be written to a file`)
  const text = (decimals === LENGTH_DECIMALS ? writtenLength(value) : value).toFixed(decimals)
  let end = text.length
  if (decimals > 0) {
    while (text[end - 1] === '0') end -= 1
    if (text[end - 1] === '.') end -= 1
  }
  const short = text.slice(0, end)
  return short === '-0' ? '0' : short
}

/**
 * Of the last decimal: a length that lies halfway but for rounding noise goes up, for the noise of sines differs between
 * Node and browsers, and their files must not.
 */
const HALFWAY = 1e-6

/** The nearest length that {@link writeNumber} writes without loss. */
export const writtenLength = (length: number): number => Math.round(length * PER_MM + HALFWAY) / PER_MM
