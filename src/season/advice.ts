import { DEFAULTS } from '../order/defaults.js'
import { MOISTURE_TABLE_FROM } from '../tables/moisture.js'
import { COEFFICIENTS_HOLD, SPECIES, type Species } from '../tables/species.js'
import type { Mm, Percent } from '../units/brand.js'
import { celsius, mm, percent } from '../units/convert.js'
import type { Units } from '../units/read-length.js'
import { type LengthStyle, showMovement, trimmed } from '../units/show.js'
import { showTemperature } from '../units/show-measure.js'
import { SHOP } from '../units/tolerance.js'
import { humidityFor } from './moisture.js'
import {
  acrossCoefficient,
  meanMoisture,
  movedStar,
  type StarSeason,
  worstGap,
  worstGapWith,
} from './season.js'

/** What to do about the wood's movement, with the size of its effect. The code is for programs and never changes. */
export interface Advice {
  readonly code: AdviceCode
  readonly text: string
}

export type AdviceCode =
  | 'coefficients-do-not-hold'
  | 'equation-only'
  | 'calm'
  | 'acclimatise'
  | 'glue-at-mean'
  | 'float-backing'
  | 'glue-backing'
  | 'quarter-sawn'
  | 'calmer-wood'

type Show = (length: Mm) => string

/** What stands in the way of believing the figures comes first; then what helps, the nearest at hand first. */
export const adviceFor = (season: StarSeason, lengths: LengthStyle): Advice[] => {
  const show: Show = (length) => showMovement(length, lengths)
  const calm = worstGap(season, 'edge') < DEFAULTS.acceptedGap
  return [
    ...outsideLimits(season),
    ...belowTable(season, lengths),
    ...(calm ? [calmText(season, show)] : []),
    acclimatise(season, show),
    ...glueAtMean(season, lengths, show),
    ...backing(season, show),
    ...(calm ? [] : [...quarterSawn(season, show), ...calmerWood(season, show)]),
  ]
}

const PLACES = ['workshop', 'winter', 'summer'] as const
const PLACE_NAMES = { workshop: 'in the workshop', winter: 'in winter', summer: 'in summer' } as const

const outsideLimits = (season: StarSeason): Advice[] => {
  const outside = PLACES.filter((place) => !season[place].holds)
  if (outside.length === 0) return []
  const where = outside
    .map((place) => `${PLACE_NAMES[place]} (${trimmed(season[place].moisture, 1)} %)`)
    .join(' and ')
  return [
    {
      code: 'coefficients-do-not-hold',
      text: `The coefficients hold from ${COEFFICIENTS_HOLD.from} to ${COEFFICIENTS_HOLD.to} % of moisture only. They do not hold ${where}: take those figures for a hint, not for a measure.`,
    },
  ]
}

const belowTable = (season: StarSeason, { units }: LengthStyle): Advice[] => {
  const cold = PLACES.filter((place) => {
    const { air } = season[place]
    return 'temperature' in air && air.temperature < MOISTURE_TABLE_FROM
  })
  return cold.length === 0
    ? []
    : [
        {
          code: 'equation-only',
          text: `Below ${showTemperature(celsius(Math.round(MOISTURE_TABLE_FROM)), units)} the handbook prints no table: the moisture ${cold.map((place) => PLACE_NAMES[place]).join(' and ')} is its equation's alone.`,
        },
      ]
}

const calmText = (season: StarSeason, show: Show): Advice => ({
  code: 'calm',
  text: `The year moves the last joint by ${show(worstGap(season, 'edge'))} at most, less than shows: build it as planned.`,
})

/** Boards have the moisture of the yard until they have lain. Weighing: common practice, no published source. */
const acclimatise = (season: StarSeason, show: Show): Advice => {
  const perPercent = movedStar(season.plan.star, 'edge', -season.coefficient).gap
  return {
    code: 'acclimatise',
    text: `Let the boards lie in the workshop, on sticks, until two weighings a week apart agree: every 1 % of moisture they have too much opens the last joint by ${show(perPercent)} later.`,
  }
}

/** Glue on wood damper than this is slow to take and weak. Common practice, no published source; the label decides. */
const DAMPEST_TO_GLUE = percent(12)

const glueAtMean = (season: StarSeason, { units }: LengthStyle, show: Show): Advice[] => {
  const mean = meanMoisture(season)
  const best = percent(Math.min(mean, DAMPEST_TO_GLUE))
  const [now, then] = [worstGap(season, 'edge'), worstGapWith(season, 'edge', { gluedAt: best })]
  const meanText = `the mean of the year on the wall, ${trimmed(mean, 1)} % of moisture`
  const own = trimmed(season.workshop.moisture, 1)
  if (now - then < SHOP) {
    const text =
      mean > DAMPEST_TO_GLUE
        ? `Cut and glue at the workshop's ${own} %: ${meanText}, is too damp for glue.`
        : `The workshop's wood, at ${own} %, is as good as ${meanText}: cut and glue as it is.`
    return [{ code: 'glue-at-mean', text }]
  }
  const at =
    mean > DAMPEST_TO_GLUE
      ? `at ${trimmed(best, 1)} % of moisture, as damp as glue takes (see its label) and nearest to ${meanText}`
      : `at ${meanText}`
  return [
    {
      code: 'glue-at-mean',
      text: `Cut and glue ${at}: ${show(then)} at worst instead of ${show(now)}.${airFor(best, season, units)}`,
    },
  ]
}

/** The humidity at which the workshop's wood comes to a moisture. */
const airFor = (moisture: Percent, { workshop: { air } }: StarSeason, units: Units): string => {
  const temperature = 'temperature' in air ? air.temperature : celsius(DEFAULTS.air.workshop.temperature)
  const humidity = humidityFor(moisture, temperature)
  return humidity === undefined
    ? ''
    : ` In a workshop at ${showTemperature(temperature, units)} that is ${trimmed(humidity, 0)} % humidity.`
}

/** What an arm moves across against a plate that hardly moves in its plane, in the worse season. */
const againstPlate = ({ plan, winter, summer }: StarSeason): Mm =>
  mm(plan.kite.width * Math.max(Math.abs(winter.change), Math.abs(summer.change)))

/** Does a backing that is glued all over hold back more movement than shows? */
export const backingFloats = (season: StarSeason): boolean => againstPlate(season) >= DEFAULTS.acceptedGap

/** Fixing a plate in its middle: common practice, no published source. */
const backing = (season: StarSeason, show: Show): Advice[] => {
  if (!season.plan.backing) return []
  const across = show(againstPlate(season))
  return backingFloats(season)
    ? [
        {
          code: 'float-backing',
          text: `Leave the backing floating: glue it in the middle only, a hand wide, and hold its rim by screws in slots. An arm moves ${across} across, the plate hardly at all.`,
        },
      ]
    : [
        {
          code: 'glue-backing',
          text: `The backing may be glued all over: an arm moves ${across} across against it.`,
        },
      ]
}

const quarterSawn = (season: StarSeason, show: Show): Advice[] => {
  const { wood } = season
  if (wood.rings === 'quarter') return []
  const now = worstGap(season, 'edge')
  const then = worstGapWith(season, 'edge', { coefficient: wood.radial })
  return now - then < SHOP
    ? []
    : [
        {
          code: 'quarter-sawn',
          text: `Quarter-sawn boards of this wood: ${show(then)} at worst instead of ${show(now)}.`,
        },
      ]
}

/** The calmest softwood and the calmest hardwood of the table, sawn the same way. */
const calmerWood = (season: StarSeason, show: Show): Advice[] => {
  const { wood } = season
  const now = worstGap(season, 'edge')
  const across = (species: Species) => acrossCoefficient({ ...wood, ...species })
  const calmer = [true, false].flatMap((softwood) => {
    const kin = SPECIES.filter((species) => species.softwood === softwood)
    const [calmest] = [...kin].sort((a, b) => across(a) - across(b))
    if (!calmest) return []
    const then = worstGapWith(season, 'edge', { coefficient: across(calmest) })
    return now - then < SHOP ? [] : [`${calmest.name} ${show(then)}`]
  })
  return calmer.length === 0
    ? []
    : [{ code: 'calmer-wood', text: `A calmer wood: ${calmer.join(', ')} at worst instead of ${show(now)}.` }]
}
