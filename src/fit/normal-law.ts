import * as maths from '../units/maths.js'
import { WHOLE } from '../units/tolerance.js'

/** Below this the series of the error function is quick and exact, above it the continued fraction. */
const SERIES_TO = 2.5
/** Terms after which both stand still to the last digit. */
const TERMS = 90

/**
 * Chance that a normal draw of mean 0 and standard deviation 1 is below `x`.
 *
 * From the error function by Abramowitz and Stegun, Handbook of Mathematical Functions (1964): the series 7.1.6 near
 * zero, the continued fraction 7.1.14 beyond.
 */
export const chanceBelow = (x: number): number => {
  const size = Math.abs(x) / Math.SQRT2
  const tail = size < SERIES_TO ? 0.5 - errorSeries(size) / 2 : errorTail(size) / 2
  return x < 0 ? tail : 1 - tail
}

/** Chance that a normal draw of the given mean and standard deviation lies within `limit` of zero. */
export const chanceWithin = (limit: number, mean: number, deviation: number): number => {
  if (deviation <= 0) return Math.abs(mean) <= limit * (1 + WHOLE) ? 1 : 0
  return chanceBelow((limit - mean) / deviation) - chanceBelow((-limit - mean) / deviation)
}

const errorSeries = (x: number): number => {
  let term = x
  let sum = x
  for (let index = 1; index < TERMS; index++) {
    term *= (2 * x * x) / (2 * index + 1)
    sum += term
  }
  return (2 / Math.sqrt(Math.PI)) * maths.exp(-x * x) * sum
}

/** 1 less the error function. */
const errorTail = (x: number): number => {
  let fraction = x
  for (let index = TERMS; index > 0; index--) fraction = x + index / 2 / fraction
  return maths.exp(-x * x) / (fraction * Math.sqrt(Math.PI))
}

/** Each side of a mean over which a normal law is summed: what lies beyond is 6e-16 of the whole. */
const REACH = 8
const STEPS = 400

/** Mean of `of(x)` over normal draws x of the given mean and standard deviation: Simpson's rule. */
export const meanOver = (mean: number, deviation: number, of: (x: number) => number): number => {
  if (deviation <= 0) return of(mean)
  const step = (2 * REACH) / STEPS
  let sum = 0
  let weights = 0
  for (let index = 0; index <= STEPS; index++) {
    const z = index * step - REACH
    const weight = (index === 0 || index === STEPS ? 1 : index % 2 === 1 ? 4 : 2) * maths.exp((-z * z) / 2)
    sum += weight * of(mean + deviation * z)
    weights += weight
  }
  return sum / weights
}

/** Halvings that bring any bracket down to the last digit of its numbers. */
const HALVINGS = 60

/** Where a falling function of 0..`most` comes down to `wanted`: 0 when it never reaches it, `most` when it stays above. */
export const fallsTo = (wanted: number, most: number, falling: (x: number) => number): number => {
  let [above, below] = [0, most]
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (above + below) / 2
    if (falling(middle) >= wanted) above = middle
    else below = middle
  }
  return (above + below) / 2
}
