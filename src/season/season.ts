import { type GrainAlong, type MovedArm, movedArm } from '../geometry/moved-arm.js'
import type { Star } from '../geometry/star.js'
import type { Air, Climate, Wood } from '../order/season-order.js'
import { closureGap } from '../plan/closure.js'
import type { StarPlan } from '../plan/plan.js'
import { COEFFICIENTS_HOLD } from '../tables/species.js'
import type { Degrees, Mm, Percent } from '../units/brand.js'
import { degrees, mm, percent } from '../units/convert.js'
import { SAME_ANGLE } from '../units/tolerance.js'
import { moistureOf } from './moisture.js'

/** What becomes of a star's arms between workshop, winter and summer. */
export interface StarSeason {
  readonly plan: StarPlan
  readonly wood: Wood
  /** Share by which the wood changes across the arm for 1 % of moisture. */
  readonly coefficient: number
  /** Where it is cut and glued: the state that fits. */
  readonly workshop: WoodState
  readonly winter: SeasonState
  readonly summer: SeasonState
}

/** Wood that has come to rest in some air. */
export interface WoodState {
  readonly air: Air
  readonly moisture: Percent
  /** Is the moisture one for which the coefficients hold? */
  readonly holds: boolean
}

export interface SeasonState extends WoodState {
  /** Share by which the wood has changed across the grain since the workshop; negative when it has shrunk. */
  readonly change: number
  /** The star with the grain along one tip edge of each arm, and with it along each arm's axis. */
  readonly byGrain: Readonly<Record<GrainAlong, MovedStar>>
}

/** A star of arms that have all changed alike, free joints left to the last one. */
export interface MovedStar {
  readonly arm: MovedArm
  /** Above zero the last joint gapes at the valley, below zero at the centre. */
  readonly closure: Degrees
  /** At the open end of the last joint. */
  readonly gap: Mm
  /** By how much the two edges of every joint differ: a step at each valley. */
  readonly step: Mm
}

export const starSeason = (plan: StarPlan, climate: Climate): StarSeason => {
  const { wood, star, order } = plan
  const workshop = woodState(climate.workshop)
  const coefficient = acrossCoefficient(wood)
  const state = (air: Air): SeasonState => seasonState(star, coefficient, workshop.moisture, air)
  return {
    plan,
    wood,
    coefficient,
    workshop,
    winter: state(order.wall.winter),
    summer: state(order.wall.summer),
  }
}

/** Across the arm lies the rings' own direction in a flat-sawn board, and the other in a quarter-sawn one. */
export const acrossCoefficient = ({ rings, tangential, radial }: Wood): number =>
  rings === 'flat' ? tangential : radial

const woodState = (air: Air): WoodState => {
  const moisture = moistureOf(air)
  const holds = moisture >= COEFFICIENTS_HOLD.from && moisture <= COEFFICIENTS_HOLD.to
  return { air, moisture, holds }
}

const seasonState = (star: Star, coefficient: number, from: Percent, air: Air): SeasonState => {
  const state = woodState(air)
  const change = sizeChange(coefficient, from, state.moisture)
  return {
    ...state,
    change,
    byGrain: { edge: movedStar(star, 'edge', change), axis: movedStar(star, 'axis', change) },
  }
}

/** Share of its size by which wood changes from one moisture to another: Wood Handbook, eq. (13-2). */
export const sizeChange = (coefficient: number, from: Percent, to: Percent): number =>
  coefficient * (to - from)

/** @param change of every distance across the grain, as a share of it; more than -1 */
export const movedStar = (star: Star, grain: GrainAlong, change: number): MovedStar => {
  const arm = movedArm(star, grain, 1 + change)
  const [near, far] = arm.jointEdges
  const left = 360 - star.points * arm.centreAngle
  const closure = degrees(Math.abs(left) < star.points * SAME_ANGLE ? 0 : left)
  return {
    arm,
    closure,
    gap: closureGap(mm((near + far) / 2), closure),
    step: mm(Math.abs(near - far)),
  }
}

/** The larger gap of the two seasons. */
export const worstGap = ({ winter, summer }: StarSeason, grain: GrainAlong): Mm =>
  mm(Math.max(winter.byGrain[grain].gap, summer.byGrain[grain].gap))

/** The same if the arms moved by `coefficient`, or were glued at another moisture. */
export const worstGapWith = (
  season: StarSeason,
  grain: GrainAlong,
  { coefficient = season.coefficient, gluedAt = season.workshop.moisture },
): Mm =>
  mm(
    Math.max(
      ...[season.winter, season.summer].map(
        ({ moisture }) => movedStar(season.plan.star, grain, sizeChange(coefficient, gluedAt, moisture)).gap,
      ),
    ),
  )

/** Half-way between winter and summer. */
export const meanMoisture = ({ winter, summer }: StarSeason): Percent =>
  percent((winter.moisture + summer.moisture) / 2)
