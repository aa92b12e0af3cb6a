import { useLayoutEffect, useRef, useState } from 'preact/hooks'
import { draftOf, dropDraft, keepDraft } from './draft.js'

const ID = 'order-text'

/** Marks one line of the text, counted from 1. */
export const markLine = (line: number): void => {
  const field = document.getElementById(ID)
  if (!(field instanceof HTMLTextAreaElement)) return
  const lines = field.value.split('\n')
  const from = lines.slice(0, line - 1).join('\n').length + (line > 1 ? 1 : 0)
  field.focus()
  field.setSelectionRange(from, from + (lines[line - 1]?.length ?? 0))
}

/**
 * The order as it is written, to be mended by hand where no star can be drawn of it: nothing below it would be this
 * order's.
 */
export const OrderText = ({
  text,
  onTake,
}: {
  readonly text: string
  readonly onTake: (text: string) => void
}) => {
  const [typed, setTyped] = useState(() => draftOf(ID))
  const gone = useRef(false)
  // A text that goes away with its order is not left by the maker, though the browser says so.
  useLayoutEffect(
    () => () => {
      gone.current = true
    },
    [],
  )
  const take = (): void => {
    if (typed !== undefined && !gone.current) onTake(typed)
    setTyped(undefined)
    dropDraft()
  }
  return (
    <section aria-labelledby="text-heading" class="part">
      <h2 id="text-heading">The order, to be mended</h2>
      <p id="text-hint">
        Nothing is drawn or told of this order until its mistakes are mended, here in its text.
      </p>
      <label class="unseen" for={ID}>
        Text of the order
      </label>
      <textarea
        id={ID}
        aria-describedby="text-hint"
        rows={Math.min(24, text.split('\n').length + 2)}
        wrap="off"
        spellcheck={false}
        autoComplete="off"
        value={typed ?? text}
        onInput={({ currentTarget: { value } }) => {
          setTyped(value)
          keepDraft(ID, value)
        }}
        onChange={take}
      />
      <p class="files">
        <button type="button" onClick={take}>
          Look at it again
        </button>
      </p>
    </section>
  )
}
