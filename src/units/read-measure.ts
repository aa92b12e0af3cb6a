import { fahrenheit, KG_M3_PER_LB_FT3, LITRES_PER_GALLON, MM2_PER_FT2, MM2_PER_M2 } from './convert.js'
import type { Units } from './read-length.js'

/** A kind of measure: the units it is written in, each with what it makes of a number. */
export interface Measure {
  /** The unit of a bare number, in an order of either kind; without it a bare number is refused. */
  readonly bare?: Readonly<Record<Units, string>>
  /** May it lie below zero? */
  readonly signed?: boolean
  readonly units: Readonly<Record<string, (written: number) => number>>
}

export type MeasureReading = { readonly value: number } | { readonly refused: string }

const same = (value: number): number => value
const times = (factor: number) => (value: number) => value * factor

/** In %. */
export const PERCENT: Measure = { bare: { mm: '%', in: '%' }, units: { '%': same } }

/** In °C. */
export const TEMPERATURE: Measure = {
  bare: { mm: '°c', in: '°f' },
  signed: true,
  units: { '°c': same, c: same, '°f': fahrenheit, f: fahrenheit },
}

/** In hours. A bare number could be minutes or days. */
export const DURATION: Measure = {
  units: {
    min: times(1 / 60),
    minutes: times(1 / 60),
    h: same,
    hour: same,
    hours: same,
    d: times(24),
    day: times(24),
    days: times(24),
    week: times(7 * 24),
    weeks: times(7 * 24),
  },
}

const FT2_PER_GALLON = MM2_PER_FT2 / MM2_PER_M2 / LITRES_PER_GALLON

/** In m² per litre, as tins state it; American ones in square feet per gallon or quart. */
export const COVERAGE: Measure = {
  bare: { mm: 'm2/l', in: 'ft2/gal' },
  units: {
    'm2/l': same,
    'ft2/gal': times(FT2_PER_GALLON),
    'sq ft/gal': times(FT2_PER_GALLON),
    'ft2/qt': times(4 * FT2_PER_GALLON),
    'sq ft/qt': times(4 * FT2_PER_GALLON),
  },
}

/** In kg/m³. */
export const DENSITY: Measure = {
  bare: { mm: 'kg/m3', in: 'lb/ft3' },
  units: { 'kg/m3': same, 'g/cm3': times(1000), 'lb/ft3': times(KG_M3_PER_LB_FT3) },
}

/** A fraction for 1 % of moisture: `0.0025`, or in % as European tables have it, `0.25 %`. */
export const COEFFICIENT: Measure = { bare: { mm: '', in: '' }, units: { '': same, '%': times(0.01) } }

const LONGEST_TEXT = 64
const WRITTEN = /^([-+]?)(\d{1,9}(?:[.,]\d{1,9})?|[.,]\d{1,9}) ?(\D.*)?$/
/** `0,125` cannot mean thousands. */
const THOUSANDS_OR_DECIMAL = /^[1-9]\d{0,2},\d{3}(?!\d)/

/** Reads `45 %`, `68 °F`, `24 h`, `12 m²/l`, `680 kg/m³`; a comma is a decimal one where it cannot mean thousands. */
export const readMeasure = (written: string | number, measure: Measure, units: Units): MeasureReading => {
  if (typeof written === 'number') {
    return Number.isFinite(written)
      ? inUnit(written, undefined, measure, units)
      : { refused: 'it is not a finite number' }
  }
  const text = normalise(written)
  if (text.length > LONGEST_TEXT) return { refused: `it is longer than ${LONGEST_TEXT} characters` }
  const match = WRITTEN.exec(text)
  if (!match) return { refused: 'it is not a number with its unit' }
  const [, sign = '', digits = '', unit] = match
  if (THOUSANDS_OR_DECIMAL.test(digits)) {
    return { refused: 'the comma can mean thousands or decimals: leave it out, or write a point' }
  }
  return inUnit(Number(`${sign}${digits.replace(',', '.')}`), unit, measure, units)
}

const inUnit = (value: number, unit: string | undefined, measure: Measure, units: Units): MeasureReading => {
  if (value < 0 && measure.signed !== true) return { refused: 'it cannot lie below zero' }
  const name = unit ?? measure.bare?.[units]
  if (name === undefined) return { refused: 'it needs its unit' }
  const read = Object.hasOwn(measure.units, name) ? measure.units[name] : undefined
  return read ? { value: read(value) } : { refused: 'its unit is not known here' }
}

const normalise = (written: string): string =>
  written
    .slice(0, LONGEST_TEXT + 1)
    .replace(/−/g, '-')
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/[\t\u00a0\u2009\u202f ]+/g, ' ')
    .trim()
    .toLowerCase()
    .replace(/ ?\/ ?/g, '/')
