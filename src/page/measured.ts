import { isBareLength } from '../order/bare-length.js'
import type { Units } from '../units/read-length.js'
import type { Change } from './bench.js'

/** Fields of one star's dry fit as they were typed; empty ones are left out. */
export type Measured = Readonly<Record<string, string>>

/** What was measured of every star, by its name. */
export type MeasuredStars = Readonly<Record<string, Measured>>

export const measuredOf = (stars: MeasuredStars, name: string): Measured =>
  Object.hasOwn(stars, name) ? (stars[name] ?? {}) : {}

/**
 * What was measured goes with a star that gets another name, and away with a star that is taken away. While two stars
 * have one name, which the order refuses, nothing passes from one to the other.
 *
 * @param namesOf tells the stars' names before the changes; asked only where a star is concerned
 */
export const measuredAfter = (
  stars: MeasuredStars,
  changes: readonly Change[],
  namesOf: () => readonly string[],
): MeasuredStars =>
  changes.reduce((before, [place, value]) => {
    const [list, index, key, ...deeper] = place
    const isTaken = key === undefined && value === undefined
    if (list !== 'stars' || deeper.length > 0 || !(isTaken || key === 'name')) return before
    const names = namesOf()
    const name = names[Number(index)]
    if (name === undefined || !Object.hasOwn(before, name)) return before
    const isShared = names.filter((each) => each === name).length > 1
    if (isShared || (key === 'name' && names.includes(String(value ?? '')))) return before
    return Object.fromEntries(
      Object.entries(before).flatMap(([star, measured]) =>
        star !== name ? [[star, measured]] : key === 'name' ? [[String(value ?? ''), measured]] : [],
      ),
    )
  }, stars)

/** Fields that take lengths; angles are degrees in any units. */
const LENGTHS = ['gap', 'will-not-drop-in-by', 'measured-tip-edge', 'measured-across', 'clean-up']

/** Lengths without a unit get the one they were typed in, so that nothing measured changes with the page's units. */
export const measuredWithUnit = (stars: MeasuredStars, units: Units): MeasuredStars =>
  mapped(stars, (measured) =>
    mapped(measured, (text, key) => (LENGTHS.includes(key) ? withUnit(text, units) : text)),
  )

const mapped = <Value>(
  given: Readonly<Record<string, Value>>,
  change: (value: Value, key: string) => Value,
): Readonly<Record<string, Value>> =>
  Object.fromEntries(Object.entries(given).map(([key, value]) => [key, change(value, key)]))

/** Between the lengths of a field: several arms, how far each may be off, the sides of a wall. */
const BETWEEN = /(\s*(?:;|±|\+\/?[-−]|[×x*])\s*)/i

export const withUnit = (text: string, units: Units): string =>
  text
    .split(BETWEEN)
    .map((part, index) => (index % 2 === 0 && isBareLength(part, units) ? `${part.trim()} ${units}` : part))
    .join('')
