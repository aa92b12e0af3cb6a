import * as v from 'valibot'
import type { Degrees, Mm } from '../units/brand.js'
import { degrees, mm, toInches } from '../units/convert.js'
import { readAngle } from '../units/read-angle.js'
import { readLength, type Units } from '../units/read-length.js'
import { trimmed } from '../units/show.js'

/*
 * The kinds of value an order's keys can have. Each takes `says`, what the key means (it becomes the schema's
 * description and the flag's help), and where it helps `wayOut`, the advice that closes a refusal.
 */

interface Meaning {
  readonly says: string
  readonly wayOut?: string
}

const sentence = (...parts: readonly (string | undefined)[]): string => parts.filter(Boolean).join(' ')

export interface LengthRange extends Meaning {
  readonly least: number
  readonly most: number
}

/** A length in mm within `least`..`most` (mm), read in the order's units. */
export const lengthField = (units: Units, { says, wayOut, least, most }: LengthRange) => {
  const example = units === 'mm' ? '70, 70.5 mm or 2 3/4 in' : '2 3/4, 2 3/4 in or 70 mm'
  const allowed = `Allowed: a length from ${showBound(least, units)} to ${showBound(most, units)}, written like ${example}.`
  return v.pipe(
    v.union([v.string(), v.number()], sentence(allowed, wayOut)),
    v.description(says),
    v.rawTransform<string | number, Mm>(({ dataset, addIssue, NEVER }) => {
      const reading = readLength(dataset.value, units)
      if ('refused' in reading) {
        addIssue({ message: sentence(`${capital(reading.refused)}.`, allowed, wayOut) })
        return NEVER
      }
      if (reading.length < least || reading.length > most) {
        addIssue({ message: sentence(allowed, wayOut) })
        return NEVER
      }
      return reading.length
    }),
  )
}

const showBound = (bound: number, units: Units): string =>
  units === 'mm' ? `${trimmed(bound, 2)} mm` : `${trimmed(toInches(mm(bound)), 3)} in`

export interface AngleRange extends Meaning {
  readonly above: number
  readonly most: number
  readonly orZero?: boolean
}

/** An angle in degrees, more than `above` (or 0 when `orZero`) and at most `most`. */
export const angleField = ({ says, wayOut, above, most, orZero = false }: AngleRange) => {
  const from = orZero ? `from ${above}` : `more than ${above}`
  const allowed = `Allowed: an angle ${from} and up to ${most} degrees, written like 45, 22.5 or 31,5°.`
  return v.pipe(
    v.union([v.string(), v.number()], sentence(allowed, wayOut)),
    v.description(says),
    v.rawTransform<string | number, Degrees>(({ dataset, addIssue, NEVER }) => {
      const reading = readAngle(dataset.value)
      if ('refused' in reading) {
        addIssue({ message: sentence(`${capital(reading.refused)}.`, allowed, wayOut) })
        return NEVER
      }
      if (reading.angle > most || reading.angle < above || (reading.angle === above && !orZero)) {
        addIssue({ message: sentence(allowed, wayOut) })
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

/** A whole number; digits in quotes or from a flag count too. */
export const wholeField = (range: NumberRange) => countField(range, true)

/** A plain number, such as a price. */
export const amountField = (range: NumberRange) => countField(range, false)

const countField = ({ says, wayOut, least, most }: NumberRange, whole: boolean) => {
  const allowed = sentence(
    `Allowed: a ${whole ? 'whole number' : 'number'} from ${trimmed(least, 2)} to ${trimmed(most, 2)}.`,
    wayOut,
  )
  const pattern = whole ? /^\d{1,9}$/ : /^\d{1,9}(?:\.\d{1,6})?$/
  return v.pipe(
    v.union([v.number(), v.string()], allowed),
    v.description(says),
    v.rawTransform<string | number, number>(({ dataset, addIssue, NEVER }) => {
      const { value } = dataset
      const count =
        typeof value === 'number' ? value : pattern.test(value.trim()) ? Number(value) : Number.NaN
      if (!(count >= least && count <= most) || (whole && !Number.isInteger(count))) {
        addIssue({ message: allowed })
        return NEVER
      }
      return count
    }),
  )
}

export interface TextRange extends Meaning {
  readonly longest: number
}

/**
 * A line of text that can be printed, drawn and put in a page without harm: letters, digits, spaces and plain
 * punctuation, of the Latin-1 set that the patterns' lettering carries.
 */
export const textField = ({ says, longest }: TextRange) => {
  const allowed = `Allowed: 1 to ${longest} characters on one line: Western European letters, digits, spaces and - _ . , : ' ( ) + & # !`
  return v.pipe(
    v.string(allowed),
    v.description(says),
    v.rawTransform<string, string>(({ dataset, addIssue, NEVER }) => {
      const text = dataset.value.normalize('NFC').trim()
      const strange = [...text].find((sign) => !/^[\p{L}\p{N} \-_.,:'()+&#!]$/u.test(sign) || sign > 'ÿ')
      if (text === '' || text.length > longest || strange !== undefined) {
        const why =
          strange === undefined ? undefined : `The character ${characterName(strange)} cannot be lettered.`
        addIssue({ message: sentence(why, allowed) })
        return NEVER
      }
      return text
    }),
  )
}

const characterName = (sign: string): string => {
  const code = (sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')
  return /^[\p{L}\p{N}\p{P}\p{S}]$/u.test(sign) ? `${sign} (U+${code})` : `U+${code}`
}

/** One of a few words. */
export const choiceField = <const Words extends readonly [string, ...string[]]>(
  words: Words,
  { says, wayOut }: Meaning,
) => v.pipe(v.picklist(words, sentence(`Allowed: ${listed(words)}.`, wayOut)), v.description(says))

export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
