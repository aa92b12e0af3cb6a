import type { Degrees, Mm } from './brand.js'
import { MM_PER_INCH, mm, toInches } from './convert.js'
import type { Units } from './read-length.js'
import { toStep } from './step.js'
import { SAME_POINT, SHOP, SOUND_DIGITS } from './tolerance.js'

/** How lengths are shown: the order's units, and for inches the finest fraction (32 means 1/32). */
export interface LengthStyle {
  readonly units: Units
  readonly nearest: number
}

/**
 * A length as shown to a person, with its unit: `99.0 mm`, `3 29/32 in`.
 *
 * Inches are the nearest fraction of `style.nearest`, in lowest terms; what would be nothing then, in thousandths.
 */
export const showLength = (length: Mm, style: LengthStyle): string =>
  `${showNumber(length, style)} ${style.units}`

/** A largest allowed length, shown rounded down, so that what is shown is allowed. */
export const showAtMost = (length: Mm, style: LengthStyle): string =>
  showLength(stepped(length, style, Math.floor), style)

/** A smallest allowed length, shown rounded up. */
export const showAtLeast = (length: Mm, style: LengthStyle): string =>
  showLength(stepped(length, style, Math.ceil), style)

const stepped = (length: Mm, { units, nearest }: LengthStyle, round: (steps: number) => number): Mm =>
  mm(toStep(length, units === 'mm' ? 0.1 : MM_PER_INCH / nearest, round))

/** What somebody gave, so finely that it is not told as the limit it passes: `0.157 in` where 5/32 in is allowed. */
export const showGivenLength = (length: Mm, style: LengthStyle): string =>
  style.units === 'mm'
    ? showSize(length, style)
    : Math.abs(inchFraction(length, style.nearest).left) < SAME_POINT
      ? showLength(length, style)
      : `${trimmed(toInches(length), 4)} in`

/** As {@link showLength} without the unit, for tables whose heading names it. */
export const showNumber = (length: Mm, style: LengthStyle): string =>
  style.units === 'mm' ? fixed(length, 1) : inches(length, style.nearest)

const inches = (length: Mm, nearest: number): string => {
  const { text } = inchFraction(length, nearest)
  return text === '0' ? trimmed(toInches(length), 3) : text
}

/**
 * A length somebody sets a stop or a blade by: as {@link showLength}, and for inches followed by what the fraction
 * leaves out, in decimals of an inch, when that is more than can be seen at the bench: `3 29/32 +0.008 in`.
 */
export const showSetting = (length: Mm, style: LengthStyle): string => {
  if (style.units === 'mm') return showLength(length, style)
  const { text } = inchFraction(length, style.nearest)
  return [text, settingRest(length, style), 'in'].filter(Boolean).join(' ')
}

/** What the fraction of {@link showSetting} leaves out, with its sign: `-0.009`; undefined where it leaves nothing. */
export const settingRest = (length: Mm, { units, nearest }: LengthStyle): string | undefined => {
  if (units === 'mm') return undefined
  const { left } = inchFraction(length, nearest)
  return Math.abs(left) < SHOP ? undefined : `${left < 0 ? '-' : '+'}${fixed(Math.abs(toInches(left)), 3)}`
}

/**
 * A small movement or gap: as {@link showLength}, and for inches in thousandths, as a feeler gauge has them, for to the
 * nearest fraction it would be nothing: `0.014 in`.
 */
export const showMovement = (length: Mm, style: LengthStyle): string =>
  style.units === 'mm' ? showLength(length, style) : `${fixed(toInches(length), 3)} in`
/** A gap or a slop, finer than a rule shows: `0.14 mm`, `0.006 in`. */
export const showSmall = (length: Mm, { units }: LengthStyle): string =>
  units === 'mm' ? `${fixed(length, 2)} mm` : `${fixed(toInches(length), 3)} in`

/** A size that something is bought by, a bit or a panel: as {@link showLength}, with all the decimals it has: `6.35 mm`. */
export const showSize = (length: Mm, style: LengthStyle): string => {
  const fine = trimmed(length, 3)
  return style.units === 'in' || !/\.\d\d/.test(fine) ? showLength(length, style) : `${fine} mm`
}

/** An angle to a hundredth of a degree, without trailing zeros: `31.5°`. Minus is a plain hyphen. */
export const showAngle = (angle: Degrees): string => `${trimmed(angle, 2)}°`

/** A number with at most `digits` decimals and no trailing zeros; never `-0`. */
export const trimmed = (value: number, digits: number): string => String(Number(fixed(value, digits)))

/** A number with exactly `digits` decimals; never `-0.0`. */
export const fixed = (value: number, digits: number): string => {
  const text = withoutNoise(value).toFixed(digits)
  return Number(text) === 0 ? text.replace('-', '') : text
}

const withoutNoise = (value: number): number => Number(value.toPrecision(SOUND_DIGITS))

const inchFraction = (length: Mm, nearest: number): { text: string; left: Mm } => {
  const parts = Math.round(withoutNoise((Math.abs(length) / MM_PER_INCH) * nearest))
  const whole = Math.floor(parts / nearest)
  const divisor = greatestCommonDivisor(parts % nearest, nearest)
  const numerator = (parts % nearest) / divisor
  const fraction = numerator === 0 ? '' : `${numerator}/${nearest / divisor}`
  const size = [whole === 0 && fraction !== '' ? '' : String(whole), fraction].filter(Boolean).join(' ')
  const sign = length < 0 && parts !== 0 ? '-' : ''
  const shown = ((sign === '' ? parts : -parts) * MM_PER_INCH) / nearest
  return { text: `${sign}${size}`, left: mm(length - shown) }
}

const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b)
