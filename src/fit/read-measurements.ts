import type { Star } from '../geometry/star.js'
import { DEFAULTS } from '../order/defaults.js'
import {
  done,
  type Outcome,
  type Problem,
  problemsOf,
  refused,
  sentence,
  sentences,
  showGiven,
} from '../order/problem.js'
import { closureGap } from '../plan/closure.js'
import { degrees, mm } from '../units/convert.js'
import { readAngle } from '../units/read-angle.js'
import { readLength } from '../units/read-length.js'
import { type LengthStyle, showAngle, showAtLeast, showAtMost } from '../units/show.js'
import { type Measurable, type Measurement, wouldMeasure } from './measurement.js'

/** What a maker wrote of one dry-fitted star: each as `2.8 mm`, or with how far it may be off, `2.8 mm +- 0.2 mm`. */
export interface WrittenMeasurements {
  readonly gap?: string | undefined
  readonly opensAt?: string | undefined
  readonly willNotDropInBy?: string | undefined
  readonly tip: readonly string[]
  readonly side: readonly string[]
  readonly centre: readonly string[]
  readonly tipEdge: readonly string[]
  readonly across: readonly string[]
  readonly anglesBy?: string | undefined
  readonly lengthsBy?: string | undefined
}

/** Tools and how far what they read may be off. */
export const ANGLE_TOOLS = { 'bevel-gauge': DEFAULTS.bevelGauge, protractor: DEFAULTS.protractor } as const
export const LENGTH_TOOLS = { tape: DEFAULTS.tape, rule: DEFAULTS.rule, caliper: DEFAULTS.caliper } as const

/** A cut this far off is no error of the saw's, but another setting or another star. */
const MOST_FACE = degrees(5)
const MOST_ANGLE = degrees(10)
const MOST_LENGTH = 0.2
const LEAST_ANGLE_WITHIN = 0.01
const LEAST_LENGTH_WITHIN = 0.01

/** Reads every measurement, or tells all that is wrong with them. */
export const readMeasurements = (
  written: WrittenMeasurements,
  star: Star,
  lengths: LengthStyle,
): Outcome<readonly Measurement[]> => {
  const angle = readerOf(star, lengths, 'angle', written.anglesBy)
  const length = readerOf(star, lengths, 'length', written.lengthsBy)
  const outcomes = [
    ...gapsOf(written, star, lengths),
    ...written.tip.map((text) => angle('tip', '--measured-tip', text)),
    ...written.side.map((text) => angle('side', '--measured-side', text)),
    ...written.centre.map((text) => angle('centre', '--measured-centre', text)),
    ...written.tipEdge.map((text) => length('tip-edge', '--measured-tip-edge', text)),
    ...written.across.map((text) => length('across', '--measured-across', text)),
  ]
  if (outcomes.length === 0) return refused([NOTHING])
  const problems = outcomes.flatMap(problemsOf)
  return problems.length > 0
    ? refused(problems)
    : done(outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : [])))
}

const NOTHING: Problem = {
  place: 'dryfit',
  given: 'no measurement',
  advice:
    'Give what you can measure, such as --gap 2.8mm --opens-at centre, or --will-not-drop-in-by 2.8mm, or --measured-tip 45.2.',
}

/** The star's one gap, or what the last arm is too wide by; both when both were written. */
const gapsOf = (written: WrittenMeasurements, star: Star, lengths: LengthStyle): Outcome<Measurement>[] => {
  const { gap, opensAt, willNotDropInBy } = written
  const outcomes: Outcome<Measurement>[] = []
  if (gap === undefined && opensAt !== undefined) {
    outcomes.push(refuse('--opens-at', opensAt, 'It tells where a gap opens: give the gap too, with --gap.'))
  }
  if (gap !== undefined) {
    const read = gapReading(star, lengths, written.lengthsBy, '--gap', gap)
    if (read.ok && read.value.value > 0 && opensAt === undefined) {
      outcomes.push(
        refuse('--gap', gap, 'At which end does it open? Add --opens-at valley or --opens-at centre.'),
      )
    } else if (read.ok && opensAt === 'centre') {
      outcomes.push(done({ ...read.value, value: -read.value.value }))
    } else outcomes.push(read)
  }
  if (willNotDropInBy !== undefined) {
    const read = gapReading(star, lengths, written.lengthsBy, '--will-not-drop-in-by', willNotDropInBy)
    outcomes.push(read.ok ? done({ ...read.value, value: -read.value.value }) : read)
  }
  return outcomes
}

/** A gap of 0 counts: it says that the ring closes. */
const gapReading = (
  star: Star,
  lengths: LengthStyle,
  tool: string | undefined,
  place: string,
  text: string,
): Outcome<Measurement> => {
  const most = closureGap(star.jointEdge, degrees(Math.min(180, 2 * star.points * MOST_FACE)))
  const allowed = `Allowed: from 0 to ${showAtMost(most, lengths)}, written like 2.8 mm or 2.8 mm +- 0.3 mm.`
  const why = `More would mean cuts that are over ${showAngle(MOST_FACE)} off, or is wider than the joint can open: look at the unit and at the setting.`
  const read = lengthReading(text, lengths, gapTool(tool))
  if ('refused' in read) return refuse(place, text, sentences(read.refused, allowed))
  if (read.value > most) return refuse(place, text, sentences(allowed, why))
  return done({ of: 'gap', ...read, place, given: showGiven(text) })
}

const gapTool = (tool: string | undefined): number => toolWithin(LENGTH_TOOLS, tool) ?? DEFAULTS.rule

const toolWithin = (tools: Readonly<Record<string, number>>, tool: string | undefined): number | undefined =>
  tool === undefined || !Object.hasOwn(tools, tool) ? undefined : tools[tool]

type Reading = { readonly value: number; readonly within: number } | { readonly refused: string }

const readerOf =
  (star: Star, lengths: LengthStyle, kind: 'angle' | 'length', tool: string | undefined) =>
  (of: Measurable, place: string, text: string): Outcome<Measurement> => {
    const wanted = wouldMeasure(of, star, { tip: degrees(0), side: degrees(0), tipEdge: mm(0) })
    const [least, most] =
      kind === 'angle'
        ? [Math.max(0, wanted - MOST_ANGLE), Math.min(180, wanted + MOST_ANGLE)]
        : [wanted * (1 - MOST_LENGTH), wanted * (1 + MOST_LENGTH)]
    const allowed =
      kind === 'angle'
        ? `Allowed: from ${showAngle(degrees(least))} to ${showAngle(degrees(most))}, for ${showAngle(degrees(wanted))} was wanted; written like 45.2 or 45.2 +- 0.2.`
        : `Allowed: from ${showAtLeast(mm(least), lengths)} to ${showAtMost(mm(most), lengths)}, written like 99 mm or 99 mm +- 0.5 mm.`
    const read =
      kind === 'angle'
        ? angleReading(text, toolWithin(ANGLE_TOOLS, tool) ?? DEFAULTS.bevelGauge)
        : lengthReading(text, lengths, toolWithin(LENGTH_TOOLS, tool) ?? DEFAULTS.tape)
    if ('refused' in read) return refuse(place, text, sentences(read.refused, allowed))
    if (!(read.value >= least && read.value <= most)) {
      return refuse(place, text, sentences(allowed, 'Is it another corner, another star, or another unit?'))
    }
    return done({ of, ...read, place, given: showGiven(text) })
  }

/** `45.2`, `45.2 +- 0.2`, `45.2±0.2`: the value, and how far it may be off. */
const parts = (text: string): { readonly value: string; readonly within?: string } | undefined => {
  const [value = '', within, ...more] = text.split(/±|\+\/?[-−]/)
  if (more.length > 0) return undefined
  return within === undefined ? { value } : { value, within }
}

const TWICE = 'It has more than one +-.'

const angleReading = (text: string, usual: number): Reading => {
  const written = parts(text)
  if (!written) return { refused: TWICE }
  const value = readAngle(written.value)
  if ('refused' in value) return { refused: sentence(value.refused) }
  if (written.within === undefined) return { value: value.angle, within: usual }
  const within = readAngle(written.within)
  if ('refused' in within || within.angle < LEAST_ANGLE_WITHIN || within.angle > MOST_FACE) {
    return { refused: `After +- stands an angle from ${LEAST_ANGLE_WITHIN} to ${MOST_FACE} degrees.` }
  }
  return { value: value.angle, within: within.angle }
}

const lengthReading = (text: string, lengths: LengthStyle, usual: number): Reading => {
  const written = parts(text)
  if (!written) return { refused: TWICE }
  const value = readLength(written.value, lengths.units)
  if ('refused' in value) return { refused: sentence(value.refused) }
  if (written.within === undefined) return { value: value.length, within: usual }
  const within = readLength(written.within, lengths.units)
  if ('refused' in within || within.length < LEAST_LENGTH_WITHIN || within.length > 10) {
    return { refused: `After +- stands a length from ${LEAST_LENGTH_WITHIN} mm to 10 mm.` }
  }
  return { value: value.length, within: within.length }
}

const refuse = (place: string, given: string, advice: string): Outcome<never> =>
  refused([{ place, given: showGiven(given), advice }])
