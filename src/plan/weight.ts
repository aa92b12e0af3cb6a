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

/** Density of water, kg/m³, as the Wood Handbook takes it with specific gravities. */
const WATER = 1000

/**
 * Density in kg/m³ of wood at a moisture content in %, from its specific gravity at 12 %: Wood Handbook, chapter 4 (the
 * equation from memory). The volume is taken as that at 12 %; from 6 to 14 % the wood's movement makes 3 % of it at most.
 */
export const woodDensity = (specificGravity: number, moisture: number): number =>
  WATER * specificGravity * (1 + moisture / 100)

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
