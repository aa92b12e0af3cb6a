import { LARGE, MEDIUM, SMALL, textWidth, wrapText } from '../drawing/lettering.js'
import type { Label } from '../drawing/model.js'
import { label } from '../drawing/shapes.js'
import type { Point } from '../geometry/point.js'
import type { Mm } from '../units/brand.js'

const LINE_SPACING = 1.65

/** In mm: what an upright A4 sheet carries, and one on its side. */
export const NARROWEST_NOTES = 165
export const WIDEST_NOTES = 240

/** A title and lines of text, set downwards from the top left corner and wrapped to the width. */
export const noteBlock = (title: string, notes: readonly string[], { x, y }: Point, width: Mm): Label[] => {
  const large =
    [LARGE, MEDIUM, SMALL].find((height) =>
      wrapText(title, height, width).every((line) => textWidth(line, height) <= width),
    ) ?? SMALL
  const titles = wrapText(title, large, width)
  const lines = notes.flatMap((note) => wrapText(note, SMALL, width))
  const firstLine = y - titles.length * large * LINE_SPACING
  return [
    ...titles.map((text, row) =>
      label(text, { x, y: y - large - row * large * LINE_SPACING }, { height: large }),
    ),
    ...lines.map((text, row) =>
      label(text, { x, y: firstLine - SMALL - row * SMALL * LINE_SPACING }, { height: SMALL }),
    ),
  ]
}
