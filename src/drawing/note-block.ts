import type { Extents } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { LARGE, MEDIUM, reach, SMALL, textWidth, wrapText } from './lettering.js'
import type { Label, Notes } from './model.js'
import { label } from './shapes.js'

/** From line to line, over the height of a capital; more where accents meet tails, to leave some white. */
const LINE_SPACING = 1.65
const WHITE = 0.15

/** In mm: what an upright sheet of A4 or Letter carries beside its margins, and one on its side. */
const UPRIGHT = 165
const ON_ITS_SIDE = 240

/** How wide the words under a figure are set: as wide as the sheet the figure needs allows. */
export const noteWidth = (figure: Extents): Mm =>
  mm(figure.max.x - figure.min.x > UPRIGHT + 20 ? ON_ITS_SIDE : UPRIGHT)

/** A title and lines of text, `lettering` high, set downwards from the top left corner and wrapped to the width. */
export const noteBlock = (notes: Notes, { x, y }: Point, width: Mm, lettering: Mm = SMALL): Label[] => {
  const { title } = notes
  const large =
    [LARGE, MEDIUM, SMALL].find((height) =>
      title.split(' ').every((word) => textWidth(word, height) <= width),
    ) ?? SMALL
  const rows = [
    ...wrapText(title, large, width).map((text) => ({ text, height: large })),
    ...notes.lines.flatMap((note) =>
      wrapText(note, lettering, width).map((text) => ({ text, height: lettering })),
    ),
  ]
  let baseline: number = y
  return rows.map(({ text, height }, row) => {
    const { above } = reach(text)
    const before = rows[row - 1]
    baseline -= before
      ? Math.max(
          (LINE_SPACING - 1) * before.height + height,
          reach(before.text).below * before.height + (above + WHITE) * height,
        )
      : above * height
    return label(text, { x, y: baseline }, { height })
  })
}
