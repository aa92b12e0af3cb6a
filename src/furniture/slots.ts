import type { ArtMark, ArtText, Artwork } from '../drawing/artwork.js'
import { textWidth } from '../drawing/lettering.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import type { SlotName } from './furniture-names.js'

/** What to letter in each slot; one that is not given stays empty. */
export type SlotValues = Readonly<Partial<Record<SlotName, string>>>

/** Capitals no lower than that are still read on paper; ISO 3098 begins at 1.8. */
export const SMALLEST_CAPITALS = mm(1.5)

const SLOT = /\{([^{}]*)\}/g
const CUT_SHORT = '...'

/** The names in braces, in their order. */
export const slotsIn = (text: string): string[] => [...text.matchAll(SLOT)].map(([, name = '']) => name)

/** Is there a brace that is no part of a slot? */
export const hasLoneBrace = (text: string): boolean => /[{}]/.test(text.replace(SLOT, ''))

/**
 * The artwork with its slots filled. A text whose slots are all empty is left out, so that no `SHEET /` stands alone;
 * one that is wider than its room is set smaller, down to {@link SMALLEST_CAPITALS}, and at last cut short.
 */
export const fillSlots = (artwork: Artwork, values: SlotValues): Artwork => ({
  ...artwork,
  marks: artwork.marks.flatMap((mark): ArtMark[] => (mark.kind === 'text' ? filled(mark, values) : [mark])),
})

const filled = (mark: ArtText, values: SlotValues): ArtText[] => {
  const names = slotsIn(mark.text) as SlotName[]
  if (names.length > 0 && names.every((name) => !values[name])) return []
  const text = withValues(mark.text, values)
  return [mark.room === undefined ? { ...mark, text } : { ...mark, ...fitted(text, mark.height, mark.room) }]
}

/** How wide a text must be able to get for a value to be read whole in it. */
export const roomFor = ({ text, height }: ArtText, values: SlotValues): Mm =>
  textWidth(withValues(text, values), mm(Math.min(height, SMALLEST_CAPITALS)))

/** Do those of the values that the artwork letters stand in it without being cut short? */
export const isReadWhole = ({ marks }: Artwork, values: SlotValues): boolean =>
  marks.every(
    (mark) =>
      mark.kind !== 'text' ||
      mark.room === undefined ||
      !slotsIn(mark.text).some((slot) => Object.hasOwn(values, slot)) ||
      roomFor(mark, values) <= mark.room,
  )

const withValues = (text: string, values: SlotValues): string =>
  text.replace(SLOT, (_, name: SlotName) => values[name] ?? '').trim()

const fitted = (text: string, height: Mm, room: Mm): Pick<ArtText, 'text' | 'height'> => {
  const width = textWidth(text, height)
  if (width <= room) return { text, height }
  // Width grows with height, so this height just fits.
  const fitting = (height * room) / width
  const smallest = Math.min(height, SMALLEST_CAPITALS)
  if (fitting >= smallest) return { text, height: mm(fitting) }
  const letters = [...text]
  const shortened = (count: number): string => `${letters.slice(0, count).join('').trimEnd()}${CUT_SHORT}`
  let count = letters.length
  while (count > 0 && textWidth(shortened(count), mm(smallest)) > room) count -= 1
  return { text: shortened(count), height: mm(smallest) }
}
