import { shapeExtents } from '../drawing/bounds.js'
import type { Shape } from '../drawing/model.js'
import type { Extents } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import type { Paper } from '../order/order.js'
import { SHOP } from '../units/tolerance.js'
import { sheetsFor } from './fewest-pages.js'
import type { InkRaster } from './ink.js'
import type { Layout } from './layout.js'
import { PADDING } from './padding.js'
import { placeNotes, type SetNotes } from './place-notes.js'
import { pieceOfRoll, type Sheet, stretchFor, windowSize } from './sheet.js'

/** A page that holds the figure and its notes. */
export interface NotedPage {
  readonly layout: Layout
  readonly notes: readonly Shape[]
}

/** The figure in the upper left corner of a sheet, the notes where they find room, and both in its middle. */
export const onePage = (
  layout: Layout,
  figure: Extents,
  notes: readonly SetNotes[],
  raster: InkRaster,
  paper: Paper,
): NotedPage | undefined => {
  for (const sheet of [...sheetsFor(paper, figure), ...longerPieces(notes, figure, paper)]) {
    const { across, along } = windowSize(sheet)
    const top = figure.max.y + PADDING
    const left = figure.min.x - PADDING
    if (figure.max.x + PADDING > left + across || figure.min.y - PADDING < top - along) continue
    const placed = placeNotes(
      notes,
      { min: point(left, top - along), max: point(left + across, top) },
      raster,
    )
    if (placed)
      return { layout: middleOf(sheet, layout, joined(figure, shapeExtents(placed))), notes: placed }
  }
  return undefined
}

/** A layout of the one sheet, with a box in its middle. */
export const middleOf = (sheet: Sheet, layout: Omit<Layout, 'sheet'>, { min, max }: Extents): Layout => {
  const { across, along } = windowSize(sheet)
  return { ...layout, sheet, origin: point((min.x + max.x - across) / 2, (min.y + max.y - along) / 2) }
}

const joined = (a: Extents, b: Extents): Extents => ({
  min: point(Math.min(a.min.x, b.min.x), Math.min(a.min.y, b.min.y)),
  max: point(Math.max(a.max.x, b.max.x), Math.max(a.max.y, b.max.y)),
})

/** Room for notes below the figure, in mm, beside their own height. */
const BELOW = 8

/** Pieces of a roll that are longer by the height of the notes. */
const longerPieces = (notes: readonly SetNotes[], { min, max }: Extents, paper: Paper): Sheet[] => {
  const { sheet } = paper
  if (!('roll' in sheet)) return []
  return notes
    .filter(({ across }) => across <= sheet.roll / stretchFor(paper.printed).x - 2 * paper.margin - BELOW)
    .map(({ along }) => pieceOfRoll(paper, sheet.roll, max.y - min.y + 2 * PADDING + along + BELOW))
    .filter(({ along, stretch }) => along * stretch.y <= sheet.longest + SHOP)
}
