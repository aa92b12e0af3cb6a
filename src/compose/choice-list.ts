import type { Choice, Choices } from '../choose/choices.js'
import type { Order } from '../order/order.js'
import { SAW_CAUTION } from './cautions.js'
import { countOf } from './chance-words.js'
import { comparisonRows, difficultyWords, kindText, sawWords, sizeWords, woodWords } from './choice-words.js'
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

const footText = (listed: number, { found, beyondSaw, ownLeftOut }: Choices): string =>
  [
    found.length > listed ? `${found.length - listed} more: --most ${found.length}.` : '',
    beyondSaw === 0
      ? ''
      : `${countOf(beyondSaw, 'kind')} of star left out: the saw without a wedge, the boards or the room do not allow them, or their arms are too small for a miter saw.`,
    ownLeftOut.length === 0 ? '' : `Left out for the same reasons, of your order: ${ownLeftOut.join(', ')}.`,
    '"Close on marks, scale true": set on the nearest marks of a saw whose scale has no error, with cuts that repeat as the order says; starwright risk counts the scale too.',
    'Compare two with --compare and their numbers or names; starwright plan gives the cuts.',
  ]
    .filter(Boolean)
    .join(' ')

const choiceLines = (choice: Choice, number: number, order: Order): string[] => {
  const { lengths } = order
  const words = [
    `${kindText(choice)}; ${sizeWords(choice, lengths)}`,
    sawWords(choice, lengths),
    woodWords(choice, lengths),
    difficultyWords(choice, lengths),
  ]
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
