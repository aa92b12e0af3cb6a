import type { Extents } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { LARGE, MEDIUM, SMALL, textWidth, wrapText } from './lettering.js'
import type { Label, Notes } from './model.js'
import { label } from './shapes.js'

const LINE_SPACING = 1.65

/** In mm: what an upright sheet of A4 or Letter carries beside its margins, and one on its side. */
const UPRIGHT = 165
const ON_ITS_SIDE = 240

/** How wide the words under a figure are set: as wide as the sheet the figure needs allows. */
export const noteWidth = (figure: Extents): Mm =>
  mm(figure.max.x - figure.min.x > UPRIGHT + 20 ? ON_ITS_SIDE : UPRIGHT)

/** A title and lines of text, set downwards from the top left corner and wrapped to the width. */
export const noteBlock = (notes: Notes, { x, y }: Point, width: Mm): Label[] => {
  const { title } = notes
  const large =
    [LARGE, MEDIUM, SMALL].find((height) =>
      wrapText(title, height, width).every((line) => textWidth(line, height) <= width),
    ) ?? SMALL
  const titles = wrapText(title, large, width)
  const lines = notes.lines.flatMap((note) => wrapText(note, SMALL, width))
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
