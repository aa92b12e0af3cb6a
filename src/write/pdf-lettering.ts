import { layerOf } from '../drawing/layers.js'
import { faceName, letterSize, unlettered } from '../drawing/lettering.js'
import type { Label } from '../drawing/model.js'
import { toDegrees, toPoints } from '../units/convert.js'
import { oneLine } from './one-line.js'

/** As much of pdfkit's document as lettering needs. */
export interface LetteringDocument {
  registerFont(name: string, bytes: Uint8Array): unknown
  font(name: string): { fontSize(size: number): { fillColor(colour: string): unknown } }
  widthOfString(text: string, options: object): number
  text(text: string, x: number, y: number, options: object): unknown
  save(): unknown
  translate(x: number, y: number): { rotate(angle: number): unknown }
  restore(): unknown
}

/**
 * Makes the document ready to letter these texts: DejaVu Sans is loaded, and so embedded with the signs that are used,
 * only where one of them leaves WinAnsiEncoding.
 *
 * @throws RangeError for a sign that neither face has; an order with one is refused long before
 */
export const loadLettering = async (document: LetteringDocument, texts: readonly string[]): Promise<void> => {
  const lines = [...new Set(texts)].map(oneLine)
  for (const line of lines) {
    const sign = unlettered(line)
    if (sign !== undefined)
      throw new RangeError(`no face has U+${sign.codePointAt(0)?.toString(16).toUpperCase()}`)
  }
  if (lines.every((line) => faceName(line) === 'Helvetica')) return
  const { default: bytes } = await import('./dejavu.js')
  document.registerFont('DejaVu Sans', bytes)
}

/**
 * Sign by sign at their own widths: ligatures would take letters from the text that is searched and copied, and
 * kerning is not in the widths that labels are placed by.
 */
const EACH_SIGN = { liga: false, clig: false, rlig: false, calt: false, ccmp: false, kern: false }

/** What a line of text needs besides its place: a drawing's label. */
export type LetteredLine = Pick<Label, 'text' | 'height' | 'anchor' | 'turn'> & { readonly colour: string }

/** Letters one line with its anchor at x and y, in points from the page's upper left corner. */
export const letter = (document: LetteringDocument, line: LetteredLine, x: number, y: number): void => {
  const text = oneLine(line.text)
  if (text === '') return
  document
    .font(faceName(text))
    .fontSize(toPoints(letterSize(text, line.height)))
    .fillColor(line.colour)
  const style = { lineBreak: false, baseline: 'alphabetic', features: EACH_SIGN } as const
  const width = line.anchor === 'start' ? 0 : document.widthOfString(text, style)
  const left = line.anchor === 'middle' ? -width / 2 : -width
  if (line.turn === 0) {
    document.text(text, x + left, y, style)
    return
  }
  document.save()
  document.translate(x, y).rotate(-toDegrees(line.turn))
  document.text(text, left, 0, style)
  document.restore()
}

/** A label of a drawing as a line in its layer's colour. */
export const lineOf = (label: Label): LetteredLine => ({ ...label, colour: layerOf(label.layer).colour })
