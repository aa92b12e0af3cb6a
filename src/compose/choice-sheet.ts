import type { Choice } from '../choose/choices.js'
import { notedDrawing } from '../drawing/drawing.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { line, path } from '../drawing/shapes.js'
import { closedOutline } from '../geometry/outline.js'
import { point, scale } from '../geometry/point.js'
import { starOutline } from '../geometry/star.js'
import type { Order } from '../order/order.js'
import { mm } from '../units/convert.js'
import { type Block, lineBlock, movedShapes, stacked, textBlock } from './card-blocks.js'
import { choiceWords } from './choice-words.js'

/** A sheet fits the window of A4 and of Letter with 10 mm margins: two columns of stars. */
const COLUMNS = 2
const CELL = { across: 92, height: 41 }
const PER_SHEET = 12
/** Radius of the pictures: they show the look, not the size. */
const PICTURE = 14
const PADDING = 2.5
const LETTERING = 2.5

/** Small pictures of the stars, each with what it takes, numbered as in the list. */
export const choiceSheets = (
  listed: readonly Choice[],
  order: Order,
  perSheet: number = PER_SHEET,
): Drawing[] =>
  Array.from({ length: Math.ceil(listed.length / perSheet) }, (_, sheet) => {
    const shown = listed.slice(sheet * perSheet, (sheet + 1) * perSheet)
    const rows = Math.ceil(shown.length / COLUMNS)
    return notedDrawing({
      kind: 'choice-sheet',
      title: `Stars to choose from, ${sheet * perSheet + 1} to ${sheet * perSheet + shown.length}`,
      trueSize: { across: mm(COLUMNS * CELL.across), height: mm(rows * CELL.height) },
      figure: shown.flatMap((choice, index) => {
        const corner = point((index % COLUMNS) * CELL.across, -Math.floor(index / COLUMNS) * CELL.height)
        return movedShapes(cell(choice, sheet * perSheet + index + 1, order), corner)
      }),
      asides: [],
      pieces: [],
    })
  })

/** A frame, the picture on its left, the words on its right; the upper left corner is the origin. */
const cell = (choice: Choice, number: number, order: Order): Shape[] => {
  const left = 2 * (PICTURE + PADDING)
  const words = wordsBlock(choice, number, order, CELL.across - left - PADDING)
  return [
    path(
      'NOTE',
      closedOutline([
        point(0, -CELL.height),
        point(CELL.across, -CELL.height),
        point(CELL.across, 0),
        point(0, 0),
      ]),
    ),
    ...movedShapes(picture(choice), point(PADDING + PICTURE, -PADDING - PICTURE)),
    ...movedShapes(words.shapes, point(left, -PADDING)),
  ]
}

const picture = ({ plan: { star } }: Choice): Shape[] => {
  const corners = starOutline(star).vertices.map((corner) => scale(corner, PICTURE / star.radius))
  return [
    path('PATTERN', closedOutline(corners)),
    ...corners.flatMap((corner, index) =>
      index % 2 === 1 ? [line('PATTERN', point(0, 0), corner, 'narrow')] : [],
    ),
  ]
}

const wordsBlock = (choice: Choice, number: number, { lengths }: Order, width: number): Block =>
  stacked(
    [
      lineBlock([`${number}   ${choice.label}`], 4, 'PATTERN'),
      ...choiceWords(choice, lengths).map((text) => textBlock([text], LETTERING, width)),
    ],
    1.2,
  )
