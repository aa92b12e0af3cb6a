import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'

/** Lettering heights after ISO 3098: notes, dimensions, titles. */
export const SMALL = mm(2.5)
export const MEDIUM = mm(3.5)
export const LARGE = mm(5)

/** Height of a capital over the size of the letter, in Helvetica (Adobe Font Metrics: CapHeight 718 of 1000). */
export const CAP_HEIGHT = 0.718

/** How far tails hang below the baseline, over the height of a capital (Helvetica: Descender -207). */
export const TAIL = 0.207 / CAP_HEIGHT

/** Advance widths of Helvetica in thousandths of the letter size, from space to tilde (Adobe Font Metrics). */
const ASCII_WIDTHS = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556,
  556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278,
  500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469,
  556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500,
  278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
] as const

/** No accented letter or sign of Latin-1 is wider, but for Æ and the widest capitals. */
const WIDE = 834
const WIDEST = 1000

const advance = (sign: string): number => {
  const width = ASCII_WIDTHS[(sign.codePointAt(0) ?? 0) - 32]
  return width ?? (sign === 'Æ' ? WIDEST : WIDE)
}

/** Width of a line of text whose capitals are `height` high; never less than Helvetica sets it. */
export const textWidth = (text: string, height: Mm): Mm =>
  mm(([...text].reduce((sum, sign) => sum + advance(sign), 0) / 1000) * (height / CAP_HEIGHT))

/** Breaks text at spaces into lines no wider than `width`; a single longer word keeps its own line. */
export const wrapText = (text: string, height: Mm, width: Mm): string[] => {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (line !== '' && textWidth(longer, height) > width) {
      lines.push(line)
      line = word
    } else line = longer
  }
  return [...lines, line]
}
