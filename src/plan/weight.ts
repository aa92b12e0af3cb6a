import type { Kilograms } from '../units/brand.js'
import { kilograms, massOf } from '../units/convert.js'
import type { StarBody } from './body.js'

/** What one star weighs. */
export interface StarWeight {
  readonly arms: Kilograms
  /** Absent without a backing, or while its density or thickness is unknown. */
  readonly plate?: Kilograms
  /** Absent while a part of the star cannot be weighed: a hanger must not be chosen by the rest. */
  readonly whole?: { readonly mass: Kilograms; readonly hanger: Kilograms }
}

/** A hanger is rated for this many times what hangs on it: knocks and dust. Common practice, no published source. */
const HANGER_RESERVE = 4

/** @param densities in kg/m³ */
export const weighStar = (
  { armsVolume, plateVolume, glue }: StarBody,
  densities: { readonly wood: number; readonly panel?: number },
): StarWeight => {
  const arms = massOf(armsVolume, densities.wood)
  if (glue.plateArea === 0) return { arms, whole: hung(arms) }
  if (plateVolume === undefined || densities.panel === undefined) return { arms }
  const plate = massOf(plateVolume, densities.panel)
  return { arms, plate, whole: hung(kilograms(arms + plate)) }
}

/** What hangs, and what its hanger should be rated for. */
const hung = (mass: Kilograms): NonNullable<StarWeight['whole']> => ({
  mass,
  hanger: kilograms(mass * HANGER_RESERVE),
})
