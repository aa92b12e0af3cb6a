/** One mistake in an order, told so that the person who made it can mend it. */
export interface Problem {
  /** Where: a key such as `stars[0].tip-angle`, or a flag such as `--tip-angle`. */
  readonly place: string
  /** Line of the order file, counted from 1, when it came from a file. */
  readonly line?: number
  /** What was given, as it will be shown. */
  readonly given: string
  /** What is allowed, and the way out. */
  readonly advice: string
  /** A key that the place, which is a group, needs and has not. */
  readonly lacks?: string
}

/** A value, or everything that is wrong with what it was to be made from. */
export type Outcome<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problems: readonly Problem[] }

export const done = <Value>(value: Value): Outcome<Value> => ({ ok: true, value })
export const refused = (problems: readonly Problem[]): Outcome<never> => ({ ok: false, problems })

/** What is wrong; nothing when nothing is. */
export const problemsOf = (outcome: Outcome<unknown>): readonly Problem[] =>
  outcome.ok ? [] : outcome.problems

/** Sentences one after the other; those that are not there are passed over. */
export const sentences = (...parts: readonly (string | undefined)[]): string =>
  parts.filter(Boolean).join(' ')

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** With a capital and a full stop. */
export const sentence = (text: string): string => `${capital(text)}.`

/** `stars[0].tip-angle, line 12: given 190. A 5-point star needs …` on one line, with nothing in it that can act. */
export const showProblem = ({ place, line, given, advice }: Problem): string =>
  harmless(`${place}${line === undefined ? '' : `, line ${line}`}: given ${given}. ${advice}`)

/** Control characters, direction marks and line breaks made visible as `\u001b`. */
export const harmless = (text: string): string =>
  text.replace(
    /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\u00a0\u2028\u2029]/gu,
    (sign) => `\\u${(sign.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`,
  )

const LONGEST_SHOWN = 60

/** A given value in one short printable line: quotes and escapes around text. */
export const showGiven = (value: unknown): string => {
  if (value === undefined) return 'nothing'
  if (value === null) return 'an empty value'
  if (Array.isArray(value)) return 'a list'
  if (typeof value === 'object') return 'a group of keys'
  if (typeof value !== 'string') return String(value)
  const shown = value.length > LONGEST_SHOWN ? `${value.slice(0, LONGEST_SHOWN)}...` : value
  return harmless(
    `${JSON.stringify(shown)}${value.length > LONGEST_SHOWN ? ` (${value.length} characters)` : ''}`,
  )
}
