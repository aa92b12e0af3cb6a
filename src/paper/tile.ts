import { shapeExtents } from '../drawing/bounds.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { point } from '../geometry/point.js'
import type { Order, Paper } from '../order/order.js'
import { done, type Outcome, refused } from '../order/problem.js'
import { paperSize } from '../tables/paper.js'
import type { Mm } from '../units/brand.js'
import { mm, points, toMm } from '../units/convert.js'
import { showLength } from '../units/show.js'
import { furniture, STRIP_HEIGHT } from './furniture.js'
import { type Grid, nameIn } from './grid.js'
import type { Page, PrintedDrawing } from './page.js'
import { registerMarks } from './register-marks.js'

/** White around the drawing inside the window. */
const PADDING = 2
/** More sheets than anyone will tape together. */
const MOST_PAGES = 400
/** ISO 32000-1, Annex C.2: the largest page readers must accept is 14 400 units. */
const LONGEST_PAGE = toMm(points(14_400))

/** A part of a drawing that is laid out by itself. */
interface Part {
  readonly shapes: readonly Shape[]
  readonly grid: Grid
}

/** Lays a drawing on the order's paper at 1:1. */
export const layOnPaper = (drawing: Drawing, order: Order): Outcome<PrintedDrawing> => {
  const parts = partsOf(drawing, order.shop.paper)
  const problem = parts
    .map(({ grid }) => gridProblem(grid, drawing, order))
    .find((found) => found !== undefined)
  if (problem) return refused([problem])
  return done({ drawing, pages: parts.flatMap((part) => pagesOf(part, drawing, order)) })
}

/**
 * The drawing with its words, or the words on a sheet of their own: when the rest then fits on one sheet, so that no
 * seam runs through it, and whenever that takes no more sheets.
 */
const partsOf = (drawing: Drawing, paper: Paper): Part[] => {
  const whole = { shapes: drawing.shapes, grid: gridFor(drawing.shapes, paper, 'with') }
  if (count(whole) === 1 || !drawing.notes) return [whole]
  const rest = drawing.figure
  const noted = drawing.shapes.filter((shape) => !rest.includes(shape))
  const figure = { shapes: rest, grid: gridFor(rest, paper, 'apart') }
  const words = { shapes: noted, grid: gridFor(noted, paper, 'only') }
  const apart = count(words) === 1 && (count(figure) === 1 || count(figure) + 1 <= count(whole))
  return apart ? [figure, words] : [whole]
}

const count = ({ grid }: Part): number => grid.columns * grid.rows

/** Sheets upright or on their side, whichever takes fewer; the shapes stand in the middle of them. */
const gridFor = (shapes: readonly Shape[], paper: Paper, words: Grid['words']): Grid => {
  const { min, max } = shapeExtents(shapes)
  const needAcross = max.x - min.x + 2 * PADDING
  const needAlong = max.y - min.y + 2 * PADDING
  const { margin, overlap } = paper
  const choices = sheets(paper, needAlong).map(([across, along]) => {
    const windowAcross = across - 2 * margin
    const windowAlong = along - 2 * margin - STRIP_HEIGHT
    const columns = sheetsFor(needAcross, windowAcross, overlap)
    const rows = sheetsFor(needAlong, windowAlong, overlap)
    const origin = point(
      (min.x + max.x - spanOf(columns, windowAcross, overlap)) / 2,
      (min.y + max.y - spanOf(rows, windowAlong, overlap)) / 2,
    )
    return { across, along, columns, rows, windowAcross, windowAlong, margin, overlap, origin, words }
  })
  return choices.reduce((best, next) => (next.columns * next.rows < best.columns * best.rows ? next : best))
}

/** The sheets to try: a size upright and on its side, or a roll cut to the drawing's length. */
const sheets = (
  { sheet, margin }: Paper,
  needAlong: number,
): [readonly [Mm, Mm], ...(readonly [Mm, Mm])[]] => {
  if ('roll' in sheet) return [[sheet.roll, mm(needAlong + 2 * margin + STRIP_HEIGHT)]]
  const { across, along } = paperSize(sheet.size)
  return [
    [across, along],
    [along, across],
  ]
}

const sheetsFor = (need: number, window: number, overlap: number): number =>
  Math.max(1, Math.ceil((need - overlap) / (window - overlap)))

const spanOf = (count: number, window: number, overlap: number): number =>
  count * (window - overlap) + overlap

const gridProblem = ({ columns, rows, along }: Grid, drawing: Drawing, { shop, lengths }: Order) => {
  const roll = 'roll' in shop.paper.sheet
  const at = { place: roll ? 'shop.paper.roll' : 'shop.paper.size', given: `${drawing.title}` }
  if (along > LONGEST_PAGE) {
    return {
      ...at,
      advice: `It would be ${showLength(along, lengths)} long; a PDF page can be ${showLength(mm(LONGEST_PAGE), lengths)} (ISO 32000). Make the star smaller.`,
    }
  }
  if (columns * rows > MOST_PAGES) {
    return {
      ...at,
      advice: `It would take ${columns * rows} sheets; allowed: up to ${MOST_PAGES}. Use larger paper${roll ? '' : ' or a roll'}.`,
    }
  }
  return undefined
}

const pagesOf = ({ grid, shapes }: Part, drawing: Drawing, order: Order): Page[] =>
  Array.from({ length: grid.rows * grid.columns }, (_, index) => {
    const [row, column] = [Math.floor(index / grid.columns), index % grid.columns]
    return { ...pageAt(grid, row, column, drawing, order), shapes }
  })

const pageAt = (
  grid: Grid,
  row: number,
  column: number,
  drawing: Drawing,
  order: Order,
): Omit<Page, 'shapes'> => {
  const { across, along, margin, windowAcross, windowAlong, overlap, origin, rows } = grid
  const window = {
    min: point(margin, margin + STRIP_HEIGHT),
    max: point(margin + windowAcross, margin + STRIP_HEIGHT + windowAlong),
  }
  const corner = point(
    origin.x + column * (windowAcross - overlap),
    origin.y + (rows - 1 - row) * (windowAlong - overlap),
  )
  const shift = point(window.min.x - corner.x, window.min.y - corner.y)
  return {
    name: nameIn(grid, row, column),
    across,
    along,
    window,
    shift,
    furniture: [
      ...furniture(grid, row, column, drawing.title, order),
      ...registerMarks(grid, row, column, shift),
    ],
  }
}
