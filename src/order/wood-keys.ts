import * as v from 'valibot'
import { SPECIES } from '../tables/species.js'
import type { Units } from '../units/read-length.js'
import { COEFFICIENT, COVERAGE, DENSITY, DURATION, PERCENT, TEMPERATURE } from '../units/read-measure.js'
import { choiceField, wholeField } from './fields.js'
import { measureField } from './measure-field.js'
import { group } from './schema-group.js'

/**
 * The keys of wood, air and products. What stands in several places of an order is made once, for the schema is made
 * anew for every order that is read.
 */
export const seasonKeys = (units: Units) => {
  const air = v.optional(airKeys(units))
  /** The air on the wall, `climate: wall` or a star's own `wall`. */
  const wall = v.optional(group({ winter: air, summer: air }))
  return {
    /** `shop: wood`, or a board's own. */
    wood: v.optional(woodKeys(units)),
    wall,
    climate: v.optional(group({ workshop: air, wall })),
    panelDensity: densityField(units, 'Density of the panel, for the weight'),
    products: {
      glue: v.optional(glueKeys(units)),
      stain: v.optional(stainKeys(units)),
      finish: v.optional(finishKeys(units)),
    },
  }
}

/** What wood the arms are. */
const woodKeys = (units: Units) =>
  group({
    species: v.optional(
      choiceField(
        SPECIES_WORDS,
        {
          says: 'Species of the boards, for movement and weight',
          wayOut:
            'For another wood give tangential and radial, its movement across the grain, from its table.',
        },
        SPECIES_NAMES,
      ),
    ),
    rings: v.optional(
      choiceField(['flat', 'quarter'], {
        says: "How the rings lie in the board's end: flat (along its width) or quarter (upright)",
      }),
    ),
    tangential: coefficient(units, 'Movement along the rings for 1 % of moisture, instead of species'),
    radial: coefficient(units, 'Movement across the rings for 1 % of moisture, instead of species'),
    density: densityField(units, 'Density of the wood as weighed, in place of the table of species'),
  })

const coefficient = (units: Units, says: string) => {
  const allowed = 'a share from 0.0003 to 0.008, or written in %, from 0.03 % to 0.8 %'
  return v.optional(
    measureField(units, {
      measure: COEFFICIENT,
      least: 0.0003,
      most: 0.008,
      allowed: { mm: allowed, in: allowed },
      says,
      wayOut: 'In % put the sign behind it.',
    }),
  )
}

const densityField = (units: Units, says: string) =>
  v.optional(
    measureField(units, {
      measure: DENSITY,
      least: 100,
      most: 1400,
      allowed: {
        mm: 'a density from 100 to 1400 kg/m³, written like 680 kg/m³ or 42 lb/ft³',
        in: 'a density from 6.3 to 87 lb/ft³, written like 42 lb/ft³ or 680 kg/m³',
      },
      says,
    }),
  )

/** The air where boards or stars are, or the moisture a meter shows in the wood there. */
const airKeys = (units: Units) =>
  group({
    humidity: v.optional(
      measureField(units, {
        measure: PERCENT,
        least: 5,
        most: 95,
        allowed: { mm: 'a humidity from 5 to 95 %', in: 'a humidity from 5 to 95 %' },
        says: "The air's humidity there, in %",
        wayOut: 'Hang up a hygrometer for a week.',
      }),
    ),
    temperature: v.optional(
      measureField(units, {
        measure: TEMPERATURE,
        least: -30,
        most: 50,
        allowed: {
          mm: 'a temperature from -30 to 50 °C, written like 20, 20 °C or 68 °F',
          in: 'a temperature from -22 to 122 °F, written like 68, 68 °F or 20 °C',
        },
        says: 'The temperature there',
      }),
    ),
    moisture: v.optional(
      measureField(units, {
        measure: PERCENT,
        least: 2,
        most: 25,
        allowed: { mm: 'a moisture from 2 to 25 %', in: 'a moisture from 2 to 25 %' },
        says: 'Moisture of the wood there, in %, as a meter shows it; instead of humidity and temperature',
      }),
    ),
  })

const duration = (units: Units, says: string) => {
  const allowed = 'a time from 1 min to 60 days, written like 30 min, 24 h or 3 days'
  return v.optional(
    measureField(units, {
      measure: DURATION,
      least: 1 / 60,
      most: 60 * 24,
      allowed: { mm: allowed, in: allowed },
      says,
      wayOut: "Take it from the product's label.",
    }),
  )
}

const coverageField = (units: Units) =>
  v.optional(
    measureField(units, {
      measure: COVERAGE,
      least: 1,
      most: 50,
      allowed: {
        mm: 'a coverage of one coat from 1 to 50 m² per litre, written like 12 or 400 ft²/gal',
        in: 'a coverage of one coat from 41 to 2030 ft² per gallon, written like 400, 100 ft²/qt or 12 m²/l',
      },
      says: 'Area that one litre covers once, in m² per litre, or ft² per gallon in an order in inches',
      wayOut: 'The tin states it.',
    }),
  )

const glueKeys = (units: Units) =>
  group({
    clamp: duration(units, 'How long the glue stays clamped'),
    cures: duration(units, 'When the glue may be worked on'),
  })

const stainKeys = (units: Units) =>
  group({ coverage: coverageField(units), dries: duration(units, 'When the stain may be coated') })

const finishKeys = (units: Units) =>
  group({
    coverage: coverageField(units),
    coats: v.optional(wholeField({ least: 1, most: 20, says: 'Number of coats of finish' })),
    dries: duration(units, 'From one coat of finish to the next'),
    cures: duration(units, 'When the finished star may be hung'),
  })

const SPECIES_NAMES = SPECIES.map(({ name }) => name)
const [FIRST = '', ...OTHERS] = [...new Set(SPECIES_NAMES.flatMap((name) => [name, name.toLowerCase()]))]
const SPECIES_WORDS: readonly [string, ...string[]] = [FIRST, ...OTHERS]
