import { SMALL } from '../drawing/lettering.js'
import type { Notes } from '../drawing/model.js'
import type { Furniture } from '../furniture/furniture-set.js'
import { point } from '../geometry/point.js'
import type { Order, Paper } from '../order/order.js'
import { sheetsFor } from './fewest-pages.js'
import { PADDING } from './padding.js'
import type { Page } from './page.js'
import { type SetNotes, setNotes } from './place-notes.js'
import { type Sheet, windowSize } from './sheet.js'
import { among, type SheetTitle, strip } from './strip.js'

/** Notes that find no room beside their figure, on a sheet of their own. */
export const notesPage = (notes: Notes, title: SheetTitle, order: Order, furniture: Furniture): Page => {
  const { sheet, block } = notesSheet(notes, order.shop.paper)
  const { window } = sheet
  const shift = point(window.min.x + EDGE, window.max.y - EDGE - block.along)
  return {
    name: title.sheet,
    sheet,
    among: (sheets, others) => notesPage(notes, among(title, sheets, others), order, furniture),
    views: [{ shapes: block.labels, window, shift }],
    furniture: () => strip(sheet, title, order, furniture),
  }
}

/** White around the notes. */
const EDGE = 5

/** An upright sheet, or a piece of a roll as long as the notes. */
const notesSheet = (notes: Notes, paper: Paper): { readonly sheet: Sheet; readonly block: SetNotes } => {
  for (const block of setNotes(notes, SMALL)) {
    const box = { min: point(0, 0), max: point(block.across + 2 * EDGE, block.along + 2 * EDGE) }
    for (const sheet of sheetsFor(paper, box)) {
      const { across, along } = windowSize(sheet)
      if (across >= box.max.x + 2 * PADDING && along >= box.max.y + 2 * PADDING) return { sheet, block }
    }
  }
  throw new RangeError('no sheet holds the notes')
}
