import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { makeOrder } from '../../src/make.js'
import { bytesOf } from '../prints.js'
import { barRow, DARK, dots, MM_PER_DOT, outermost, render, tickSpan } from './rulers.js'

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
      // A line of the drawing that runs into the frame makes it look thicker in one row or column, not in others.
      const widths = [0, 7, 16].map((aside) => {
        const [left, right] = outermost(image.across, (x) => image.at(x, middle + dots(aside)) < DARK)
        return Math.abs((right - left) * MM_PER_DOT - across)
      })
      const heights = [1, 2.3, 4.1].map((inside) => {
        const column = dots(page.sheet.window.min.x + inside)
        const below = dots(page.sheet.along - page.sheet.window.min.y + 2)
        const [top, bottom] = outermost(below, (y) => image.at(column, y) < DARK)
        return Math.abs((bottom - top) * MM_PER_DOT - along)
      })
      expect(Math.min(...widths)).toBeLessThan(across / 1000)
      expect(Math.min(...heights)).toBeLessThan(along / 1000)
    },
  )
})
