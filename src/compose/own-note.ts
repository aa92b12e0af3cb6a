import type { StarPlan } from '../plan/plan.js'

/**
 * The maker's own line for a star, as it stands among other notes; none when there is none.
 *
 * @param told `elsewhere`: there is no room for it
 */
export const ownNote = ({ order: { note } }: StarPlan, told: 'whole' | 'elsewhere' = 'whole'): string[] => {
  if (note === undefined) return []
  return [told === 'whole' ? `Note: ${note}` : 'Your note is on the arm pattern']
}
