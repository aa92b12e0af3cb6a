import type { Work } from './use-worker.js'
import { type Given, isSameGiven } from './work.js'

/**
 * What is worked out beside the page: of the plan that is shown, or still of what the order was before. `halted`: of the
 * plan that is shown, but stopped while files were written.
 */
export type Beside = 'current' | 'halted' | 'working' | 'stopped' | 'refused'

/** @param shown the order whose plan is shown */
export const besideOf = ({ laid, stopped, refused }: Work, shown: Given): Beside => {
  const isShown = laid !== undefined && isSameGiven(laid.given, shown)
  if (stopped) return isShown ? 'halted' : 'stopped'
  if (refused.length > 0) return 'refused'
  return isShown ? 'current' : 'working'
}
