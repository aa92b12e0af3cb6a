import { SMALL, wrapText } from '../drawing/lettering.js'
import type { Shape } from '../drawing/model.js'
import { label, path } from '../drawing/shapes.js'
import type { Furniture } from '../furniture/furniture-set.js'
import { fillSlots } from '../furniture/slots.js'
import { closedOutline } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import { PRINT_CHECK_LENGTHS } from '../order/fields.js'
import type { Order, PrintedCheck } from '../order/order.js'
import type { Mm } from '../units/brand.js'
import { inches, mm, toInches } from '../units/convert.js'
import { fixed, type LengthStyle, showLength, showNumber, trimmed } from '../units/show.js'
import { toStep } from '../units/step.js'
import type { PageFurniture } from './page.js'
import { type Sheet, windowSize } from './sheet.js'
import { BOX_HEIGHT, CHECK_WIDTH, GAP, inOneRow, MAP_WIDTH } from './strip-room.js'

/** What the title block says of one sheet (fields after ISO 7200). */
export interface SheetTitle {
  readonly title: string
  readonly documentType: string
  /** The sheet's own name, `2B`, and how many there are. */
  readonly sheet: string
  readonly sheets: number
}

/** The title of one of so many sheets of a drawing, and which others show the rest: `arm pattern, see S1`. */
export const among = (title: SheetTitle, sheets: number, others: readonly string[]): SheetTitle => ({
  ...title,
  sheets,
  documentType: [title.documentType, ...(others.length > 0 ? [`see ${others.join(', ')}`] : [])].join(', '),
})

export interface Strip extends PageFurniture {
  /** Lower left corner of the square for a page map. */
  readonly map: { readonly x: number; readonly y: number }
}

/** ISO 5455: full size. */
const FULL_SIZE = '1:1'

/** Heights of what is said of the printer: the first in which it takes no more rows than its room holds. */
const LOWEST = mm(1.8)
const CORRECTION_HEIGHTS = [SMALL, LOWEST]
const CORRECTION_ROWS = 2
/** From row to row, over the height of a capital: clear of tails. */
const ROW_PITCH = 1.4

/** The frame of a sheet's window, and below it scale check, caution, room for the page map, title block, any correction. */
export const strip = (sheet: Sheet, title: SheetTitle, order: Order, furniture: Furniture): Strip => {
  const { margin, window } = sheet
  const right = sheet.across - margin
  const oneRow = inOneRow(right - margin)
  const { caution } = furniture
  const check = fillSlots(furniture.scaleCheck, {
    frame: frameText(sheet, order.lengths),
  })
  const block = fillSlots(furniture.titleBlock, {
    title: title.title,
    'supplementary-title': order.title,
    'document-type': title.documentType,
    sheet: title.sheet,
    sheets: String(title.sheets),
    scale: FULL_SIZE,
    date: order.date ?? '',
    creator: order.creator ?? '',
  })
  const blockAt = point(right - block.across, margin + (oneRow ? 0 : BOX_HEIGHT + GAP))
  const mapX = oneRow ? blockAt.x - GAP - MAP_WIDTH : margin + CHECK_WIDTH + GAP
  return {
    shapes: [frame(sheet), ...correction(order, windowSize(sheet).across, window.min)],
    artwork: [
      { artwork: caution, at: point(margin, margin) },
      { artwork: check, at: point(margin, margin + BOX_HEIGHT - check.height) },
      { artwork: block, at: blockAt },
    ],
    map: { x: mapX, y: margin },
  }
}

/** The window's frame, to be measured both ways: `Frame 190.0 × 251.0 mm`. */
const frameText = (sheet: Sheet, lengths: LengthStyle): string => {
  const { across, along } = windowSize(sheet)
  const show = (length: number): string =>
    lengths.units === 'mm' ? fixed(length, 1) : showNumber(mm(length), { units: 'in', nearest: 64 })
  return `Frame ${show(across)} × ${show(along)} ${lengths.units}`
}

const correction = ({ shop, lengths }: Order, across: number, window: { x: number; y: number }): Shape[] => {
  const { printed } = shop.paper
  if (!printed) return []
  const text = correctionText(printed, lengths)
  const rowsOf = (height: Mm): string[] => wrapText(text, height, mm(across))
  const height = CORRECTION_HEIGHTS.find((each) => rowsOf(each).length <= CORRECTION_ROWS) ?? LOWEST
  return rowsOf(height).map((row, index) =>
    label(row, point(window.x, window.y - GAP - height * (1 + index * ROW_PITCH)), { height }),
  )
}

/** The frame of the window: measure it to prove the scale both ways. */
const frame = ({ window: { min, max } }: Sheet): Shape =>
  path('GUIDE', closedOutline([min, point(max.x, min.y), max, point(min.x, max.y)]))

/** How far a reading may be off on each ruler, as the print check asks for it: half a millimetre, or 1/64 in. */
const READINGS: readonly { readonly of: Mm; readonly off: Mm; readonly words: string }[] = [
  { of: PRINT_CHECK_LENGTHS.mm, off: mm(0.5), words: 'half a millimetre' },
  { of: PRINT_CHECK_LENGTHS.in, off: inches(1 / 64), words: '1/64 in' },
]

/** What was corrected, and what the readings leave open: a share of the length, the larger of the two ways. */
export const correctionText = ({ across, along }: PrintedCheck, lengths: LengthStyle): string => {
  const read = ({ measured, of }: PrintedCheck['across']): string =>
    of === PRINT_CHECK_LENGTHS.mm
      ? `${trimmed(measured, 2)} for ${trimmed(of, 2)} mm`
      : `${trimmed(toInches(measured), 3)} for ${trimmed(toInches(of), 3)} in`
  const used = READINGS.filter(({ of }) => of === across.of || of === along.of)
  const sample = lengths.units === 'mm' ? mm(100) : inches(4)
  const off = Math.max(...used.map((reading) => (reading.off * sample) / reading.of))
  const open =
    lengths.units === 'mm'
      ? `${fixed(toStep(off, 0.1, Math.ceil), 1)} mm`
      : `${fixed(toStep(toInches(mm(off)), 0.001, Math.ceil), 3)} in`
  const fineness = used.map(({ words }) => words).join(' and ')
  return `Corrected for a printer that makes ${read(across)} across the print check and ${read(along)} along it. As they were read to ${fineness}, ${showLength(sample, lengths)} on this sheet may still be off by ${open}.`
}
