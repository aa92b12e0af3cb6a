import type { Kilograms } from '../units/brand.js'
import { kilograms, massOf } from '../units/convert.js'
import type { StarBody } from './body.js'

/** What one star weighs. */
export interface StarWeight {
  readonly arms: Kilograms
  /** Absent without a backing, or while its density or thickness is unknown. */
  readonly plate?: Kilograms
  /** The plate is weighed as cut from the heaviest of several panels that could hold it. */
  readonly ofHeaviest?: true
  /** Absent while a part of the star cannot be weighed: a hanger must not be chosen by the rest. */
  readonly whole?: { readonly mass: Kilograms; readonly hanger: Kilograms }
}

/** A hanger is rated for this many times what hangs on it: knocks and dust. Common practice, no published source. */
const HANGER_RESERVE = 4

/** @param densities in kg/m³; of all panels that the plate may be cut from, none while one is unknown */
export const weighStar = (
  { armsVolume, plateVolume, glue }: StarBody,
  densities: { readonly wood: number; readonly panels: readonly number[] },
): StarWeight => {
  const arms = massOf(armsVolume, densities.wood)
  if (glue.plateArea === 0) return { arms, whole: hung(arms) }
  if (plateVolume === undefined || densities.panels.length === 0) return { arms }
  const [least, most] = [Math.min(...densities.panels), Math.max(...densities.panels)]
  const plate = massOf(plateVolume, most)
  const whole = hung(kilograms(arms + plate))
  return { arms, plate, whole, ...(most > least ? { ofHeaviest: true } : {}) }
}

/** What hangs, and what its hanger should be rated for. */
const hung = (mass: Kilograms): NonNullable<StarWeight['whole']> => ({
  mass,
  hanger: kilograms(mass * HANGER_RESERVE),
})
