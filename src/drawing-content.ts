import type { Choice } from './choose/choices.js'
import { choiceSheets } from './compose/choice-sheet.js'
import { forCutter } from './drawing/drawing.js'
import type { Drawing } from './drawing/model.js'
import type { Furniture } from './furniture/furniture-set.js'
import type { FileContent } from './make-files.js'
import type { Order } from './order/order.js'
import { done, type Outcome } from './order/problem.js'
import { layOnPaper } from './paper/tile.js'

/** Formats of a drawing by itself. */
export const DRAWING_KINDS = ['.svg', '.dxf', '.pdf'] as const
export type DrawingKind = (typeof DRAWING_KINDS)[number]

/** One drawing as a file of that kind; as PDF on pages of the order's paper. */
export const drawingContent = async (
  kind: DrawingKind,
  drawing: Drawing,
  order: Order,
  furniture: Furniture,
): Promise<Outcome<FileContent>> => {
  switch (kind) {
    case '.svg':
      return done((await import('./write/svg.js')).writeSvg(forCutter(drawing)))
    case '.dxf':
      return done((await import('./write/dxf.js')).writeDxf(forCutter(drawing), order.shop.cutter.dxf))
    case '.pdf': {
      const print = layOnPaper(drawing, order, furniture)
      const { drawingBook } = await import('./paper/pattern-book.js')
      const { pdfChunks } = await import('./write/pdf.js')
      return print.ok ? done(() => pdfChunks(drawingBook(print.value))) : print
    }
  }
}

/** Stars to choose from, with pictures: on cards as PDF, else all in one drawing. */
export const choicesContent = async (
  kind: DrawingKind,
  listed: readonly Choice[],
  order: Order,
  furniture: Furniture,
): Promise<Outcome<FileContent>> => {
  if (kind === '.pdf') {
    const { cardBook } = await import('./paper/card-book.js')
    const { pdfChunks } = await import('./write/pdf.js')
    const sheets = choiceSheets(listed, order)
    return done(() => pdfChunks(cardBook(sheets, order, 'stars to choose from')))
  }
  const [sheet] = choiceSheets(listed, order, listed.length)
  if (!sheet) throw new Error('a list that is not empty has a sheet')
  return drawingContent(kind, sheet, order, furniture)
}
