import type { Work } from './use-worker.js'
import { type Given, isSameGiven } from './work.js'

/**
 * What is worked out beside the page: of the plan that is shown, or still of what the order was before. `halted`: of the
 * plan that is shown, but stopped while files were written. `waiting`: until the order's mistakes are mended.
 */
export type Beside = 'current' | 'halted' | 'working' | 'waiting' | 'stopped' | 'refused'

/**
 * @param shown the order whose plan is shown
 * @param sound has the written order no mistake?
 */
export const besideOf = ({ laid, stopped, refused }: Work, shown: Given, sound: boolean): Beside => {
  const isShown = laid !== undefined && isSameGiven(laid.given, shown)
  if (stopped) return isShown ? 'halted' : 'stopped'
  if (refused.length > 0) return 'refused'
  if (isShown) return 'current'
  return sound ? 'working' : 'waiting'
}
