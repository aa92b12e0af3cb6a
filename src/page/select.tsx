import { ChoicesOf } from './field.js'

/** One of several ways to go on; what it changes is up to who uses it. */
export const Select = <Value extends string>({
  id,
  label,
  value,
  choices,
  held = false,
  onChoose,
}: {
  readonly id: string
  readonly label: string
  readonly value: Value
  readonly choices: readonly { readonly value: Value; readonly words: string }[]
  /** Not to be chosen now. */
  readonly held?: boolean
  readonly onChoose: (value: Value) => void
}) => (
  <div class="field">
    <label for={id}>{label}</label>
    <ChoicesOf
      id={id}
      value={value}
      choices={choices}
      disabled={held}
      onChoose={(chosen) => onChoose(chosen as Value)}
    />
  </div>
)
