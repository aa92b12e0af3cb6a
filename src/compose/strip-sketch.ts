import type { Board } from '../order/order.js'
import type { CutStrip } from '../stock/cut-board.js'
import { isSquare } from './stock-words.js'

/** Signs of the sketch: leaning and square cuts, waste, unsound wood, offcut. */
export const SKETCH_KEY = '/ or | a cut, A B ... blanks, : waste, # unsound, . offcut'

/**
 * A strip as a line of text to scale, as it lies at the saw, its first end on the right and the fence above:
 * `[....../ A /##::/ A / A /]`.
 *
 * @param columns the whole line's width
 * @param longest the length that the whole line stands for
 */
export const stripSketch = (
  board: Board,
  { blanks, cuts, offcut }: CutStrip,
  columns: number,
  longest: number,
): string => {
  const scale = (columns - 2) / longest
  const width = Math.max(1, Math.round(board.length * scale))
  const column = (at: number): number => Math.min(width - 1, Math.floor(at * scale))
  const cells: string[] = Array.from({ length: width }, (_, at) =>
    at < Math.round(offcut.from * scale) ? ':' : '.',
  )
  for (const { kind, from, to } of blanks) {
    const [first, last] = [column(from), Math.max(column(from), column(to) - 1)]
    cells.fill(' ', first, last + 1)
    const middle = Math.ceil((first + last) / 2)
    cells[middle] = kind.letter.charAt(0)
  }
  for (const { from, to } of board.defects) {
    cells.fill('#', column(from), Math.max(column(from) + 1, column(to)))
  }
  for (const { at, kind } of cuts) {
    const cell = column(at)
    if (' .:'.includes(cells[cell] ?? '#')) cells[cell] = isSquare(kind.plan) ? '|' : '/'
  }
  return `[${cells.toReversed().join('')}]`
}
