/**
 * What the page's address keeps after its `#`: the order's text, the wall the star is judged on, and what was measured
 * on a dry-fitted star, field by field.
 */
export interface Kept {
  readonly order: string
  readonly wall: string
  readonly measured: Measured
}

/** Fields of the dry fit as they were typed; empty ones are left out. */
export type Measured = Readonly<Record<string, string>>

const MEASURED = 'dry-fit.'

export const addressOf = ({ order, wall, measured }: Kept): string =>
  `#${new URLSearchParams([
    ['order', order],
    ...(wall === '' ? [] : [['wall', wall]]),
    ...Object.entries(measured).map(([field, text]) => [`${MEASURED}${field}`, text]),
  ])}`

/** Undefined where the address keeps no order. */
export const keptIn = (address: string): Kept | undefined => {
  const kept = new URLSearchParams(address.replace(/^#/, ''))
  const order = kept.get('order')
  if (order === null) return undefined
  const measured = [...kept].flatMap(([key, text]) =>
    key.startsWith(MEASURED) ? [[key.slice(MEASURED.length), text] as const] : [],
  )
  return { order, wall: kept.get('wall') ?? '', measured: Object.fromEntries(measured) }
}
