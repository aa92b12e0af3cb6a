import { LARGE, SMALL, wrapText } from '../drawing/lettering.js'
import type { Label } from '../drawing/model.js'
import { label } from '../drawing/shapes.js'
import type { Point } from '../geometry/point.js'
import type { Mm } from '../units/brand.js'

const LINE_SPACING = 1.65

/** A title and lines of text, set downwards from the top left corner and wrapped to the width. */
export const noteBlock = (title: string, notes: readonly string[], { x, y }: Point, width: Mm): Label[] => {
  const titles = wrapText(title, LARGE, width)
  const lines = notes.flatMap((note) => wrapText(note, SMALL, width))
  const firstLine = y - titles.length * LARGE * LINE_SPACING
  return [
    ...titles.map((text, row) =>
      label(text, { x, y: y - LARGE - row * LARGE * LINE_SPACING }, { height: LARGE }),
    ),
    ...lines.map((text, row) =>
      label(text, { x, y: firstLine - SMALL - row * SMALL * LINE_SPACING }, { height: SMALL }),
    ),
  ]
}
