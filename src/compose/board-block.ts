import { MEDIUM, SMALL } from '../drawing/lettering.js'
import { point } from '../geometry/point.js'
import type { StarPlan } from '../plan/plan.js'
import type { CutBoard, CutStrip } from '../stock/cut-board.js'
import type { StockPlan } from '../stock/stock.js'
import { type LengthStyle, showLength } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'
import { type Block, lineBlock, movedShapes, stacked, textBlock } from './card-blocks.js'
import { type Mark, markLabels } from './mark-labels.js'
import {
  blankRuns,
  boardText,
  crosscutText,
  markText,
  narrowerText,
  offcutText,
  planedText,
} from './stock-words.js'
import { markAt, pictureScale, stripPicture } from './strip-picture.js'

/** Where a board stands among those that are taken, counted from 1. */
export interface BoardPlace {
  readonly first: number
  readonly count: number
}

export const placeText = ({ times }: CutBoard, { first, count }: BoardPlace): string =>
  times === 1
    ? `Board ${first} of ${count}`
    : `Boards ${first} to ${first + times - 1} of ${count}, cut alike`

/** One board of the cutting list: its strips to scale with every mark, the saw's settings, the offcut. */
export const boardBlock = (
  cut: CutBoard,
  place: BoardPlace,
  scale: number,
  width: number,
  lengths: LengthStyle,
): Block =>
  stacked(
    [
      lineBlock([`${placeText(cut, place)}: ${boardText(cut, lengths)}`], MEDIUM, 'PATTERN'),
      ...cut.strips.map((strip, index) => stripBlock(cut, strip, index, scale, width, lengths)),
    ],
    1.5,
  )

const stripBlock = (
  cut: CutBoard,
  strip: CutStrip,
  index: number,
  scale: number,
  width: number,
  lengths: LengthStyle,
): Block => {
  const rippedOff = cut.strips.length > 1 ? 0 : cut.rippedOff
  const picture = stripPicture(cut.board, strip, rippedOff, scale, lengths)
  const marks = strip.cuts.map(
    ({ at, slot }): Mark => ({
      x: markAt(at, cut.board, scale),
      text: `${slot === 'before' ? 'T ' : ''}${markText(at, lengths)}`,
    }),
  )
  const labels = markLabels(marks.toReversed(), width)
  const pictured: Block = labels
    ? {
        height: labels.height + picture.height,
        shapes: movedShapes([...labels.shapes, ...picture.shapes], point(0, -labels.height)),
      }
    : stacked([textBlock([marks.map(({ text }) => text).join(', ')], SMALL, width), picture], 1.1)
  return stacked([textBlock([stripText(cut, strip, index, lengths)], SMALL, width), pictured], 1.5)
}

const stripText = (
  { board, strips, rippedOff }: CutBoard,
  strip: CutStrip,
  index: number,
  lengths: LengthStyle,
): string => {
  const ripped =
    strips.length > 1
      ? `Strip ${index + 1} of ${strips.length}, ripped to ${showLength(strip.width, lengths)}. `
      : rippedOff < SHOP
        ? ''
        : `Ripped to ${showLength(strip.width, lengths)}. `
  const runs = blankRuns(strip).map(
    ({ kind, blanks }) => `${blanks.length} × ${kind.letter}, ${crosscutText(kind)}`,
  )
  const notes = [planedText(board, strip, lengths), narrowerText(strip)]
  return `${ripped}${runs.join('; ')}. Offcut ${offcutText(strip, lengths)}.${notes.map((note) => (note === undefined ? '' : ` ${note}`)).join('')}`
}

/** The first board that arms of a star are cut from, as a row of its shop card. */
export const firstBoardRow = (
  star: StarPlan,
  { boards, plan }: StockPlan,
  width: number,
): Block | undefined => {
  const count = boards.reduce((sum, { times }) => sum + times, 0)
  const isOfStar = ({ blanks }: CutStrip): boolean => blanks.some(({ kind }) => kind.stars.includes(star))
  const cut = boards.find(({ strips }) => strips.some(isOfStar))
  const strip = cut?.strips.find(isOfStar)
  const kind = strip?.blanks.find(({ kind }) => kind.stars.includes(star))?.kind
  if (!cut || !strip || !kind) return undefined
  const { lengths } = plan.order
  const first = boards.slice(0, boards.indexOf(cut)).reduce((sum, { times }) => sum + times, 1)
  const scale = pictureScale([cut.board], width)
  return stacked(
    [
      textBlock(
        [
          `${placeText(cut, { first, count })}, 1 : ${scale}; blanks of this star: ${kind.letter}; all marks in the cutting list`,
        ],
        SMALL,
        width,
      ),
      stripPicture(cut.board, strip, 0, scale, lengths),
    ],
    1,
  )
}
