import type { CutBoard, CutStrip } from '../stock/cut-board.js'
import type { StockPlan } from '../stock/stock.js'
import { fixed, type LengthStyle, showLength } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'
import { SAW_CAUTION } from './cautions.js'
import { QUOTATION_NOTE, QUOTATION_TITLE, quotationTable } from './quotation-table.js'
import {
  type BlankRun,
  blankRuns,
  blankText,
  boardsTaken,
  boardText,
  crosscutText,
  drawnText,
  markText,
  metalLines,
  narrowerText,
  offcutText,
  percentText,
  planedText,
  slotText,
  takenText,
  verdictText,
} from './stock-words.js'
import { SKETCH_KEY, stripSketch } from './strip-sketch.js'
import { row, table, titled, WIDTH } from './text-rows.js'
import { wrapColumns } from './wrap-columns.js'

/** Which boards to take and where to cut them, to read at the rack and at the saw, and what each star costs. */
export const cuttingList = (stock: StockPlan): string => {
  const { plan, boards } = stock
  const { lengths, title } = plan.order
  const count = boards.reduce((sum, { times }) => sum + times, 0)
  let first = 1
  const cards = boards.flatMap((board) => {
    const card = boardCard(board, first, count, longestOf(boards), lengths)
    first += board.times
    return [...card, '']
  })
  return [
    ...titled(`${title}: boards`, '='),
    ...row('Take', `${takenText(stock)}; ${percentText(stock.yield)} of the wood becomes star.`),
    ...row('', verdictText(stock)),
    ...boardsTaken(boards).flatMap(({ board, number, times }) =>
      row('', `${times} × ${boardText({ board, number }, lengths)}${priceText(board.price, times)}`),
    ),
    ...unpricedNote(stock),
    '',
    ...kindRows(stock),
    '',
    ...wrapColumns(`${drawnText} ${slotText}${endText(stock)}`, WIDTH, 0),
    SKETCH_KEY,
    ...metalLines(boards).flatMap((text) => wrapColumns(`! ${text}`, WIDTH, 2)),
    '',
    ...cards,
    ...quotation(stock),
    '',
    ...wrapColumns(`Safety: ${SAW_CAUTION}`, WIDTH, 0),
    '',
  ].join('\n')
}

const endText = ({ plan: { order } }: StockPlan): string =>
  order.shop.endAllowance > 0
    ? ` The first ${showLength(order.shop.endAllowance, order.lengths)} of each board are kept free.`
    : ''

const longestOf = (boards: readonly CutBoard[]): number =>
  Math.max(...boards.map(({ board }) => board.length))

const priceText = (price: number | undefined, times: number): string =>
  price === undefined ? '' : `, price ${fixed(price * times, 2)}`

const unpricedNote = ({ boards, priced }: StockPlan): string[] =>
  priced && boards.some(({ board }) => board.price === undefined)
    ? row('', 'Boards without a price are taken to be yours already: they cost nothing here.')
    : []

const kindRows = ({ kinds, plan: { order } }: StockPlan): string[] =>
  kinds.flatMap((kind) => row(`Blank ${kind.letter}`, blankText(kind, order.lengths)))

const boardCard = (
  cut: CutBoard,
  first: number,
  count: number,
  longest: number,
  lengths: LengthStyle,
): string[] => {
  const which =
    cut.times === 1
      ? `Board ${first} of ${count}`
      : `Boards ${first} to ${first + cut.times - 1} of ${count}, cut alike`
  return [
    ...titled(`${which}: ${boardText(cut, lengths)}`, '-'),
    ...cut.strips.flatMap((strip, index) => stripLines(cut, strip, index, longest, lengths)),
  ]
}

const stripLines = (
  cut: CutBoard,
  strip: CutStrip,
  index: number,
  longest: number,
  lengths: LengthStyle,
): string[] => [
  stripSketch(cut.board, strip, WIDTH, longest),
  ...ripRow(cut, strip, index, lengths),
  ...blankRuns(strip).flatMap((run) => runRow(run, lengths)),
  ...noteRow(planedText(cut.board, strip, lengths)),
  ...noteRow(narrowerText(strip)),
  ...row('Offcut', offcutText(strip, lengths)),
]

const noteRow = (note: string | undefined): string[] => (note === undefined ? [] : row('Note', note))

const ripRow = (
  { strips, rippedOff }: CutBoard,
  { width }: CutStrip,
  index: number,
  lengths: LengthStyle,
): string[] => {
  const show = (length: typeof width) => showLength(length, lengths)
  if (strips.length > 1) return row('Strip', `${index + 1} of ${strips.length}, ripped to ${show(width)}`)
  return rippedOff < SHOP ? [] : row('Rip', `to ${show(width)}; ${show(rippedOff)} comes off`)
}

const runRow = ({ kind, blanks }: BlankRun, lengths: LengthStyle): string[] => {
  const [first] = blanks
  const trim = first?.trimmed ? `trim ${markText(first.from, lengths)}, ` : ''
  const marks = blanks.filter(({ cutOff }) => cutOff).map(({ to }) => markText(to, lengths))
  const freed = blanks.some(({ cutOff }) => !cutOff) ? ' (the next trim sets the last one free)' : ''
  return row(
    `${blanks.length} × ${kind.letter}`,
    `${crosscutText(kind)}: ${trim}then ${marks.join(', ')} ${lengths.units}${freed}`,
  )
}

const quotation = (stock: StockPlan): string[] => {
  const rows = quotationTable(stock).map(([name, ...figures]) => [`  ${name}`, ...figures])
  return [
    ...titled(QUOTATION_TITLE, '-'),
    ...wrapColumns(QUOTATION_NOTE, WIDTH, 0),
    ...table(rows, new Set([1, 2, 3, 4, 5, 6, 7])),
  ]
}
