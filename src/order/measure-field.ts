import * as v from 'valibot'
import type { Units } from '../units/read-length.js'
import { type Measure, readMeasure } from '../units/read-measure.js'
import { WHOLE } from '../units/tolerance.js'
import type { Meaning } from './fields.js'
import { sentence, sentences } from './problem.js'

export interface MeasureRange extends Meaning {
  readonly measure: Measure
  /** In the measure's own unit. */
  readonly least: number
  readonly most: number
  /** What is allowed, in words, for an order in millimetres and one in inches. */
  readonly allowed: Readonly<Record<Units, string>>
}

/** A measured value, such as a humidity or a time, read in the order's units where it is a bare number. */
export const measureField = (units: Units, { says, wayOut, measure, least, most, allowed }: MeasureRange) => {
  const told = `Allowed: ${allowed[units]}.`
  const within = (value: number) => value >= least * (1 - WHOLE) && value <= most * (1 + WHOLE)
  return v.pipe(
    v.union([v.string(), v.number()], sentences(told, wayOut)),
    v.description(says),
    v.metadata(measure.bare ? { bareUnit: shownUnit(measure.bare[units]) } : {}),
    v.rawTransform<string | number, number>(({ dataset, addIssue, NEVER }) => {
      const reading = readMeasure(dataset.value, measure, units)
      if ('refused' in reading) {
        addIssue({ message: sentences(sentence(reading.refused), told, wayOut) })
        return NEVER
      }
      if (!within(reading.value)) {
        addIssue({ message: sentences(otherUnit(dataset.value, units, measure, within), told, wayOut) })
        return NEVER
      }
      return reading.value
    }),
  )
}

/** Was a bare number meant as it is written in the other half of the world? Then it would have been allowed. */
const otherUnit = (
  written: string | number,
  units: Units,
  { bare, ...measure }: Measure,
  within: (value: number) => boolean,
): string | undefined => {
  const other = bare?.[units === 'mm' ? 'in' : 'mm']
  if (!bare || other === undefined || other === bare[units]) return undefined
  if (typeof written === 'string' && !/^[-+\d.,]+$/.test(written.trim())) return undefined
  const reading = readMeasure(`${written} ${other}`, measure, units)
  return 'value' in reading && within(reading.value)
    ? `Read as ${shownUnit(bare[units])}. If ${shownUnit(other)} were meant, write ${written} ${shownUnit(other)}.`
    : undefined
}

/** As it is printed: `m²/l`, `°C`. */
const shownUnit = (unit: string): string =>
  unit
    .replace(/(?<=m|ft)2/, '²')
    .replace(/(?<=m|ft)3/, '³')
    .replace(/°./, (degrees) => degrees.toUpperCase())
