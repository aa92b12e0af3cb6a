/**
 * What the page's address keeps after its `#`: the order's text, the wall the star is judged on, and what was measured
 * on dry-fitted stars, by the star's name.
 */
export interface Kept {
  readonly order: string
  readonly wall: string
  readonly measured: Readonly<Record<string, Measured>>
}

/** Fields of one star's dry fit as they were typed; empty ones are left out. */
export type Measured = Readonly<Record<string, string>>

const MEASURED = 'dry-fit.'
/** A field, which has no dot, then the star. */
const MEASURED_AT = /^dry-fit\.([a-z-]+)\.(.+)$/

export const addressOf = ({ order, wall, measured }: Kept): string =>
  `#${new URLSearchParams([
    ['order', order],
    ...(wall === '' ? [] : [['wall', wall]]),
    ...Object.entries(measured).flatMap(([star, fields]) =>
      Object.entries(fields).map(([field, text]) => [`${MEASURED}${field}.${star}`, text]),
    ),
  ])}`

/** Undefined where the address keeps no order. */
export const keptIn = (address: string): Kept | undefined => {
  const kept = new URLSearchParams(address.replace(/^#/, ''))
  const order = kept.get('order')
  if (order === null) return undefined
  const measured = new Map<string, Map<string, string>>()
  for (const [key, text] of kept) {
    const [, field, star] = MEASURED_AT.exec(key) ?? []
    if (field === undefined || star === undefined) continue
    measured.set(star, (measured.get(star) ?? new Map()).set(field, text))
  }
  return {
    order,
    wall: kept.get('wall') ?? '',
    measured: Object.fromEntries([...measured].map(([star, fields]) => [star, Object.fromEntries(fields)])),
  }
}
