import type { Kilograms } from '../units/brand.js'
import { kilograms, massOf } from '../units/convert.js'
import type { StarBody } from './body.js'

/** What one star weighs. */
export interface StarWeight {
  readonly arms: Kilograms
  /** The wood that the arms are weighed as. */
  readonly wood: Pick<ArmsWood, 'name' | 'ofHeaviest'>
  /** Absent without a backing, or while its density or thickness is unknown. */
  readonly plate?: Kilograms
  /** The plate is weighed as cut from the heaviest of several panels that could hold it. */
  readonly ofHeaviest?: true
  /** Absent while a part of the star cannot be weighed: a hanger must not be chosen by the rest. */
  readonly whole?: { readonly mass: Kilograms; readonly hanger: Kilograms }
}

/** A hanger is rated for this many times what hangs on it: knocks and dust. Common practice, no published source. */
const HANGER_RESERVE = 4

/** What the arms are weighed as: of several boards that could carry them, the one they weigh most of. */
export interface ArmsWood {
  readonly name: string
  /** In kg/m³. */
  readonly density: number
  readonly ofHeaviest?: true
}

/** @param of the arms' wood; and in kg/m³ all panels that the plate may be cut from, none while one is unknown */
export const weighStar = (
  { armsVolume, plateVolume, glue }: StarBody,
  of: { readonly arms: ArmsWood; readonly panels: readonly number[] },
): StarWeight => {
  const { density, ...wood } = of.arms
  const arms = massOf(armsVolume, density)
  if (glue.plateArea === 0) return { arms, wood, whole: hung(arms) }
  if (plateVolume === undefined || of.panels.length === 0) return { arms, wood }
  const [least, most] = [Math.min(...of.panels), Math.max(...of.panels)]
  const plate = massOf(plateVolume, most)
  const whole = hung(kilograms(arms + plate))
  return { arms, wood, plate, whole, ...(most > least ? { ofHeaviest: true } : {}) }
}

/** What hangs, and what its hanger should be rated for. */
const hung = (mass: Kilograms): NonNullable<StarWeight['whole']> => ({
  mass,
  hanger: kilograms(mass * HANGER_RESERVE),
})
