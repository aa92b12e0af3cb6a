/** What the page's address keeps after its `#`: the order's text, and the wall the star is judged on. */
export interface Kept {
  readonly order: string
  readonly wall: string
}

export const addressOf = ({ order, wall }: Kept): string =>
  `#${new URLSearchParams(wall === '' ? { order } : { order, wall })}`

/** Undefined where the address keeps no order. */
export const keptIn = (address: string): Kept | undefined => {
  const kept = new URLSearchParams(address.replace(/^#/, ''))
  const order = kept.get('order')
  return order === null ? undefined : { order, wall: kept.get('wall') ?? '' }
}
