import { layerOf } from '../drawing/layers.js'
import { CAP_HEIGHT } from '../drawing/lettering.js'
import type { Label } from '../drawing/model.js'
import { toDegrees, toPoints } from '../units/convert.js'
import type { Document } from './pdf-document.js'

/** One line of lettering in its layer's colour. */
export const letter = (
  document: Document,
  label: Label,
  x: (at: number) => number,
  y: (at: number) => number,
): void => letterAs(document, label, layerOf(label.layer).colour, x, y)

/** What a label and a text of sheet furniture have in common. */
type Lettering = Pick<Label, 'text' | 'at' | 'anchor' | 'height' | 'turn'>

export const letterAs = (
  document: Document,
  { text, height, at, anchor, turn }: Lettering,
  colour: string,
  x: (at: number) => number,
  y: (at: number) => number,
): void => {
  document
    .font('Helvetica')
    .fontSize(toPoints(height / CAP_HEIGHT))
    .fillColor(colour)
  const width = anchor === 'start' ? 0 : document.widthOfString(text)
  const left = anchor === 'middle' ? -width / 2 : -width
  const place = { lineBreak: false, baseline: 'alphabetic' } as const
  if (turn === 0) {
    document.text(text, x(at.x) + left, y(at.y), place)
    return
  }
  document.save()
  document.translate(x(at.x), y(at.y)).rotate(-toDegrees(turn))
  document.text(text, left, 0, place)
  document.restore()
}
