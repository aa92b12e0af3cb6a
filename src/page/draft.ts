/*
 * What is typed and not yet left is no part of the order, and so not of the address: the browser's tab keeps it for a
 * reload, with the address it belongs to. Where it keeps nothing, as in some private windows, it is lost.
 */

const KEY = 'being typed'

interface Draft {
  /** Of the field. */
  readonly id: string
  readonly text: string
  /** Of the order that the field is of. */
  readonly address: string
}

/** @param id of the field */
export const keepDraft = (id: string, text: string): void =>
  attempt(() => sessionStorage.setItem(KEY, JSON.stringify({ id, text, address: location.hash })))

/** The address follows the order, sometimes a moment later: what is being typed follows it, of another order it goes. */
export const followAddress = (from: string): void =>
  attempt(() => {
    const draft: Partial<Draft> = JSON.parse(sessionStorage.getItem(KEY) ?? '{}')
    if (draft.address === from)
      sessionStorage.setItem(KEY, JSON.stringify({ ...draft, address: location.hash }))
    else dropDraft()
  })

export const dropDraft = (): void => attempt(() => sessionStorage.removeItem(KEY))

/** What was being typed in a field before the reload; of another order nothing. */
export const draftOf = (field: string): string | undefined =>
  attempt(() => {
    const { id, text, address }: Partial<Draft> = JSON.parse(sessionStorage.getItem(KEY) ?? '{}')
    return id === field && address === location.hash && typeof text === 'string' ? text : undefined
  })

const attempt = <Value>(what: () => Value): Value | undefined => {
  try {
    return what()
  } catch {
    return undefined
  }
}
