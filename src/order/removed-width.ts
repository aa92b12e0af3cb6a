import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import type { Cutter } from './order.js'

/** Width that the cutter removes along its line; by hand the line itself is sawn to. */
export const removedWidth = ({ kind, kerf, bit }: Cutter): Mm =>
  kind === 'laser' ? kerf : kind === 'router' ? bit : mm(0)
