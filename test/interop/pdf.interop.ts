import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { makeOrder } from '../../src/make.js'
import { bytesOf } from '../prints.js'
import { type GreyImage, readPgm } from './read-pgm.js'

const EXAMPLES = new URL('../../shared/examples/', import.meta.url)
const folder = mkdtempSync(join(tmpdir(), 'starwright-interop-pdf-'))
afterAll(() => rmSync(folder, { recursive: true }))

const made = await Promise.all(
  ['winter-fair.yaml', 'lantern-walk.yaml'].map(async (order) => {
    const outcome = makeOrder({ text: readFileSync(new URL(order, EXAMPLES), 'utf8') })
    if (!outcome.ok) throw new Error(`${order} is refused`)
    const written = outcome.value.drawings.map(async (drawn) => {
      const file = join(folder, `${drawn.path}.pdf`)
      const made = outcome.value.files.find(({ path }) => path === `${drawn.path}.pdf`)
      mkdirSync(dirname(file), { recursive: true })
      writeFileSync(file, await bytesOf(made?.content ?? ''))
      return { path: drawn.path, file, pages: drawn.print.pages }
    })
    return Promise.all(written)
  }),
)
const files = made.flat()

const DOTS_PER_INCH = 600
const MM_PER_DOT = 25.4 / DOTS_PER_INCH

it.each(files)('$path (PDF) is sound for qpdf', ({ file }) => {
  expect(execFileSync('qpdf', ['--check', file], { encoding: 'utf8' })).toContain(
    'No syntax or stream encoding errors found',
  )
})

it.each(files)('$path (PDF) has the page boxes of its sheets', ({ file, pages }) => {
  const said = execFileSync('pdfinfo', ['-box', '-f', '1', '-l', '999', file], { encoding: 'utf8' })
  // ISO 216: A4 210 x 297 mm; ASME Y14.1: Letter 8 1/2 x 11 in; ISO 32000-1, 8.3.2.3: 72 units to the inch.
  const sheet = isInches(file) ? [612, 792] : [595.28, 841.89]
  for (const kind of ['MediaBox', 'TrimBox']) {
    const boxes = [...said.matchAll(new RegExp(`${kind}: +0.00 +0.00 +([0-9.]+) +([0-9.]+)`, 'g'))]
    expect(boxes).toHaveLength(pages.length)
    for (const [, across, along] of boxes) {
      expect([Number(across), Number(along)].sort((a, b) => a - b)).toEqual(sheet)
    }
  }
})

/** Stars of the lantern walk, an order in inches on Letter. */
const isInches = (file: string): boolean => file.includes('jetty') || file.includes('straight')

describe('a page rendered by poppler', () => {
  it.each(files)('$path (PDF): the scale check measures 100 mm and 4 in within 0.1 mm', ({ file, pages }) => {
    pages.forEach((page, index) => {
      const image = render(file, index + 1)
      const bar = barRow(image, page.sheet.window.min.x, page.sheet.window.min.y, page.sheet.along)
      // A shop in inches has its own scale above the bar.
      const [above, below] = isInches(file) ? [101.6, 100] : [100, 101.6]
      expect(Math.abs(tickSpan(image, bar - dots(1)) * MM_PER_DOT - above)).toBeLessThan(0.1)
      expect(Math.abs(tickSpan(image, bar + dots(1)) * MM_PER_DOT - below)).toBeLessThan(0.1)
    })
  })

  it.each(files)(
    '$path (PDF): the frame has the size that stands beside it, both ways',
    ({ file, pages }) => {
      const [page] = pages
      if (!page) throw new Error('no page')
      const image = render(file, 1)
      const across = page.sheet.window.max.x - page.sheet.window.min.x
      const along = page.sheet.window.max.y - page.sheet.window.min.y
      const middle = dots(page.sheet.along - (page.sheet.window.min.y + page.sheet.window.max.y) / 2)
      const inside = dots(page.sheet.window.min.x + 1)
      const [left, right] = outermost(image.across, (x) => image.at(x, middle) < DARK)
      const [top, bottom] = outermost(
        dots(page.sheet.along - page.sheet.window.min.y + 2),
        (y) => image.at(inside, y) < DARK,
      )
      expect(Math.abs((right - left) * MM_PER_DOT - across)).toBeLessThan(across / 1000)
      expect(Math.abs((bottom - top) * MM_PER_DOT - along)).toBeLessThan(along / 1000)
    },
  )
})

const DARK = 200

const dots = (length: number): number => Math.round(length / MM_PER_DOT)

const render = (file: string, page: number): GreyImage =>
  readPgm(
    execFileSync(
      'pdftoppm',
      ['-gray', '-r', String(DOTS_PER_INCH), '-f', String(page), '-l', String(page), file],
      {
        maxBuffer: 2 ** 30,
      },
    ),
  )

/** The row of the scale check's bar: the longest dark run below the frame, from the frame's left side. */
const barRow = (image: GreyImage, left: number, frameBottom: number, along: number): number => {
  const [from, to] = [dots(along - frameBottom + 6), dots(along - frameBottom + 22)]
  const row = Array.from({ length: to - from }, (_, index) => from + index).find((y) => {
    const dark = Array.from({ length: dots(101) }, (_, index) => image.at(dots(left + 0.3) + index, y))
    return dark.every((grey) => grey < DARK)
  })
  if (row === undefined) throw new Error('no bar')
  return row
}

/** From the middle of the first dark run in a row to the middle of the last one before the text. */
const tickSpan = (image: GreyImage, y: number): number => {
  const middles: number[] = []
  let start: number | undefined
  for (let x = 0; x < dots(116); x++) {
    const dark = image.at(x, y) < DARK
    if (dark && start === undefined) start = x
    if (!dark && start !== undefined) {
      middles.push((start + x - 1) / 2)
      start = undefined
    }
  }
  return (middles.at(-1) ?? Number.NaN) - (middles[0] ?? Number.NaN)
}

/** Middles of the first and the last dark run. */
const outermost = (length: number, isDark: (index: number) => boolean): [number, number] => {
  const dark = Array.from({ length }, (_, index) => index).filter(isDark)
  const run = (start: number, step: number): number => {
    let end = start
    while (isDark(end + step)) end += step
    return (start + end) / 2
  }
  const [first, last] = [dark[0] ?? 0, dark.at(-1) ?? 0]
  return [first === 0 ? 0 : run(first, 1), run(last, -1)]
}
