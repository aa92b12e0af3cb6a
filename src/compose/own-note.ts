import type { StarPlan } from '../plan/plan.js'

/** The maker's own line for a star, as it stands among other notes; none when there is none. */
export const ownNote = ({ order: { note } }: StarPlan): string[] =>
  note === undefined ? [] : [`Note: ${note}`]
