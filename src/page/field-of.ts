/** A field on the page, and how one comes to it. */
export interface FoundField {
  readonly label: string
  readonly focus: () => void
}

/**
 * The field that writes a place of the order, such as `shop.boards[0].width`; of a group its first, of an entry that
 * of its list. Undefined where none is shown.
 */
export const fieldOf = (place: string): FoundField | undefined => {
  const steps = place.split(/[.[\]]+/).filter(Boolean)
  const field = find(steps) ?? (/^\d+$/.test(steps.at(-1) ?? '') ? find(steps.slice(0, -1)) : undefined)
  if (!field) return undefined
  const [inRow, own] = [
    field.closest('fieldset')?.querySelector('legend'),
    document.querySelector(`label[for="${CSS.escape(field.id)}"]`),
  ].map((each) => each?.textContent)
  return { label: [inRow, own].filter(Boolean).join(': '), focus: () => goTo(field) }
}

/** Nothing folded away takes the focus: what is around the field is unfolded first. */
export const goTo = (field: HTMLElement): void => {
  const folded = field.closest('details')
  if (folded) folded.open = true
  field.focus()
}

const find = (steps: readonly string[]): HTMLElement | undefined => {
  const id = ['at', ...steps].join('-')
  const field =
    document.getElementById(id) ??
    document.querySelector(`[data-also~="${CSS.escape(id)}"], :is(input, select)[id^="${CSS.escape(id)}-"]`)
  return field instanceof HTMLElement ? field : undefined
}
