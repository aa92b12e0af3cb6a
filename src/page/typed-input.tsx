import { useState } from 'preact/hooks'

/** How a field is named, and what is told of it. */
export interface Described {
  readonly id: string
  readonly 'aria-describedby'?: string
  readonly 'aria-invalid': boolean
}

/**
 * A line of text that is taken when the field is left or Enter pressed. While it is typed, nothing that happens on the
 * page takes it away.
 */
export const TypedInput = ({
  text,
  onTake,
  ...described
}: {
  readonly text: string
  readonly onTake: (text: string) => void
} & Described) => {
  const [typed, setTyped] = useState<string>()
  return (
    <input
      {...described}
      type="text"
      autoComplete="off"
      spellcheck={false}
      value={typed ?? text}
      onInput={({ currentTarget }) => setTyped(currentTarget.value)}
      onChange={({ currentTarget }) => {
        onTake(currentTarget.value.trim())
        setTyped(undefined)
      }}
      onBlur={() => setTyped(undefined)}
    />
  )
}
