import type { SawSet } from '../fit/closure-law.js'
import type { Degrees } from '../units/brand.js'
import { fixed, trimmed } from '../units/show.js'

/** How the saw is set. */
export const SET_TEXTS: Readonly<Record<SawSet, string>> = {
  told: 'as the plan tells, between the marks; a learned bias made good',
  marks: 'on the nearest marks',
  bare: 'to the bare angles; a learned bias stays in every cut',
}

export const countOf = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`

/** `200 000`: groups of three, as ISO 80000-1 parts them. */
export const grouped = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, ' ')

/** To a thousandth of a degree: finer than a scale, for a spread is told by it. */
export const fine = (angle: Degrees): string => `${trimmed(angle, 3)}°`

export const percent = (share: number): string => {
  const shown = fixed(share * 100, 1)
  if (shown === '100.0' && share < 1) return 'over 99.9 %'
  return shown === '0.0' && share > 0 ? 'under 0.1 %' : `${shown} %`
}
