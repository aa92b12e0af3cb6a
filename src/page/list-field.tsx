import { countAt, type OrderPlace, writtenAt } from '../order/edit-text.js'
import { useBench } from './bench.js'
import { asTyped, fieldId, LabelledField, problemsAt } from './field.js'
import { TypedInput } from './typed-input.js'

/** A list of the order on one line, with spaces between, as `0 15 22.5 45`. */
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
  const places = Array.from({ length: countAt(document, place) }, (_, index) => [...place, index])
  const text = places.map((each) => writtenAt(document, each) ?? '').join(' ')
  const take = (typed: string): void => {
    const entries = typed.split(/[\s;]+/).filter(Boolean)
    change([place, entries.length === 0 ? undefined : entries.map(asTyped)])
  }
  return (
    <LabelledField
      id={fieldId(place)}
      label={label}
      hint={hint}
      problems={[place, ...places].flatMap((each) => problemsAt(job.problems, each))}
    >
      {(described) => <TypedInput {...described} text={text} onTake={take} />}
    </LabelledField>
  )
}
