import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { DEFAULTS } from './defaults.js'

/** Wood screws come in steps of so many mm. */
const STEP = 0.5

/** In the edge of a panel a thicker screw splits it. Common practice, no published source. */
export const thickestScrew = (thickness: Mm): Mm => mm(thickness / 2)

/** In the edge of a thinner panel screws hold until glue is dry, no longer. Common practice, no published source. */
export const SCREWS_HOLD = mm(9)

/** The wood screw for jigs from a panel: the usual one, or the thickest that is sold and does not split its edge. */
export const usualScrew = (thickness: Mm): Mm =>
  mm(Math.min(DEFAULTS.screwHole, Math.floor(thickestScrew(thickness) / STEP) * STEP))
