import { useState } from 'preact/hooks'

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
  const [typed, setTyped] = useState<string>()
  const take = (): void => {
    if (typed !== undefined) onTake(typed)
    setTyped(undefined)
  }
  return (
    <section aria-labelledby="text-heading" class="part">
      <h2 id="text-heading">The order, to be mended</h2>
      <p id="text-hint">
        Nothing is drawn or told of this order until its mistakes are mended: here, in its text, whose lines
        are counted from 1.
      </p>
      <label class="unseen" for="order-text">
        Text of the order
      </label>
      <textarea
        id="order-text"
        aria-describedby="text-hint"
        rows={24}
        spellcheck={false}
        autoComplete="off"
        value={typed ?? text}
        onInput={({ currentTarget }) => setTyped(currentTarget.value)}
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
