import type { Choice, Choices } from '../choose/choices.js'
import type { Order } from '../order/order.js'
import { SAW_CAUTION } from './cautions.js'
import { choiceWords, comparisonRows, leftOutText, ON_MARKS } from './choice-words.js'
import { starDots } from './star-dots.js'
import { wrapColumns } from './wrap-columns.js'

const WIDTH = 84
/** Lines of each star, and of its picture. */
const LINES = 4

/** The ranked stars as text: a small picture of each, and beside it what it takes. */
export const choiceList = (
  listed: readonly Choice[],
  choices: Choices,
  order: Order,
  rankText: string,
): string =>
  [
    ...wrapColumns(`Stars for this shop, ${rankText}`, WIDTH, 0),
    '',
    ...listed.flatMap((choice, index) => [...choiceLines(choice, index + 1, order), '']),
    ...wrapColumns(footText(listed.length, choices), WIDTH, 0),
    ...wrapColumns(`Safety: ${SAW_CAUTION}`, WIDTH, 0),
    '',
  ].join('\n')

const footText = (listed: number, choices: Choices): string =>
  [
    choices.found.length > listed
      ? `${choices.found.length - listed} more: --most ${choices.found.length}.`
      : '',
    leftOutText(choices),
    ON_MARKS,
    'Compare two with --compare and their numbers or names; starwright plan gives the cuts.',
  ]
    .filter(Boolean)
    .join(' ')

const choiceLines = (choice: Choice, number: number, order: Order): string[] => {
  const words = choiceWords(choice, order.lengths)
  const picture = starDots(choice.plan.star, LINES)
  return words.map((text, line) => {
    const head = line === 0 ? String(number) : ''
    return `${head.padStart(4)}  ${picture[line] ?? ''}  ${text}`
  })
}

/** Two stars beside each other. */
export const comparisonTable = (a: Choice, b: Choice, order: Order): string => {
  const rows = [['', a.label, b.label], ...comparisonRows(a, b, order)]
  const widths = [0, 1, 2].map((column) => Math.max(...rows.map((cells) => (cells[column] ?? '').length)))
  const [left, right] = [starDots(a.plan.star, 6), starDots(b.plan.star, 6)]
  const pictures = left.map((line, index) =>
    `  ${' '.repeat(widths[0] ?? 0)}  ${line.padEnd(widths[1] ?? 0)}  ${right[index] ?? ''}`.trimEnd(),
  )
  const lines = rows.map((cells) =>
    `  ${cells.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ')}`.trimEnd(),
  )
  return [...lines.slice(0, 1), ...pictures, ...lines.slice(1), ''].join('\n')
}
