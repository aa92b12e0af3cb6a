import { entriesAt, type OrderPlace } from '../order/edit-text.js'
import { useBench } from './bench.js'
import { asTyped, fieldId, LabelledField } from './field.js'
import { listEntries } from './list-entries.js'
import { problemsAt } from './problem-place.js'
import { TypedInput } from './typed-input.js'

/** A list of numbers of the order on one line, shown with spaces between, as `0 15 22.5 45`. */
export const ListField = ({
  place,
  label,
  hint,
}: {
  readonly place: OrderPlace
  readonly label: string
  readonly hint: string
}) => {
  const { document, change, job } = useBench()
  const written = entriesAt(document, place)
  const take = (typed: string): void => {
    const entries = listEntries(typed)
    change([place, entries.length === 0 ? undefined : entries.map(asTyped)])
  }
  return (
    <LabelledField
      id={fieldId(place)}
      label={label}
      hint={hint}
      problems={[place, ...written.map((_, index) => [...place, index])].flatMap((each) =>
        problemsAt(job.problems, each),
      )}
    >
      {(described) => <TypedInput {...described} text={written.join(' ')} onTake={take} />}
    </LabelledField>
  )
}
