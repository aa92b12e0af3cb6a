import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks'
import { draftOf, dropDraft, keepDraft } from './draft.js'
import { goTo } from './field-of.js'

/** How a field is named, and what is told of it. */
export interface Described {
  readonly id: string
  readonly 'aria-describedby'?: string
  readonly 'aria-invalid': boolean
  readonly 'data-also'?: string
}

/**
 * A line of text that is taken when the field is left or Enter pressed. While it is typed, nothing that happens on the
 * page takes it away, a reload neither.
 */
export const TypedInput = ({
  text,
  onTake,
  ...described
}: {
  readonly text: string
  readonly onTake: (text: string) => void
} & Described) => {
  const [typed, setTyped] = useState(() => draftOf(described.id))
  /** Not taken yet: leaving after Enter takes nothing twice. */
  const open = useRef(typed)
  const input = useRef<HTMLInputElement>(null)
  useEffect(() => {
    if (open.current !== undefined && input.current) goTo(input.current)
  }, [])
  // A field that goes away with its order is not left by the maker, though the browser says so.
  useLayoutEffect(
    () => () => {
      open.current = undefined
    },
    [],
  )
  const type = (given: string): void => {
    open.current = given
    setTyped(given)
    keepDraft(described.id, given)
  }
  const take = (): void => {
    if (open.current !== undefined) onTake(open.current.trim())
    open.current = undefined
    setTyped(undefined)
    dropDraft()
  }
  return (
    <input
      {...described}
      ref={input}
      type="text"
      autoComplete="off"
      spellcheck={false}
      value={typed ?? text}
      onInput={({ currentTarget }) => type(currentTarget.value)}
      onChange={take}
      onBlur={take}
    />
  )
}
