import type { Work } from './use-worker.js'

/**
 * What is worked out beside the page: of the plan that is shown, or still of what the order was before. `halted`: of the
 * plan that is shown, but stopped while files were written.
 */
export type Beside = 'current' | 'halted' | 'working' | 'stopped' | 'refused'

/** @param shown text of the order whose plan is shown */
export const besideOf = ({ laid, stopped, refused }: Work, shown: string): Beside => {
  if (stopped) return laid?.text === shown ? 'halted' : 'stopped'
  if (refused.length > 0) return 'refused'
  return laid?.text === shown ? 'current' : 'working'
}
