import type { Degrees } from '../units/brand.js'
import * as maths from '../units/maths.js'
import type { ClosureLaw } from './closure-law.js'
import { chanceWithin } from './normal-law.js'

/** Arms of stars that will not close, expected over the whole batch. */
export interface WastedArms {
  /** All arms are cut, then fitted. */
  readonly cutAll: number
  /** Each star is fitted before the next is cut. */
  readonly cutOneFitOne: number
}

/**
 * The model: every star of the batch is cut once, and when it does not close within `accepted` degrees its arms are
 * wasted. *Cut all* leaves the saw as it was set. *Cut one, fit one* reads the closure of each star off its gap and
 * turns the saw by the most probable part of it that the stars share: with a saw that is set within M degrees of
 * closure and readings that scatter by s (each star's own cuts, and the rule), the estimate after j stars is M² (c1 + ... + cj) / (j M² + s²), the least
 * squares of a prior and j readings. What is left is normal, so each star's chance is exact. M is the root of the
 * mean square of what the saw is off by: what is known of it, and what is not.
 */
export const wastedArms = (
  { mean, shared, own }: ClosureLaw,
  accepted: Degrees,
  points: number,
  quantity: number,
  reading: Degrees,
): WastedArms => {
  const spoilt = (off: number, deviation: number) => 1 - chanceWithin(accepted, off, deviation)
  const prior = maths.square(mean) + maths.square(shared)
  let stars = 0
  for (let fitted = 0; fitted < quantity; fitted++) {
    const { left, noise } = correction(prior, maths.hypot(own, reading), fitted)
    stars += spoilt(mean * left, maths.hypot(maths.hypot(shared * left, noise), own))
  }
  return {
    cutAll: points * quantity * spoilt(mean, maths.hypot(shared, own)),
    cutOneFitOne: points * stars,
  }
}

/**
 * By how much the saw is turned after `fitted` stars, in degrees of closure for each degree of the sum of what they
 * would have shown on the saw as it was first set.
 */
export const turnedAfter = (prior: number, scatter: number, fitted: number): number => {
  const weight = fitted * prior + maths.square(scatter)
  return weight === 0 ? 0 : prior / weight
}

/** The share of what the saw is off by that is left then, and the scatter that the readings put in its place. */
const correction = (
  prior: number,
  scatter: number,
  fitted: number,
): { readonly left: number; readonly noise: number } => {
  const turned = turnedAfter(prior, scatter, fitted)
  return { left: 1 - fitted * turned, noise: turned * scatter * Math.sqrt(fitted) }
}
