import type { Kilograms } from '../units/brand.js'
import { kilograms, massOf } from '../units/convert.js'
import type { StarBody } from './body.js'

/** What one star weighs. */
export interface StarWeight {
  readonly arms: Kilograms
  /** Absent without a backing, or while its density or thickness is unknown. */
  readonly plate?: Kilograms
  readonly all: Kilograms
  /** What the hanger should be rated for. */
  readonly hanger: Kilograms
}

/** A hanger is rated for this many times what hangs on it: knocks and dust. Common practice, no published source. */
const HANGER_RESERVE = 4

/** @param densities in kg/m³ */
export const weighStar = (
  { armsVolume, plateVolume }: StarBody,
  densities: { readonly wood: number; readonly panel?: number },
): StarWeight => {
  const arms = massOf(armsVolume, densities.wood)
  const plate =
    plateVolume === undefined || densities.panel === undefined
      ? undefined
      : massOf(plateVolume, densities.panel)
  const all = kilograms(arms + (plate ?? 0))
  return {
    arms,
    ...(plate === undefined ? {} : { plate }),
    all,
    hanger: kilograms(all * HANGER_RESERVE),
  }
}
