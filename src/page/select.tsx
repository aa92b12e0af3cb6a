/** One of several ways to go on; what it changes is up to who uses it. */
export const Select = <Value extends string>({
  id,
  label,
  value,
  choices,
  onChoose,
}: {
  readonly id: string
  readonly label: string
  readonly value: Value
  readonly choices: readonly { readonly value: Value; readonly words: string }[]
  readonly onChoose: (value: Value) => void
}) => (
  <div class="field">
    <label for={id}>{label}</label>
    <select id={id} value={value} onChange={(event) => onChoose(event.currentTarget.value as Value)}>
      {choices.map((choice) => (
        <option key={choice.value} value={choice.value}>
          {choice.words}
        </option>
      ))}
    </select>
  </div>
)
