import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { SHOP } from '../units/tolerance.js'
import { DEFAULTS } from './defaults.js'

/** What a panel must leave free for the cutter. */
export interface CutRoom {
  /** Between two plates, at least. */
  readonly gap: Mm
  /** Between a plate and the panel's rim, at least. */
  readonly edge: Mm
}

/**
 * A beam or bit needs its own width. Where tabs are to hold the plates, wood must stay between the cuts of two
 * neighbours, or each cuts through the tabs of the other; it hangs together all over the panel then.
 *
 * @param removed width that the cutter removes, in mm
 */
export const cutRoom = (removed: number, hasTabs: boolean): CutRoom =>
  hasTabs
    ? { gap: mm(2 * removed + DEFAULTS.tabWeb), edge: mm(removed + DEFAULTS.tabWeb) }
    : { gap: mm(removed + SHOP), edge: mm(0) }
