import { DRAWING_NAMES, type DrawingName } from '../src/compose/drawing-names.js'
import { DRAWINGS } from '../src/compose/drawings.js'
import { defaultFurniture } from '../src/furniture/furniture-set.js'
import type { FileContent } from '../src/make-files.js'
import { type Outcome, showProblem } from '../src/order/problem.js'
import type { PrintedDrawing } from '../src/paper/page.js'
import { layOnPaper } from '../src/paper/tile.js'
import { oneStar } from './orders.js'

/** Our own sheet furniture, millimetres first. */
export const FURNITURE = defaultFurniture('mm')

/** One drawing of one star on paper, as an order would say it: `points: 5, across: 300`, `{ size: A4 }`. */
export const laid = (
  star: string,
  paper: string,
  name: DrawingName = 'star-mat',
): Outcome<PrintedDrawing> => {
  const { stars, order } = oneStar(star, `shop: { paper: ${paper} }`)
  const drawing = stars[0] && DRAWINGS[name](stars[0], order, FURNITURE)
  if (!drawing) throw new Error(`the star has no ${name}`)
  return layOnPaper(drawing, order, FURNITURE)
}

/** The same where nothing may be refused. */
export const printOf = (star: string, paper: string, name?: DrawingName): PrintedDrawing => {
  const print = laid(star, paper, name)
  if (!print.ok) throw new Error(print.problems.map(showProblem).join('\n'))
  return print.value
}

/** Every drawing of a star with a backing. */
export const printsOf = (star: string, paper: string): PrintedDrawing[] =>
  DRAWING_NAMES.map((name) => printOf(star, paper, name))

/** A finished file's bytes, whether it is text or made as it is read. */
export const bytesOf = async (content: FileContent): Promise<Buffer> => {
  if (typeof content === 'string') return Buffer.from(content)
  const parts: Uint8Array[] = []
  for await (const part of content()) parts.push(part)
  return Buffer.concat(parts)
}
