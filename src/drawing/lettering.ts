import { DEJAVU, type FaceTable, HELVETICA } from '../tables/letter-widths.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { unbroken } from './line-breaks.js'

/** Lettering heights after ISO 3098: notes, dimensions, titles. */
export const SMALL = mm(2.5)
export const MEDIUM = mm(3.5)
export const LARGE = mm(5)

/** What a line of text is set in: a standard face of PDF, or the one that is embedded. */
export type FaceName = 'Helvetica' | 'DejaVu Sans'

interface Face extends FaceTable {
  readonly name: FaceName
  /** How far tails hang below the baseline, over the height of a capital. */
  readonly tail: number
  /** Top of the highest sign without an accent. */
  readonly top: number
  /** The same with an accent, two for Vietnamese. */
  readonly accented: number
  /** Lowest foot of an accent or cedilla. */
  readonly foot: number
}

/** Tail of plain Latin text in Helvetica (Adobe Font Metrics: Descender -207, CapHeight 718). */
export const TAIL = 207 / 718

/**
 * Accents and cedillas of Helvetica reach from 225 below the baseline to 931 above (Adobe Font Metrics: FontBBox). Its
 * brackets and round letters overshoot a capital's height by a hair, which the white around labels takes up.
 */
const HELVETICA_FACE: Face = {
  ...HELVETICA,
  name: 'Helvetica',
  tail: TAIL,
  top: 1,
  accented: 931 / 718,
  foot: 225 / 718,
}

/** The extremes of its outlines over the signs in the table. */
const DEJAVU_FACE: Face = {
  ...DEJAVU,
  name: 'DejaVu Sans',
  tail: 496 / 1493,
  top: 1716 / 1493,
  accented: 2187 / 1493,
  foot: 511 / 1493,
}

/** Helvetica when it has every sign of the line, else DejaVu Sans for the whole of it. */
const face = (text: string): Face => {
  for (const sign of text) if (!HELVETICA.widths.has(sign)) return DEJAVU_FACE
  return HELVETICA_FACE
}

export const faceName = (text: string): FaceName => face(text).name

/** Size of the letter whose capitals are `height` high; it differs from face to face. */
export const letterSize = (text: string, height: Mm): Mm => {
  const { perSize, capital } = face(text)
  return mm((height * perSize) / capital)
}

/** Height of a capital over the size of the letter in Helvetica. */
export const CAP_HEIGHT = HELVETICA.capital / HELVETICA.perSize

/** The first sign that neither face sets; undefined when the line can be lettered. */
export const unlettered = (text: string): string | undefined =>
  [...text].find((sign) => !HELVETICA.widths.has(sign) && !DEJAVU.widths.has(sign))

/** No sign of either face is wider, over the letter's size (DejaVu Sans: advanceWidthMax 3838 of 2048). */
const WIDEST = 1.88

/** Width of a line of text whose capitals are `height` high; never less than its face sets it. */
export const textWidth = (text: string, height: Mm): Mm => {
  const used = face(text)
  return mm((advanceIn(used, text) * height) / used.capital)
}

/** In the face's own units. */
const advanceIn = ({ widths, apart, perSize }: Face, text: string): number => {
  let advance = 0
  let before = ''
  for (const sign of text) {
    advance += (widths.get(sign) ?? WIDEST * perSize) + (apart.get(before)?.get(sign) ?? 0)
    before = sign
  }
  return advance
}

/** A mark above or below, or a letter that is as tall without one. */
const TALL = /[\p{M}ƇƓѮѼѾҊҐꟾႨ]/u

/** How far the signs of a line reach above and below its baseline, over the height of a capital. */
export const reach = (text: string): { readonly above: number; readonly below: number } => {
  const { tail, top, accented, foot } = face(text)
  return TALL.test(text.normalize('NFKD')) ? { above: accented, below: foot } : { above: top, below: tail }
}

/** Breaks text at spaces into lines no wider than `width`, and within a word only where the word alone is wider. */
export const wrapText = (text: string, height: Mm, width: Mm): string[] => {
  const fits = (line: string): boolean => textWidth(line, height) <= width
  const lines: MeasuredLine[] = []
  for (const word of unbroken(text).flatMap((each) => pieces(each, fits))) {
    const measured = measuredLine(word)
    const before = lines.at(-1)
    const longer = before && joinedLine(before, measured)
    if (longer && lineWidth(longer, height) <= width) lines[lines.length - 1] = longer
    else lines.push(measured)
  }
  return lines.map((line) => line.text)
}

/** A line, and its advance in both faces: a word that is added may change the face of the whole line. */
interface MeasuredLine {
  readonly text: string
  readonly face: Face
  readonly helvetica: number
  readonly dejavu: number
}

const measuredLine = (text: string): MeasuredLine => ({
  text,
  face: face(text),
  helvetica: advanceIn(HELVETICA_FACE, text),
  dejavu: advanceIn(DEJAVU_FACE, text),
})

/** Neither face sets a space apart from its neighbours, so advances add up. */
const joinedLine = (line: MeasuredLine, word: MeasuredLine): MeasuredLine => ({
  text: `${line.text} ${word.text}`,
  face: line.face === HELVETICA_FACE ? word.face : line.face,
  helvetica: line.helvetica + SPACE.helvetica + word.helvetica,
  dejavu: line.dejavu + SPACE.dejavu + word.dejavu,
})

const SPACE = measuredLine(' ')

const lineWidth = (line: MeasuredLine, height: Mm): number =>
  ((line.face === HELVETICA_FACE ? line.helvetica : line.dejavu) * height) / line.face.capital

/** A word in as few pieces as fit, filled from the front; a single sign stays whole. */
const pieces = (word: string, fits: (text: string) => boolean): string[] => {
  if (fits(word)) return [word]
  const found: string[] = []
  for (const sign of word) {
    const longer = (found.at(-1) ?? '') + sign
    if (found.length > 0 && fits(longer)) found[found.length - 1] = longer
    else found.push(sign)
  }
  return found
}
