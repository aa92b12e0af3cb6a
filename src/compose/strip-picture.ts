import { SMALL, textWidth } from '../drawing/lettering.js'
import type { Shape } from '../drawing/model.js'
import { centredLabel, line, path } from '../drawing/shapes.js'
import { hatch } from '../geometry/hatch.js'
import { closedOutline } from '../geometry/outline.js'
import { type Point, point } from '../geometry/point.js'
import type { Board } from '../order/order.js'
import type { CutStrip, LaidBlank } from '../stock/cut-board.js'
import { mm, radians } from '../units/convert.js'
import { type LengthStyle, showLength } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'
import type { Block } from './card-blocks.js'

/** The scales of drawings of long things (ISO 5455 and the halves between): one over these. */
const SCALES = [1, 2, 2.5, 5, 7.5, 10, 12.5, 15, 20, 25, 30, 40, 50, 75, 100, 150]

/** The largest scale, as what a length is divided by, at which the longest board has room. */
export const pictureScale = (boards: readonly Board[], width: number): number => {
  const longest = Math.max(...boards.map(({ length }) => length))
  return SCALES.find((scale) => longest / scale <= width) ?? longest / width
}

/**
 * A strip of a board to scale as it lies at the saw, seen by its operator as on the shop card: the fence's edge above, the
 * first end on the right, where the stop is. Every blank with its letter, every cut, unsound wood hatched, what is ripped
 * off dashed.
 */
export const stripPicture = (
  board: Board,
  strip: CutStrip,
  rippedOff: number,
  scale: number,
  lengths: LengthStyle,
): Block => {
  const height = (strip.width + rippedOff) / scale
  const at = (x: number, y: number): Point => point(markAt(x, board, scale), -y / scale)
  const box = (left: number, right: number, low: number, high: number) =>
    closedOutline([at(right, high), at(left, high), at(left, low), at(right, low)])
  const slant = (blank: LaidBlank, x: number): Shape =>
    line('PATTERN', at(x, 0), at(x + blank.slant, strip.width), 'narrow')
  return {
    height,
    shapes: [
      path('PATTERN', box(0, board.length, 0, strip.width)),
      ...(rippedOff < SHOP
        ? []
        : [path('GUIDE', box(0, board.length, strip.width, strip.width + rippedOff), 'dashed')]),
      ...board.defects.flatMap(({ from, to }) =>
        hatch(box(from, to, 0, strip.width).vertices, radians(-Math.PI / 4), 1).map(([a, b]) =>
          line('NOTE', a, b),
        ),
      ),
      ...board.defects.map(({ from, to }) => path('NOTE', box(from, to, 0, strip.width), 'narrow')),
      ...strip.blanks.flatMap((blank) => [
        ...(blank.trimmed ? [slant(blank, blank.from)] : []),
        ...(blank.cutOff ? [slant(blank, blank.to)] : []),
        ...letter(blank, strip, at),
      ]),
      ...offcutLabel(board, strip, at, lengths),
    ],
  }
}

/** Where a distance from the first end is drawn, from the picture's left edge on. */
export const markAt = (distance: number, { length }: Board, scale: number): number =>
  (length - distance) / scale

const letter = (
  { kind, from, to, slant }: LaidBlank,
  strip: CutStrip,
  at: (x: number, y: number) => Point,
): Shape[] => {
  const middle = at((from + to + slant) / 2, strip.width / 2)
  const room = at(from, 0).x - at(to, 0).x
  return textWidth(kind.letter, SMALL) < room - 0.6
    ? [centredLabel(kind.letter, middle, { height: SMALL })]
    : []
}

const offcutLabel = (
  board: Board,
  { offcut, blanks, width }: CutStrip,
  at: (x: number, y: number) => Point,
  lengths: LengthStyle,
): Shape[] => {
  const from = offcut.from + (blanks.at(-1)?.slant ?? 0)
  const unsound = board.defects.filter(({ to }) => to > offcut.from)
  const text = `offcut ${showLength(offcut.length, lengths)}`
  const room = at(from, 0).x - at(board.length, 0).x
  return unsound.length === 0 && textWidth(text, mm(SMALL)) < room - 2
    ? [centredLabel(text, at((from + board.length) / 2, width / 2), { height: SMALL })]
    : []
}
