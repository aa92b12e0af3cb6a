import type { Degrees } from '../units/brand.js'
import { degrees } from '../units/convert.js'
import * as maths from '../units/maths.js'
import type { ClosureLaw } from './closure-law.js'
import { chanceWithin, fallsTo, meanOver } from './normal-law.js'

/** Chance that one star closes within `accepted` degrees, either way. */
export const chanceOfStar = ({ mean, shared, own }: ClosureLaw, accepted: Degrees): number =>
  chanceWithin(accepted, mean, maths.hypot(shared, own))

/** Chance that all stars of a batch do: they share what the saw is off by, and differ in their own cuts. */
export const chanceOfBatch = (
  { mean, shared, own }: ClosureLaw,
  accepted: Degrees,
  quantity: number,
): number =>
  own === 0
    ? chanceWithin(accepted, mean, shared)
    : meanOver(mean, shared, (off) => maths.pow(chanceWithin(accepted, off, own), quantity))

/** A saw that scatters more than this is not asked about. */
const WIDEST = 10

/**
 * How well each cut must repeat (one standard deviation) for the batch to close with the wanted chance; undefined
 * when what all stars share spoils it, however well the cuts repeat.
 *
 * @param cuts whose errors add up to the closure of one star
 */
export const repeatabilityFor = (
  wanted: number,
  {
    law,
    accepted,
    quantity,
    cuts,
  }: {
    readonly law: ClosureLaw
    readonly accepted: Degrees
    readonly quantity: number
    readonly cuts: number
  },
): Degrees | undefined => {
  const chance = (repeatsTo: number) =>
    chanceOfBatch({ ...law, own: degrees(repeatsTo * Math.sqrt(cuts)) }, accepted, quantity)
  return chance(0) < wanted ? undefined : degrees(fallsTo(wanted, WIDEST, chance))
}
