import type { Mm } from './brand.js'
import { inches, mm } from './convert.js'

/** How bare numbers are read and how lengths are shown. */
export type Units = 'mm' | 'in'

/** A length that was read and the units it was written in, or in words why it could not be read. */
export type LengthReading = { readonly length: Mm; readonly units: Units } | { readonly refused: string }

const LONGEST_TEXT = 64

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

const METRIC: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000 }

const DECIMAL = String.raw`\d+(?:[.,]\d+)?|[.,]\d+`
const INCH_COUNT = String.raw`\d+(?: ?- ?| )\d+/\d+|\d+/\d+|${DECIMAL}`
const FEET_MARK = `(?:'|feet|foot|ft)`
const INCH_MARK = `(?:"|''|inches|inch|in)`

const METRIC_LENGTH = new RegExp(`^(${DECIMAL}) ?(mm|cm|m)$`)
const INCH_LENGTH = new RegExp(`^(${INCH_COUNT}) ?${INCH_MARK}$`)
const FEET_LENGTH = new RegExp(`^(${DECIMAL}) ?${FEET_MARK}(?: ?-? ?(${INCH_COUNT}) ?${INCH_MARK}?)?$`)
const BARE_DECIMAL = new RegExp(`^(?:${DECIMAL})$`)
const BARE_FRACTION = new RegExp(`^(?:${INCH_COUNT})$`)
/** `1x4`, `5/4 × 6`. */
const SOLD_AS = /^\d+(?:\/\d+)? ?[x×] ?\d+$/
/** `0,125` cannot mean thousands. */
const THOUSANDS_OR_DECIMAL = /[1-9]\d{0,2},\d{3}(?!\d)/

/**
 * Reads a length as people write it: `70`, `70 mm`, `70,5 mm`, `3 1/2 in`, `3-1/2"`, `1' 2 3/8"`, `½ in`.
 *
 * A bare number takes the order's units. A minus sign, an exponent, a comma that may mean thousands, a bare
 * fraction in a millimetre order and anything left over are refused, because each of them can be meant in two ways.
 */
export const readLength = (written: string | number, units: Units): LengthReading => {
  if (String(written).length > LONGEST_TEXT)
    return { refused: `it is longer than ${LONGEST_TEXT} characters` }
  const text = normalise(String(written))
  if (text === '') return { refused: 'it is empty' }
  if (/^[-+]/.test(text)) return { refused: 'a length has no sign' }
  if (typeof written === 'number') {
    return Number.isFinite(written) ? bare(written, units) : { refused: 'it is not a finite number' }
  }
  if (THOUSANDS_OR_DECIMAL.test(text)) {
    return { refused: 'the comma can mean thousands or decimals: leave it out, or write a point' }
  }

  const metric = METRIC_LENGTH.exec(text)
  if (metric) return finite(mm(decimal(metric[1]) * (METRIC[metric[2] ?? ''] ?? Number.NaN)), 'mm')

  const inch = INCH_LENGTH.exec(text)
  if (inch) return inchReading(0, inch[1])

  const feet = FEET_LENGTH.exec(text)
  if (feet) return inchReading(decimal(feet[1]), feet[2])

  if (BARE_DECIMAL.test(text)) return bare(decimal(text), units)
  if (BARE_FRACTION.test(text)) {
    if (units === 'in') return inchReading(0, text)
    return { refused: `a fraction needs its unit here: write ${text} in` }
  }
  return {
    refused: SOLD_AS.test(text)
      ? 'it is what a board is sold as, not what it measures: lay a tape across yours'
      : 'it is not a length',
  }
}

const normalise = (text: string): string =>
  text
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]} `)
    .replace(/[⁄∕]/g, '/')
    .replace(/[′’]/g, "'")
    .replace(/[″”“]/g, '"')
    .replace(/[\t\u00a0\u2009\u202f ]+/g, ' ')
    .trim()
    .toLowerCase()

const decimal = (text: string | undefined): number => Number((text ?? '').replace(',', '.'))

const bare = (value: number, units: Units): LengthReading =>
  value < 0 ? { refused: 'a length has no sign' } : finite(units === 'in' ? inches(value) : mm(value), units)

const inchReading = (feet: number, count: string | undefined): LengthReading => {
  const value = count === undefined ? 0 : inchCount(count)
  if (value === undefined) return { refused: 'the fraction divides by zero' }
  return finite(inches(feet * 12 + value), 'in')
}

/** `3`, `3.5`, `7/8`, `3 7/8` or `3-7/8`; undefined when the denominator is zero. */
const inchCount = (text: string): number | undefined => {
  const fraction = /^(?:(\d+)[ -]+)?(\d+)\/(\d+)$/.exec(text)
  if (!fraction) return decimal(text)
  const [, whole = '0', numerator, denominator] = fraction
  if (Number(denominator) === 0) return undefined
  return Number(whole) + Number(numerator) / Number(denominator)
}

const finite = (length: Mm, units: Units): LengthReading =>
  Number.isFinite(length) ? { length, units } : { refused: 'it is not a finite number' }
