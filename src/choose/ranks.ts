import type { Choice } from './choices.js'

/** What the list is ranked by, the best first. */
export type RankName = 'ease' | 'marks' | 'size' | 'wood'

export const RANKS: readonly RankName[] = ['ease', 'marks', 'size', 'wood']

/** Above zero when the first is worse. */
type Worse = (a: Choice, b: Choice) => number

/** Chances that differ by less decide nothing. */
const SAME_CHANCE = 0.005

const chance: Worse = (a, b) => Math.round(b.chance / SAME_CHANCE) - Math.round(a.chance / SAME_CHANCE)
const arms: Worse = (a, b) => a.plan.star.points - b.plan.star.points
const sensitivity: Worse = (a, b) => a.plan.gapPerTenth - b.plan.gapPerTenth
const gap: Worse = (a, b) => a.markGap - b.markGap
const large: Worse = (a, b) => b.plan.star.across - a.plan.star.across
/** Of the wood that is taken, the part that does not become star. */
const waste: Worse = (a, b) => starPart(b) - starPart(a)

/** Wood in the star over the wood of the board it takes, 0 to 1; what is ripped off the width is lost. */
export const starPart = ({ plan, wood }: Choice): number => (plan.star.points * plan.kite.area) / wood

/**
 * ease: the likeliest to close on the nearest marks, then fewer arms, then the less sensitive, of each number of points in
 * turn; marks: the smallest gap that the marks leave; size: the largest; wood: the largest part of the board that becomes
 * star.
 */
const ORDERS: Readonly<Record<RankName, readonly Worse[]>> = {
  ease: [chance, arms, sensitivity],
  marks: [gap, chance, arms],
  size: [large, chance],
  wood: [waste, chance, arms],
}

export const ranked = (choices: readonly Choice[], by: RankName): Choice[] => {
  const sorted = [...choices].sort(
    (a, b) => ORDERS[by].map((worse) => worse(a, b)).find((order) => order !== 0) ?? 0,
  )
  return by === 'ease' ? inTurns(sorted) : sorted
}

/** The best of each number of points, then the second best of each, and so on: else few-pointed stars fill the list. */
const inTurns = (sorted: readonly Choice[]): Choice[] => {
  const seen = new Map<number, number>()
  const turnOf = new Map(
    sorted.map((choice) => {
      const { points } = choice.plan.star
      const turn = seen.get(points) ?? 0
      seen.set(points, turn + 1)
      return [choice, turn]
    }),
  )
  return [...sorted].sort((a, b) => (turnOf.get(a) ?? 0) - (turnOf.get(b) ?? 0))
}
