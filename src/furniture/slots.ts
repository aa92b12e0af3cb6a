import type { ArtMark, ArtText, Artwork } from '../drawing/artwork.js'
import { textWidth, wrapText } from '../drawing/lettering.js'
import { add, point, turn } from '../geometry/point.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import type { SlotName } from './furniture-names.js'

/** What to letter in each slot; one that is not given stays empty. */
export type SlotValues = Readonly<Partial<Record<SlotName, string>>>

/** The lowest capitals of ISO 3098: a value is broken into the lines its slot allows before it is set lower. */
export const READABLE = mm(1.8)

/** Values a page cannot do without keep to that in a maker's own piece, in one line. */
export const LOWEST_NEEDED = mm(1.5)

/** What is long beyond measure is set as low as that before it is cut short: read through a glass. */
export const LOWEST = mm(0.9)

/** From one line of a value to the next, over the height of a capital: tails and accents. */
export const LINE_PITCH = 1.6

const SLOT = /\{([^{}]*)\}/g
const CUT_SHORT = '...'

/** The names in braces, in their order. */
export const slotsIn = (text: string): string[] => [...text.matchAll(SLOT)].map(([, name = '']) => name)

/** Is there a brace that is no part of a slot? */
export const hasLoneBrace = (text: string): boolean => /[{}]/.test(text.replace(SLOT, ''))

/**
 * The artwork with its slots filled. A text whose slots are all empty is left out, so that no `SHEET /` stands alone;
 * one that is wider than its room is set smaller, down to {@link READABLE}, then in as many lines as it may have, then
 * smaller still, down to {@link LOWEST}, and at last cut short.
 */
export const fillSlots = (artwork: Artwork, values: SlotValues): Artwork => ({
  ...artwork,
  marks: artwork.marks.flatMap((mark): ArtMark[] => (mark.kind === 'text' ? filled(mark, values) : [mark])),
})

const filled = (mark: ArtText, values: SlotValues): ArtText[] => {
  if (hasNoValue(mark, values)) return []
  const text = withValues(mark.text, values)
  if (mark.room === undefined) return [{ ...mark, text }]
  const { lines, height } = fitted(text, mark, mark.room)
  return lines.map((line, index) => {
    const down = turn(point(0, -index * LINE_PITCH * height), mark.turn)
    return { ...mark, text: line, height, at: add(mark.at, down) }
  })
}

const hasNoValue = ({ text }: ArtText, values: SlotValues): boolean => {
  const names = slotsIn(text) as SlotName[]
  return names.length > 0 && names.every((name) => !values[name])
}

/** How wide a text must be able to get for a value a page needs to be read whole in one line of it. */
export const roomFor = ({ text, height }: ArtText, values: SlotValues): Mm =>
  textWidth(withValues(text, values), lowered(height, LOWEST_NEEDED))

/** Do those of the values that the artwork letters stand in it whole, in letters that are easily read? */
export const isReadWhole = ({ marks }: Artwork, values: SlotValues): boolean =>
  marks.every((mark) => {
    if (mark.kind !== 'text' || mark.room === undefined) return true
    if (!slotsIn(mark.text).some((slot) => Object.hasOwn(values, slot))) return true
    const { height, isWhole } = fitted(withValues(mark.text, values), mark, mark.room)
    return isWhole && height >= lowered(mark.height, READABLE)
  })

/** How far a text's last line may stand below its first, in mm. */
export const linesDrop = ({ height, lines = 1 }: ArtText): number =>
  (lines - 1) * LINE_PITCH * lowered(height, READABLE)

const withValues = (text: string, values: SlotValues): string =>
  text.replace(SLOT, (_, name: SlotName) => values[name] ?? '').trim()

/** Lettering that is drawn lower is not made higher. */
const lowered = (height: Mm, to: Mm): Mm => mm(Math.min(height, to))

interface Fitted {
  readonly lines: readonly string[]
  readonly height: Mm
  readonly isWhole: boolean
}

const fitted = (text: string, { height, lines: most = 1 }: ArtText, room: Mm): Fitted => {
  // Width grows with height, so this height just fits.
  const fitting = mm(Math.min(height, (height * room) / textWidth(text, height)))
  const readable = lowered(height, READABLE)
  if (fitting >= readable) return { lines: [text], height: fitting, isWhole: true }
  const lowest = lowered(height, LOWEST)
  if (most === 1 && fitting >= lowest) return { lines: [text], height: fitting, isWhole: true }
  for (let step = 0; readable - step * LOWERED_BY >= lowest; step += 1) {
    const low = mm(readable - step * LOWERED_BY)
    const lines = wrapText(text, low, room)
    const fits = lines.length <= most && lines.every((line) => textWidth(line, low) <= room)
    if (fits) return { lines, height: low, isWhole: true }
  }
  const lines = wrapText(text, lowest, room)
  const last = cutShort(lines.slice(most - 1).join(' '), lowest, room)
  return { lines: [...lines.slice(0, most - 1), last], height: lowest, isWhole: false }
}

/** Steps in which lines are set lower, in mm: finer than is seen. */
const LOWERED_BY = 0.05

const cutShort = (text: string, height: Mm, room: Mm): string => {
  const letters = [...text]
  const shortened = (count: number): string => `${letters.slice(0, count).join('').trimEnd()}${CUT_SHORT}`
  let count = letters.length
  while (count > 0 && textWidth(shortened(count), height) > room) count -= 1
  return shortened(count)
}
