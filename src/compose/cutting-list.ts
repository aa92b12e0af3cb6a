import type { CutBoard, CutStrip } from '../stock/cut-board.js'
import type { StarCost } from '../stock/quotation.js'
import type { StockPlan } from '../stock/stock.js'
import { fixed, type LengthStyle, showLength } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'
import { SAW_CAUTION } from './cautions.js'
import {
  areaText,
  type BlankRun,
  blankRuns,
  boardsTaken,
  boardText,
  crosscutText,
  kindNames,
  markText,
  narrowerText,
  offcutText,
  percentText,
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
    ...wrapColumns(
      `Lay each board's first end to the left, its lower edge on the fence. Hook the tape once: every distance runs from that end along the fence's edge. The blade stands behind the mark (further from the end), at a trim before it.${stock.plan.order.shop.endAllowance > 0 ? ` The first ${showLength(stock.plan.order.shop.endAllowance, lengths)} of each board are kept free.` : ''}`,
      WIDTH,
      0,
    ),
    SKETCH_KEY,
    '',
    ...cards,
    ...quotation(stock),
    '',
    ...wrapColumns(`Safety: ${SAW_CAUTION}`, WIDTH, 0),
    '',
  ].join('\n')
}

const longestOf = (boards: readonly CutBoard[]): number =>
  Math.max(...boards.map(({ board }) => board.length))

const priceText = (price: number | undefined, times: number): string =>
  price === undefined ? '' : `, price ${fixed(price * times, 2)}`

const unpricedNote = ({ boards, priced }: StockPlan): string[] =>
  priced && boards.some(({ board }) => board.price === undefined)
    ? row('', 'Boards without a price are taken to be yours already: they cost nothing here.')
    : []

const kindRows = ({ kinds, plan: { order } }: StockPlan): string[] =>
  kinds.flatMap((kind) => {
    const { star, blank } = kind.plan
    const show = (length: typeof blank.side) => showLength(length, order.lengths)
    return row(
      `Blank ${kind.letter}`,
      `${kindNames(kind)}: ${kind.count} arms, ${show(star.armStrip)} wide, ${show(blank.side)} along the edge, ${crosscutText(kind)}`,
    )
  })

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
  return rippedOff < SHOP ? [] : row('Rip', `to ${show(width)}; ${show(rippedOff)} is left over`)
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

const quotation = ({ stars, priced, plan: { order } }: StockPlan): string[] => {
  const money = (amount: number | undefined): string => (amount === undefined ? '-' : fixed(amount, 2))
  const isPriced = ({ boards, panel, hardware }: StarCost): boolean =>
    [boards, panel, hardware].some((part) => part !== undefined)
  const all = (cost: StarCost): number => cost.total * cost.plan.order.quantity
  const rows = stars.map((cost) => [
    `  ${cost.plan.order.name}`,
    String(cost.plan.order.quantity),
    areaText(cost.wood, order.lengths),
    money(priced ? cost.boards : undefined),
    money(cost.panel),
    money(cost.hardware),
    money(isPriced(cost) ? cost.total : undefined),
    money(isPriced(cost) ? all(cost) : undefined),
  ])
  const heading = ['  Star', 'stars', 'wood', 'boards', 'panel', 'hardware', 'one star', 'all of them']
  const sum = [
    '  Together',
    '',
    '',
    '',
    '',
    '',
    '',
    money(stars.reduce((total, cost) => total + all(cost), 0)),
  ]
  return [
    ...titled('What a star costs', '-'),
    ...wrapColumns(
      'Each star pays its share of its boards, offcuts included, and of a panel cut up in rows. Work, power and profit are yours to add.',
      WIDTH,
      0,
    ),
    ...table([heading, ...rows, ...(stars.length > 1 ? [sum] : [])], new Set([1, 2, 3, 4, 5, 6, 7])),
  ]
}
