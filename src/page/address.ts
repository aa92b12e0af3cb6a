import { SAW_SETS, type SawSet } from '../fit/closure-law.js'
import { FURNITURE_NAMES, type FurnitureTexts } from '../furniture/furniture-names.js'
import { withoutAliases } from '../order/edit-text.js'
import type { MeasuredStars } from './measured.js'
import type { Before } from './sound.js'

/** The maker's work: the order's text, the wall the star is judged on, what was measured on dry-fitted stars. */
export interface Kept {
  readonly order: string
  readonly wall: string
  readonly measured: MeasuredStars
  /** Pieces of sheet furniture in place of ours, as SVG. */
  readonly furniture: FurnitureTexts
  /** The order before its mistakes, which is drawn and told until they are mended; absent where it has none. */
  readonly before?: Before | undefined
}

/** How it is looked at, which no undo changes: the star that is shown, counted from 0, its tone of wood, and so on. */
export interface Look {
  readonly shown: number
  readonly tone: string
  /** How the saw is set when the stars' chances are told. */
  readonly set: SawSet
  /** What stars were last wished for, by the fields of that part; empty ones are left out. */
  readonly wish: Readonly<Record<string, string>>
}

export const FIRST_LOOK: Look = { shown: 0, tone: '', set: 'told', wish: {} }

const WISHED = 'choose.'
const FURNITURE = 'furniture.'

const MEASURED = 'dry-fit.'
/** A field, which has no dot, then the star. */
const MEASURED_AT = /^dry-fit\.([a-z-]+)\.(.+)$/

/** What the page's address keeps after its `#`. */
export const addressOf = (
  { order, wall, measured, furniture, before }: Kept,
  { shown, tone, set, wish } = FIRST_LOOK,
): string =>
  `#${new URLSearchParams([
    ['order', order],
    ...(before === undefined
      ? []
      : [
          ['before', before.order],
          ['before-stars', before.stars.join(' ')],
        ]),
    ...(wall === '' ? [] : [['wall', wall]]),
    ...(shown === 0 ? [] : [['shown', String(shown + 1)]]),
    ...(tone === '' ? [] : [['tone', tone]]),
    ...(set === FIRST_LOOK.set ? [] : [['set', set]]),
    ...Object.entries(wish).map(([field, text]) => [`${WISHED}${field}`, text]),
    ...Object.entries(furniture).map(([piece, text]) => [`${FURNITURE}${piece}`, text]),
    ...Object.entries(measured).flatMap(([star, fields]) =>
      Object.entries(fields).map(([field, text]) => [`${MEASURED}${field}.${star}`, text]),
    ),
  ])}`

/** Undefined where the address keeps no order. */
export const keptIn = (address: string): Kept | undefined => {
  const kept = new URLSearchParams(address.replace(/^#/, ''))
  const written = kept.get('order')
  if (written === null) return undefined
  const order = withoutAliases(written)
  const before = kept.get('before')
  const measured = new Map<string, Map<string, string>>()
  for (const [key, text] of kept) {
    const [, field, star] = MEASURED_AT.exec(key) ?? []
    if (field === undefined || star === undefined) continue
    measured.set(star, (measured.get(star) ?? new Map()).set(field, text))
  }
  return {
    order,
    ...(before === null
      ? {}
      : {
          before: {
            order: before,
            stars: (kept.get('before-stars') ?? '').split(' ').filter(Boolean).map(Number),
          },
        }),
    wall: kept.get('wall') ?? '',
    furniture: Object.fromEntries(
      FURNITURE_NAMES.flatMap((name) => {
        const text = kept.get(`${FURNITURE}${name}`)
        return text === null ? [] : [[name, text]]
      }),
    ),
    measured: Object.fromEntries([...measured].map(([star, fields]) => [star, Object.fromEntries(fields)])),
  }
}

export const lookIn = (address: string): Look => {
  const kept = new URLSearchParams(address.replace(/^#/, ''))
  const shown = Number(kept.get('shown') ?? 1) - 1
  const wish = [...kept].flatMap(([key, text]) =>
    key.startsWith(WISHED) ? [[key.slice(WISHED.length), text] as const] : [],
  )
  return {
    shown: Number.isInteger(shown) && shown > 0 ? shown : 0,
    tone: kept.get('tone') ?? '',
    set: SAW_SETS.find((set) => set === kept.get('set')) ?? FIRST_LOOK.set,
    wish: Object.fromEntries(wish),
  }
}
