import { blankIsArm } from '../geometry/kite.js'
import type { StarPlan } from '../plan/plan.js'
import { SAME_ANGLE, SAME_POINT } from '../units/tolerance.js'

/** Blanks that serve any of several stars: equal in width and tip angle, and so in all settings, and in thickness. */
export interface BlankKind {
  /** `A`, `B` and so on, to mark them with. */
  readonly letter: string
  readonly stars: readonly StarPlan[]
  /** For all stars. */
  readonly count: number
  /** Its blank is the arm, so its strip must have exactly its width. */
  readonly exact: boolean
  /** The first of the stars, for the measures they share. */
  readonly plan: StarPlan
}

/** The blanks of all stars, widest first. */
export const blankKinds = (stars: readonly StarPlan[]): BlankKind[] => {
  const groups: StarPlan[][] = []
  for (const star of [...stars].sort((a, b) => b.star.armStrip - a.star.armStrip)) {
    const group = groups.find(([first]) => first !== undefined && interchangeable(first, star))
    if (group) group.push(star)
    else groups.push([star])
  }
  return groups.flatMap((group, index): BlankKind[] => {
    const [plan] = group
    if (!plan) return []
    return [
      {
        letter: letterOf(index),
        stars: group,
        count: group.reduce((sum, { arms }) => sum + arms, 0),
        exact: blankIsArm(plan.star),
        plan,
      },
    ]
  })
}

const interchangeable = (a: StarPlan, b: StarPlan): boolean =>
  Math.abs(a.star.armStrip - b.star.armStrip) < SAME_POINT &&
  Math.abs(a.star.tipAngle - b.star.tipAngle) < SAME_ANGLE &&
  a.thickness === b.thickness &&
  a.boards.length === b.boards.length &&
  a.boards.every((board) => b.boards.includes(board)) &&
  blankIsArm(a.star) === blankIsArm(b.star)

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'

/** A to Z, then AA, AB and so on. */
export const letterOf = (index: number): string => {
  const last = ALPHABET[index % ALPHABET.length] ?? ''
  return index < ALPHABET.length ? last : `${letterOf(Math.floor(index / ALPHABET.length) - 1)}${last}`
}
