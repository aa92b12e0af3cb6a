import { SMALL, textWidth, wrapText } from '../drawing/lettering.js'
import type { Label, Shape } from '../drawing/model.js'
import { centredLabel, label, line, path } from '../drawing/shapes.js'
import { closedOutline } from '../geometry/outline.js'
import { type Point, point } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import type { Mm } from '../units/brand.js'
import { inches, mm } from '../units/convert.js'
import { fixed, showNumber } from '../units/show.js'
import { type Grid, pageName } from './grid.js'

/** Kept free under the window for the scale check and the page's name. */
export const STRIP_HEIGHT = 24

const RULER_LENGTH = 100
const RULER_INCHES = 4
const TEXT_GAP = 8
/** ISO 3098: the smallest lettering. */
const SMALLEST = mm(1.8)

/** The frame around the window, the scale check, the page's name and its neighbours. */
export const furniture = (grid: Grid, row: number, column: number, title: string, order: Order): Shape[] => {
  const { margin, windowAcross, windowAlong } = grid
  const corner = point(margin, margin)
  const bottom = margin + STRIP_HEIGHT
  const frame = [
    point(margin, bottom),
    point(margin + windowAcross, bottom),
    point(margin + windowAcross, bottom + windowAlong),
    point(margin, bottom + windowAlong),
  ]
  return [
    path('GUIDE', closedOutline(frame)),
    ...seams(grid, row, column),
    ...pageText(grid, row, column, title, order, corner),
    ...scaleCheck(point(margin, margin + 8)),
  ]
}

/** Where the neighbour's frame lies on this page: the edge to trim or to lay on. */
const seams = (
  { margin, windowAcross, windowAlong, overlap, rows, columns }: Grid,
  row: number,
  column: number,
): Shape[] => {
  const bottom = margin + STRIP_HEIGHT
  const upright = (x: number) => line('GUIDE', point(x, bottom), point(x, bottom + windowAlong), 'dashed')
  const level = (y: number) => line('GUIDE', point(margin, y), point(margin + windowAcross, y), 'dashed')
  return [
    ...(column > 0 ? [upright(margin + overlap)] : []),
    ...(column < columns - 1 ? [upright(margin + windowAcross - overlap)] : []),
    ...(row < rows - 1 ? [level(bottom + overlap)] : []),
    ...(row > 0 ? [level(bottom + windowAlong - overlap)] : []),
  ]
}

const pageText = (
  grid: Grid,
  row: number,
  column: number,
  title: string,
  order: Order,
  corner: Point,
): Shape[] => {
  const { windowAcross, windowAlong } = grid
  const left = corner.x + inches(RULER_INCHES) + TEXT_GAP
  const room = mm(corner.x + windowAcross - left)
  const frameSize = `${frameNumber(windowAcross, order)} × ${frameNumber(windowAlong, order)} ${order.lengths.units}`
  const rest = [
    pageLine(grid, row, column),
    ...neighbours(grid, row, column),
    `Scale 1:1. Frame ${frameSize}`,
    'Hands 100 mm (4 in) off the blade',
  ]
  const fitting =
    [SMALL, SMALLEST].find((height) => rest.every((text) => textWidth(text, height) <= room)) ?? SMALLEST
  return [
    heading(title, order.title, mm(windowAcross), point(corner.x, corner.y + STRIP_HEIGHT - 5)),
    ...rest.map((text, index) => label(text, point(left, corner.y + 13 - index * 4.2), { height: fitting })),
  ]
}

/** `Page 2B, 4 sheets: 2 down, 2 across`, and the sheet of words when there is one. */
const pageLine = ({ rows, columns, words }: Grid, row: number, column: number): string => {
  if (words === 'only') return 'The words that go with the pattern'
  const sheets =
    rows * columns === 1 ? 'one sheet' : `${rows * columns} sheets: ${rows} down, ${columns} across`
  return `Page ${pageName(row, column)}, ${sheets}${words === 'apart' ? ', and one of words' : ''}`
}

/** The drawing's title, and the order's after it where there is room. */
const heading = (title: string, orderTitle: string, room: Mm, at: Point): Label => {
  const fits = (text: string, height: Mm) => textWidth(text, height) <= room
  const both = `${title} · ${orderTitle}`
  for (const height of [SMALL, SMALLEST]) {
    if (fits(both, height)) return label(both, at, { height })
    if (fits(title, height)) return label(title, at, { height })
  }
  return label(`${wrapText(title, SMALLEST, mm(room - 4))[0]}...`, at, { height: SMALLEST })
}

const frameNumber = (length: number, order: Order): string =>
  order.lengths.units === 'mm' ? fixed(length, 1) : showNumber(mm(length), { units: 'in', nearest: 64 })

/** `Joins: A1 left, A3 right, B2 below`, or nothing on a single sheet. */
const neighbours = ({ rows, columns }: Grid, row: number, column: number): string[] => {
  const names = [
    ...(column > 0 ? [`${pageName(row, column - 1)} left`] : []),
    ...(column < columns - 1 ? [`${pageName(row, column + 1)} right`] : []),
    ...(row > 0 ? [`${pageName(row - 1, column)} above`] : []),
    ...(row < rows - 1 ? [`${pageName(row + 1, column)} below`] : []),
  ]
  return names.length === 0 ? [] : [`Joins ${names.join(', ')}`]
}

/** A bar to lay a ruler on: 100 mm marked above it, 4 inches below, both from its left end. */
const scaleCheck = (left: Point): Shape[] => {
  const at = (distance: number, height: number): Point => point(left.x + distance, left.y + height)
  const metric = Array.from({ length: 21 }, (_, step) => {
    const distance = (step * RULER_LENGTH) / 20
    return line('NOTE', at(distance, 0), at(distance, step % 10 === 0 ? 3.2 : step % 2 === 0 ? 2.4 : 1.4))
  })
  const imperial = Array.from({ length: 2 * RULER_INCHES + 1 }, (_, step) => {
    const distance = inches(step / 2)
    return line('NOTE', at(distance, 0), at(distance, step % 2 === 0 ? -2.6 : -1.6))
  })
  const figure = (text: string, distance: number, middle: number) =>
    centredLabel(text, at(distance, middle), { height: SMALLEST })
  return [
    line('NOTE', at(0, 0), at(inches(RULER_INCHES), 0)),
    ...metric,
    ...imperial,
    label('0', at(0, 4.4), { height: SMALLEST }),
    figure('50', RULER_LENGTH / 2, 5.3),
    label('scale check: 100 mm', at(RULER_LENGTH, 4.4), { height: SMALLEST, anchor: 'end' }),
    label('0', at(0, -5.4), { height: SMALLEST }),
    figure('2', inches(2), -4.5),
    label('4 in', at(inches(RULER_INCHES), -5.4), { height: SMALLEST, anchor: 'end' }),
  ]
}
