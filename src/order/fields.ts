import * as v from 'valibot'
import type { Degrees, Mm } from '../units/brand.js'
import { degrees, inches, mm, toInches } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { readAngle } from '../units/read-angle.js'
import { readLength, type Units } from '../units/read-length.js'
import { trimmed } from '../units/show.js'
import { toStep } from '../units/step.js'
import { WHOLE } from '../units/tolerance.js'
import { didYouMean } from './did-you-mean.js'
import { plainText, refusalOf, SIGNS_TOLD, strangeSign, type TextUse } from './lettered-text.js'
import type { PrintedLength } from './order.js'
import { sentence, sentences } from './problem.js'

/*
 * The kinds of value an order's keys can have. Each takes `says`, what the key means (it becomes the schema's
 * description and the flag's help), and where it helps `wayOut`, the advice that closes a refusal.
 */

export interface Meaning {
  readonly says: string
  readonly wayOut?: string
}

export interface LengthRange extends Meaning {
  readonly least: number
  readonly most: number
}

/** A length in mm within `least`..`most` (mm), read in the order's units. */
export const lengthField = (units: Units, { says, wayOut, least, most }: LengthRange) => {
  const bounds = `from ${showBound(least, units, Math.ceil)} to ${showBound(most, units, Math.floor)}`
  const allowed = `Allowed: a length ${bounds}, written like ${exampleWithin(least, most, units)}.`
  return v.pipe(
    v.union([v.string(), v.number()], sentences(allowed, wayOut)),
    v.description(says),
    v.metadata({ length: true }),
    v.rawTransform<string | number, Mm>(({ dataset, addIssue, NEVER }) => {
      const reading = readLength(dataset.value, units)
      if ('refused' in reading) {
        addIssue({ message: sentences(sentence(reading.refused), allowed, wayOut) })
        return NEVER
      }
      if (reading.length < least || reading.length > most) {
        addIssue({ message: sentences(otherUnit(dataset.value, units, least, most), allowed, wayOut) })
        return NEVER
      }
      return reading.length
    }),
  )
}

const UNIT_NAMES = { mm: 'millimetres', in: 'inches' } as const

/** Was a bare number meant in the other unit? Then it would have been allowed. */
const otherUnit = (
  written: string | number,
  units: Units,
  least: number,
  most: number,
): string | undefined => {
  const other = units === 'mm' ? 'in' : 'mm'
  const reading = readLength(written, other)
  const bare = typeof written === 'number' || /^[\d.,/ -]+$/.test(written)
  return bare && 'length' in reading && reading.length >= least && reading.length <= most
    ? `Read as ${UNIT_NAMES[units]}. If ${UNIT_NAMES[other]} were meant, write ${written} ${other}, or units: ${other} for the whole order.`
    : undefined
}

/** A bound in the order's units, in three digits or so, rounded to the side where it is still allowed. */
const showBound = (bound: number, units: Units, inward: (value: number) => number): string => {
  const value = units === 'mm' ? bound : toInches(mm(bound))
  const digits = value < 1 ? 3 : value < 10 ? 2 : value < 100 ? 1 : 0
  return `${trimmed(toStep(value, maths.pow(10, -digits), inward), digits)} ${units}`
}

const EXAMPLES = [
  { length: 70, mm: '70, 70.5 mm or 2 3/4 in', in: '2 3/4, 2 3/4 in or 70 mm' },
  { length: 12, mm: '12, 12.5 mm or 1/2 in', in: '1/2, 1/2 in or 12 mm' },
  { length: 2.4, mm: '2.4, 2.4 mm or 3/32 in', in: '3/32, 3/32 in or 2.4 mm' },
  { length: 610, mm: '610, 61 cm or 24 in', in: '24, 2 ft or 610 mm' },
  { length: 150, mm: '150, 15 cm or 6 in', in: '6, 6 in or 150 mm' },
] as const

const exampleWithin = (least: number, most: number, units: Units): string =>
  (EXAMPLES.find(({ length }) => length >= least && length <= most) ?? EXAMPLES[0])[units]

export interface AngleRange extends Meaning {
  readonly above: number
  readonly most: number
  readonly inclusive?: boolean
}

/** An angle in degrees, more than `above` (or as much, when `inclusive`) and at most `most`. */
export const angleField = ({ says, wayOut, above, most, inclusive = false }: AngleRange) => {
  const range = inclusive ? `from ${above} to ${most}` : `of more than ${above} and up to ${most}`
  const allowed = `Allowed: an angle ${range} degrees, written like 45, 22.5 or 31,5°.`
  return v.pipe(
    v.union([v.string(), v.number()], sentences(allowed, wayOut)),
    v.description(says),
    v.rawTransform<string | number, Degrees>(({ dataset, addIssue, NEVER }) => {
      const reading = readAngle(dataset.value)
      if ('refused' in reading) {
        addIssue({ message: sentences(sentence(reading.refused), allowed, wayOut) })
        return NEVER
      }
      if (reading.angle > most || reading.angle < above || (reading.angle === above && !inclusive)) {
        addIssue({ message: sentences(allowed, wayOut) })
        return NEVER
      }
      return degrees(reading.angle)
    }),
  )
}

export interface NumberRange extends Meaning {
  readonly least: number
  readonly most: number
}

/** Lengths of the print check's rulers: read in millimetres, and in inches. */
export const PRINT_CHECK_LENGTHS = { mm: mm(150), in: inches(6) } as const

/** Printers err by less; more is a print setting. Common practice, no published source. */
const MOST_OFF = 0.03

/** What came out of one ruler of the print check: written in mm it is of 150 mm, in inches of 6 in. */
export const printedField = (units: Units, says: string) => {
  const allowed =
    'Allowed: from 145.5 to 154.5 mm for the ruler of 150 mm, or from 5.82 to 6.18 in for the one of 6 in.'
  const setting =
    'More is not the printer but a print setting: print the check again at 100 % ("actual size"), with "fit to page" and "borderless" off and the paper size of the file, and measure anew.'
  return v.pipe(
    v.union([v.string(), v.number()], allowed),
    v.description(says),
    v.metadata({ length: true }),
    v.rawTransform<string | number, PrintedLength>(({ dataset, addIssue, NEVER }) => {
      const reading = readLength(dataset.value, units)
      if ('refused' in reading) {
        addIssue({ message: sentences(sentence(reading.refused), allowed) })
        return NEVER
      }
      const of = PRINT_CHECK_LENGTHS[reading.units]
      if (Math.abs(reading.length / of - 1) > MOST_OFF + WHOLE) {
        const other = PRINT_CHECK_LENGTHS[units === 'mm' ? 'in' : 'mm']
        const meant = otherUnit(dataset.value, units, other * (1 - MOST_OFF), other * (1 + MOST_OFF))
        addIssue({
          message: sentences(meant?.replace(/, or units: .*$/, '.'), allowed, meant ? undefined : setting),
        })
        return NEVER
      }
      return { measured: reading.length, of }
    }),
  )
}

/** Is it a day of the calendar? 30 February is not. */
const isDay = (text: string): boolean => {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false
  const day = new Date(`${text}T00:00:00Z`)
  return Number.isFinite(day.getTime()) && day.toISOString().startsWith(text)
}

/** A day, written year-month-day (ISO 8601); it is printed as it stands. */
export const dateField = (says: string) => {
  const advice = 'Allowed: a day written year-month-day, such as 2026-11-28.'
  return v.pipe(
    v.string(advice),
    v.description(says),
    v.rawTransform<string, string>(({ dataset, addIssue, NEVER }) => {
      if (isDay(dataset.value)) return dataset.value
      addIssue({ message: advice })
      return NEVER
    }),
  )
}

/** A whole number; digits in quotes or from a flag count too. */
export const wholeField = (range: NumberRange) => countField(range, true)

/** A plain number, such as a price. */
export const amountField = (range: NumberRange) => countField(range, false)

const COMMA_REFUSED = 'The comma can mean thousands or decimals: leave it out, or write a point.'

const countField = ({ says, wayOut, least, most }: NumberRange, whole: boolean) => {
  const allowed = sentences(
    `Allowed: a ${whole ? 'whole number' : 'number'} from ${trimmed(least, 2)} to ${trimmed(most, 2)}.`,
    wayOut,
  )
  const pattern = whole ? /^\d{1,9}$/ : /^\d{1,9}(?:\.\d{1,6}|,\d{1,2})?$/
  return v.pipe(
    v.union([v.number(), v.string()], allowed),
    v.description(says),
    v.rawTransform<string | number, number>(({ dataset, addIssue, NEVER }) => {
      const { value } = dataset
      const count =
        typeof value === 'number'
          ? value
          : pattern.test(value.trim())
            ? Number(value.replace(',', '.'))
            : Number.NaN
      if (!(count >= least && count <= most) || (whole && !Number.isInteger(count))) {
        const thousands = typeof value === 'string' && /\d,\d{3}$/.test(value)
        addIssue({ message: sentences(thousands ? COMMA_REFUSED : undefined, allowed) })
        return NEVER
      }
      return count
    }),
  )
}

export interface TextRange extends Meaning {
  readonly longest: number
  readonly use: TextUse
}

/** A line of text that can be lettered on a pattern and put in a page without harm. */
export const textField = ({ says, longest, use }: TextRange) => {
  const allowed = `Allowed: 1 to ${longest} characters on one line: Latin, Greek, Cyrillic, Armenian or Georgian letters, digits, spaces and ${SIGNS_TOLD[use]}.`
  return v.pipe(
    v.string(({ input }) =>
      sentences(
        typeof input === 'object' || input === undefined ? undefined : 'Put quotes around it.',
        allowed,
      ),
    ),
    v.description(says),
    v.rawTransform<string, string>(({ dataset, addIssue, NEVER }) => {
      const text = plainText(dataset.value)
      const strange = strangeSign(text, use)
      if (text === '' || text.length > longest || strange !== undefined) {
        addIssue({ message: sentences(strange === undefined ? undefined : refusalOf(strange), allowed) })
        return NEVER
      }
      return text
    }),
  )
}

/** One of a few words; only those in `told` are named in a refusal. */
export const choiceField = <const Words extends readonly [string, ...string[]]>(
  words: Words,
  { says, wayOut }: Meaning,
  told: readonly string[] = words,
) =>
  v.pipe(
    v.picklist(words, ({ input }) =>
      sentences(
        typeof input === 'string' ? guess(input, told) : undefined,
        `Allowed: ${listed(told)}.`,
        wayOut,
      ),
    ),
    v.description(says),
  )

/** A short word is near to every other: it is guessed only when it begins with the right one or holds it. */
const guess = (written: string, words: readonly string[]): string | undefined => {
  const plain = written.toLowerCase().replaceAll(/[ _-]/g, '')
  const joined = (word: string): string => word.toLowerCase().replaceAll('-', '')
  const held =
    words.find((word) => plain.startsWith(joined(word))) ?? words.find((word) => plain.includes(joined(word)))
  if (held !== undefined) return `Did you mean ${held}?`
  return plain.length < 4 ? undefined : didYouMean(written, words)
}

export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`
