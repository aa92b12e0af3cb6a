import { SMALL, textWidth, wrapText } from '../drawing/lettering.js'
import type { Shape } from '../drawing/model.js'
import { label, line } from '../drawing/shapes.js'
import { point } from '../geometry/point.js'
import type { StockPlan } from '../stock/stock.js'
import { mm } from '../units/convert.js'
import { type Block, headingBlock, lineBlock, linesHeight, stacked, textBlock } from './card-blocks.js'
import { QUOTATION_NOTE, QUOTATION_TITLE, quotationTable } from './quotation-table.js'

/** White between two columns, and between two rows. */
const BETWEEN = 4
const ROWS = 1.2
/** Of rows that stand together: some half of a page. */
const MOST_HIGH = 120

/** What each star costs, as a table to quote from; pages may break between its parts. */
export const quotationBlocks = (stock: StockPlan, width: number): Block[] => {
  const [heading = [], ...rows] = quotationTable(stock)
  const figures = columnsOf([heading, ...rows])
  const taken = figures.reduce((sum, each) => sum + each + BETWEEN, 0)
  const names = Math.min(
    width - taken,
    Math.max(...[heading, ...rows].map(([name = '']) => textWidth(name, SMALL))),
  )
  const cells = (row: readonly string[]): Block => tableRow(row, names, figures)
  const rule: Block = {
    height: 0.1,
    shapes: [line('NOTE', point(0, 0), point(names + taken, 0), 'narrow')],
  }
  const above = [headingBlock(QUOTATION_TITLE), textBlock([QUOTATION_NOTE], SMALL, width)]
  return partsOf(rows.map(cells)).map((lines, part) =>
    stacked([...(part === 0 ? above : []), cells(heading), rule, ...lines], ROWS),
  )
}

/** Rows that stand together, not higher than MOST_HIGH. */
const partsOf = (rows: readonly Block[]): Block[][] => {
  const parts: Block[][] = []
  let left = 0
  for (const row of rows) {
    if (left < row.height + ROWS) {
      parts.push([])
      left = MOST_HIGH
    }
    parts.at(-1)?.push(row)
    left -= row.height + ROWS
  }
  return parts
}

/** How wide the columns of figures are. */
const columnsOf = (rows: readonly (readonly string[])[]): number[] =>
  (rows[0] ?? [])
    .slice(1)
    .map((_, column) => Math.max(...rows.map((row) => textWidth(row[column + 1] ?? '', SMALL))))

/** A name, on as many lines as it needs, and figures that stand to the right of their columns. */
const tableRow = (
  [name = '', ...figures]: readonly string[],
  names: number,
  widths: readonly number[],
): Block => {
  const words = lineBlock(wrapText(name, mm(SMALL), mm(names)), SMALL)
  let right = names
  const shapes = figures.flatMap((text, column): Shape[] => {
    right += BETWEEN + (widths[column] ?? 0)
    return text === ''
      ? []
      : [label(text, point(right, -SMALL), { height: SMALL, layer: 'NOTE', anchor: 'end' })]
  })
  return {
    height: Math.max(words.height, linesHeight(1, SMALL)),
    shapes: [...words.shapes, ...shapes],
  }
}
