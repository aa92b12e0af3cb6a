import { drawingExtents } from '../drawing/bounds.js'
import type { Drawing } from '../drawing/model.js'
import { point } from '../geometry/point.js'
import type { Order, Paper } from '../order/order.js'
import { done, type Outcome, refused } from '../order/problem.js'
import { paperSize } from '../tables/paper.js'
import type { Mm } from '../units/brand.js'
import { mm, points, toMm } from '../units/convert.js'
import { showLength } from '../units/show.js'
import { furniture, STRIP_HEIGHT } from './furniture.js'
import { type Grid, pageName } from './grid.js'
import type { Page, PrintedDrawing } from './page.js'
import { registerMarks } from './register-marks.js'

/** White around the drawing inside the window. */
const PADDING = 2
/** More sheets than anyone will tape together. */
const MOST_PAGES = 400
/** ISO 32000-1, Annex C.2: the largest page readers must accept is 14 400 units. */
const LONGEST_PAGE = toMm(points(14_400))

/** Lays a drawing on the order's paper, upright or on its side, whichever takes fewer sheets. */
export const layOnPaper = (drawing: Drawing, order: Order): Outcome<PrintedDrawing> => {
  const { paper } = order.shop
  const { min, max } = drawingExtents(drawing)
  const needAcross = max.x - min.x + 2 * PADDING
  const needAlong = max.y - min.y + 2 * PADDING
  const choices = sheets(paper, needAlong).map(([across, along]) => {
    const windowAcross = across - 2 * paper.margin
    const windowAlong = along - 2 * paper.margin - STRIP_HEIGHT
    const columns = sheetsFor(needAcross, windowAcross, paper.overlap)
    const rows = sheetsFor(needAlong, windowAlong, paper.overlap)
    const origin = point(
      (min.x + max.x - spanOf(columns, windowAcross, paper.overlap)) / 2,
      (min.y + max.y - spanOf(rows, windowAlong, paper.overlap)) / 2,
    )
    const { margin, overlap } = paper
    return { across, along, columns, rows, windowAcross, windowAlong, margin, overlap, origin }
  })
  const grid = choices.reduce((best, next) =>
    next.columns * next.rows < best.columns * best.rows ? next : best,
  )
  const problem = gridProblem(grid, drawing, order)
  if (problem) return refused([problem])
  return done({ drawing, pages: pagesOf(grid, drawing, order) })
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

const pagesOf = (grid: Grid, drawing: Drawing, order: Order): Page[] =>
  Array.from({ length: grid.rows * grid.columns }, (_, index) => {
    const [row, column] = [Math.floor(index / grid.columns), index % grid.columns]
    return pageAt(grid, row, column, drawing, order)
  })

const pageAt = (grid: Grid, row: number, column: number, drawing: Drawing, order: Order): Page => {
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
    name: pageName(row, column),
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
