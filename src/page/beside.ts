import type { Work } from './use-worker.js'

/** What is worked out beside the page: of the plan that is shown, or still of what the order was before. */
export type Beside = 'current' | 'working' | 'stopped' | 'refused'

/** @param shown text of the order whose plan is shown */
export const besideOf = ({ laid, stopped, refused }: Work, shown: string): Beside => {
  if (stopped) return 'stopped'
  if (refused.length > 0) return 'refused'
  return laid?.text === shown ? 'current' : 'working'
}
