import { execFileSync } from 'node:child_process'
import { createWriteStream, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { finished } from 'node:stream/promises'
import PDFDocument from 'pdfkit'
import { afterAll, describe, expect, it } from 'vitest'
import { label } from '../../src/drawing/shapes.js'
import { point } from '../../src/geometry/point.js'
import { makeOrder } from '../../src/make.js'
import { strangeSign } from '../../src/order/lettered-text.js'
import { drawingBook } from '../../src/paper/pattern-book.js'
import { layOnPaper } from '../../src/paper/tile.js'
import { toPoints } from '../../src/units/convert.js'
import { writePdf } from '../../src/write/pdf.js'
import { oneStar } from '../orders.js'
import { bytesOf, FURNITURE } from '../prints.js'
import { drawingOf } from '../write/test-drawings.js'
import { type GreyImage, readPgm } from './read-pgm.js'
import { SCRIPTS_ORDER } from './scripts-order.js'

const folder = mkdtempSync(join(tmpdir(), 'starwright-lettering-'))
afterAll(() => rmSync(folder, { recursive: true }))

const made = makeOrder({ text: SCRIPTS_ORDER })
if (!made.ok) throw new Error('the order of many scripts is refused')
const { drawings, files } = made.value

const squeezed = (text: string): string => text.replaceAll(/\s/g, '')

describe('text in many scripts', () => {
  it.each(drawings)('$path (PDF): pdftotext finds every label', async ({ path, print }) => {
    const file = join(folder, 'searched.pdf')
    writeFileSync(file, await bytesOf(files.find((each) => each.path === `${path}.pdf`)?.content ?? ''))
    const said = squeezed(execFileSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8' }))
    // What stands on two pages is said in two parts: words are looked up one by one.
    const words = print.pages.flatMap(({ views }) =>
      views.flatMap(({ shapes }) =>
        shapes.flatMap((shape) => (shape.kind === 'label' ? shape.text.split(' ') : [])),
      ),
    )
    expect(words.length).toBeGreaterThan(5)
    expect(words.filter((word) => !said.includes(word))).toEqual([])
  })
})

const DOTS_PER_MM = 8
const CELL = 9
const COLUMNS = 40
const HEIGHT = 4

const render = (file: string): GreyImage =>
  readPgm(
    execFileSync('pdftoppm', ['-gray', '-r', String(DOTS_PER_MM * 25.4), '-singlefile', file], {
      maxBuffer: 2 ** 30,
    }),
  )

/** What is dark in a square of the picture, cropped to its ink: a row of 0 and 1 for each line of dots. */
const inkIn = (image: GreyImage, left: number, top: number, side: number): string[] => {
  const dots = Array.from({ length: side }, (_, y) =>
    Array.from({ length: side }, (_, x) => image.at(left + x, top + y) < 128),
  )
  const rows = dots.flatMap((row, y) => (row.some(Boolean) ? [y] : []))
  const columns = Array.from({ length: side }, (_, x) => x).filter((x) => dots.some((row) => row[x]))
  const [first = 0, last = -1] = [columns[0], columns.at(-1)]
  return dots.slice(rows[0] ?? 0, (rows.at(-1) ?? -1) + 1).map((row) =>
    row
      .slice(first, last + 1)
      .map((dark) => (dark ? '1' : '0'))
      .join(''),
  )
}

/** Nearly the same picture: the same size but for a dot, and few dots that differ. */
const alike = (a: readonly string[], b: readonly string[]): boolean => {
  const [across, down] = [Math.max(a[0]?.length ?? 0, b[0]?.length ?? 0), Math.max(a.length, b.length)]
  if (Math.abs((a[0]?.length ?? 0) - (b[0]?.length ?? 0)) > 2 || Math.abs(a.length - b.length) > 2)
    return false
  let differing = 0
  for (let y = 0; y < down; y++) {
    for (let x = 0; x < across; x++) if ((a[y]?.[x] ?? '0') !== (b[y]?.[x] ?? '0')) differing++
  }
  return differing < 0.15 * across * down
}

/** The font's empty box, as pdfkit draws it for a sign that the font does not have. */
const emptyBox = async (): Promise<string[]> => {
  const file = join(folder, 'empty-box.pdf')
  const document = new PDFDocument({ size: [100, 100], margin: 0 })
  const written = finished(document.pipe(createWriteStream(file)))
  document
    .font(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'))
    .fontSize((toPoints(HEIGHT) * 2048) / 1493)
    .text('星', 20, 50, { lineBreak: false, baseline: 'alphabetic' })
  document.end()
  await written
  return inkIn(render(file), 0, 0, Math.floor((100 / 72) * 25.4 * DOTS_PER_MM))
}

it('every character an order may hold is drawn by poppler, and none as the empty box', async () => {
  const signs = Array.from({ length: 0x1_0000 }, (_, code) => String.fromCharCode(code)).filter(
    (sign) => sign !== ' ' && strangeSign(sign, 'note') === undefined,
  )
  expect(signs.length).toBeGreaterThan(1800)
  const box = await emptyBox()
  expect(box.length).toBeGreaterThan(20)

  const labels = signs.map((sign, index) =>
    label(sign, point((index % COLUMNS) * CELL + CELL / 2, -Math.floor(index / COLUMNS) * CELL - 6), {
      height: HEIGHT,
      anchor: 'middle',
    }),
  )
  const { order } = oneStar('points: 5, tip-angle: 45, across: 200', 'shop: { paper: { size: single } }')
  const print = layOnPaper(drawingOf(labels), order, FURNITURE)
  const [page, ...more] = print.ok ? print.value.pages : []
  const [view] = page?.views ?? []
  if (!print.ok || !page || !view || more.length > 0) throw new Error('the signs do not fit on one sheet')
  const file = join(folder, 'signs.pdf')
  writeFileSync(file, await writePdf(drawingBook(print.value)))
  const image = render(file)
  const wrong = signs.filter((_, index) => {
    const middle = labels[index]?.at ?? point(0, 0)
    const left = Math.round((middle.x + view.shift.x - CELL / 2) * DOTS_PER_MM)
    const top = Math.round((page.sheet.along - (middle.y + view.shift.y) - 6) * DOTS_PER_MM)
    const ink = inkIn(image, left, top, CELL * DOTS_PER_MM)
    return ink.length === 0 || alike(ink, box)
  })
  expect(wrong).toEqual([])
})
