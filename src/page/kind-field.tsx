import type { OrderPlace } from '../order/edit-text.js'
import { type Choice, ChoicesOf, FieldFrame } from './field.js'

/** What kind of thing a group of the order is, with the group's own mistakes. */
export const KindField = ({
  value,
  choices,
  onChoose,
  ...frame
}: {
  readonly place: OrderPlace
  /** Of the kind itself. */
  readonly also: readonly OrderPlace[]
  readonly label: string
  readonly value: string
  readonly choices: readonly Choice[]
  readonly onChoose: (value: string) => void
}) => (
  <FieldFrame {...frame}>
    {(described) => <ChoicesOf {...described} value={value} choices={choices} onChoose={onChoose} />}
  </FieldFrame>
)
