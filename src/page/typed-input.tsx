import { useContext, useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks'
import { TakenContext } from './bench.js'
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
  const { id } = described
  const taken = useContext(TakenContext)
  const [typed, setTyped] = useState(() => draftOf(id))
  /** Not taken yet: leaving after Enter takes nothing twice. */
  const open = useRef(typed === undefined ? undefined : { id, taken, text: typed, onTake })
  const input = useRef<HTMLInputElement>(null)
  const close = (): void => {
    open.current = undefined
    setTyped(undefined)
    dropDraft()
  }
  useEffect(() => {
    if (open.current !== undefined && input.current) goTo(input.current)
  }, [])
  // What was typed belongs to its own place, though the field is another's now; of another order nothing is written.
  useLayoutEffect(() => {
    const { current } = open
    if (!current || (current.id === id && current.taken === taken)) return
    close()
    if (current.taken === taken) current.onTake(current.text.trim())
  }, [id, taken])
  // A field that goes away with its order is not left by the maker, though the browser says so.
  useLayoutEffect(
    () => () => {
      open.current = undefined
    },
    [],
  )
  const type = (text: string): void => {
    open.current = { id, taken, text, onTake }
    setTyped(text)
    keepDraft(id, text)
  }
  const take = (): void => {
    const { current } = open
    close()
    if (current !== undefined) onTake(current.text.trim())
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
