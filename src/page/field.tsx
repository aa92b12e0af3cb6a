import type { ComponentChildren } from 'preact'
import type { OrderPlace } from '../order/edit-text.js'
import { writtenAt } from '../order/edit-text.js'
import type { Problem } from '../order/problem.js'
import type { Mm } from '../units/brand.js'
import { readLength } from '../units/read-length.js'
import { type LengthStyle, showLength } from '../units/show.js'
import { useBench } from './bench.js'
import { problemsAt, toldAtField } from './problem-place.js'
import { type Described, TypedInput } from './typed-input.js'

/** The id of the field that writes a place of the order. */
export const fieldId = (place: OrderPlace): string => `at-${place.join('-')}`

/** A number stays one in the order; anything else is kept as it was typed. */
export const asTyped = (text: string): string | number =>
  /^-?\d{1,12}(?:\.\d{1,6})?$/.test(text) ? Number(text) : text

/** What is taken where a field of a length is left empty. */
export const ifEmpty = (length: Mm, lengths: LengthStyle): string => `empty: ${showLength(length, lengths)}`

interface FieldProps {
  readonly place: OrderPlace
  readonly label: string
  /** What follows from it, or what is taken when it is left empty. */
  readonly hint?: string
  /** Places whose mistakes are told here too, such as the group it is in. */
  readonly also?: readonly OrderPlace[]
}

/**
 * A value of the order as it is written; a change is taken when the field is left or Enter pressed.
 *
 * @param words a name or a note, which may look like a number
 */
export const TextField = ({
  place,
  label,
  hint,
  words = false,
  instead = [],
  ...frame
}: FieldProps & {
  readonly words?: boolean
  /** What gives way to it when something is typed here. */
  readonly instead?: readonly OrderPlace[]
}) => {
  const { document, change, plan } = useBench()
  const written = writtenAt(document, place) ?? ''
  const elsewhere = inOrderUnits(written, plan.order.lengths)
  const told = [hint, elsewhere].filter(Boolean).join('; ')
  const take = (typed: string): void =>
    change(
      [place, typed === '' ? undefined : words ? typed : asTyped(typed)],
      ...(typed === '' ? [] : instead.map((other) => [other, undefined] as const)),
    )
  return (
    <FieldFrame place={place} label={label} {...(told === '' ? {} : { hint: told })} {...frame}>
      {(described) => <TypedInput {...described} text={written} onTake={take} />}
    </FieldFrame>
  )
}

/** What a length written in other units is in the order's own; nothing for anything else. */
const inOrderUnits = (written: string, lengths: LengthStyle): string | undefined => {
  const reading = readLength(written, lengths.units)
  return 'length' in reading && reading.units !== lengths.units
    ? `= ${showLength(reading.length, lengths)}`
    : undefined
}

export interface Choice {
  readonly value: string
  readonly words: string
}

/** One of several values of a place; the first is what holds when nothing is written, an empty one takes it out. */
export const ChoiceField = ({ choices, ...frame }: FieldProps & { readonly choices: readonly Choice[] }) => {
  const { document, change } = useBench()
  const { place } = frame
  return (
    <FieldFrame {...frame}>
      {(described) => (
        <ChoicesOf
          {...described}
          value={writtenAt(document, place) ?? choices[0]?.value ?? ''}
          choices={choices}
          onChoose={(value) => change([place, value === '' ? undefined : value])}
        />
      )}
    </FieldFrame>
  )
}

/** Several values of which one is chosen. */
export const ChoicesOf = ({
  choices,
  onChoose,
  ...described
}: Partial<Described> & {
  readonly value: string
  readonly choices: readonly Choice[]
  readonly disabled?: boolean
  readonly onChoose: (value: string) => void
}) => (
  <select {...described} onChange={({ currentTarget: { value } }) => onChoose(value)}>
    {choices.map(({ value, words }) => (
      <option key={value} value={value}>
        {words}
      </option>
    ))}
  </select>
)

type FieldChildren = (described: Described) => ComponentChildren

/** A field of the order, with what is wrong at its place. */
export const FieldFrame = ({
  place,
  also = [],
  ...field
}: FieldProps & { readonly children: FieldChildren }) => {
  const { job } = useBench()
  const problems = [place, ...also].flatMap((each) => problemsAt(job.problems, each))
  return <LabelledField id={fieldId(place)} problems={problems} also={also.map(fieldId)} {...field} />
}

/** Label, field, hint, and beneath it what is wrong there, in the words of the command line. */
export const LabelledField = ({
  id,
  label,
  hint,
  problems,
  also = [],
  children,
}: Pick<FieldProps, 'label' | 'hint'> & {
  readonly id: string
  /** Ids that places whose mistakes are told here would have. */
  readonly also?: readonly string[]
  readonly problems: readonly Problem[]
  readonly children: FieldChildren
}) => {
  const told = [
    ...(hint === undefined ? [] : [`${id}-hint`]),
    ...(problems.length > 0 ? [`${id}-problem`] : []),
  ]
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {children({
        id,
        'aria-invalid': problems.length > 0,
        ...(also.length > 0 ? { 'data-also': also.join(' ') } : {}),
        ...(told.length > 0 ? { 'aria-describedby': told.join(' ') } : {}),
      })}
      {hint !== undefined && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <ProblemsTold id={`${id}-problem`} problems={problems} />
    </div>
  )
}

/** What is wrong at a field, in the words of the command line; nothing where nothing is. */
export const ProblemsTold = ({
  id,
  problems,
}: {
  readonly id: string
  readonly problems: readonly Problem[]
}) =>
  problems.length === 0 ? null : (
    <p class="problem" id={id}>
      {[...new Set(problems.map(toldAtField))].map((told) => (
        <span key={told}>{told}</span>
      ))}
    </p>
  )
