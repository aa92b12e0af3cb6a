import type { ComponentChildren } from 'preact'
import { useEffect, useRef } from 'preact/hooks'
import type { OrderPlace } from '../order/edit-text.js'
import { useBench } from './bench.js'
import { type Choice, ChoiceField, TextField } from './field.js'
import { problemsAt } from './problem-place.js'

/** A field of the order in words. */
export interface FieldWords {
  readonly place: OrderPlace
  readonly label: string
  readonly hint?: string
  /** A name or a note, which may look like a number. */
  readonly words?: boolean
  /** What gives way to it when something is typed here. */
  readonly instead?: readonly OrderPlace[]
  /** Places whose mistakes are told here too. */
  readonly also?: readonly OrderPlace[]
  /** Of which one is chosen; the first holds when nothing is written. */
  readonly choices?: readonly Choice[]
}

export const FieldsOf = ({ fields }: { readonly fields: readonly FieldWords[] }) => (
  <>
    {fields.map(({ choices, ...field }) =>
      choices ? (
        <ChoiceField key={field.place.join(' ')} {...field} choices={choices} />
      ) : (
        <TextField key={field.place.join(' ')} {...field} />
      ),
    )}
  </>
)

/** What few orders need, folded away; unfolded when something is wrong in its fields. */
export const MoreFields = ({
  name,
  fields = [],
  children,
}: {
  readonly name: string
  readonly fields?: readonly FieldWords[]
  /** What stands beneath them. */
  readonly children?: ComponentChildren
}) => {
  const { job } = useBench()
  const folded = useRef<HTMLDetailsElement>(null)
  const wrong = fields.some(({ place, also = [] }) =>
    [place, ...also].some((each) => problemsAt(job.problems, each).length > 0),
  )
  useEffect(() => {
    if (wrong && folded.current) folded.current.open = true
  }, [wrong])
  return (
    <details class="more" ref={folded}>
      <summary>{name}</summary>
      {fields.length > 0 && (
        <div class="fields">
          <FieldsOf fields={fields} />
        </div>
      )}
      {children}
    </details>
  )
}
