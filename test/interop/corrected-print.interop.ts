import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { drawingBook } from '../../src/paper/pattern-book.js'
import { writePdf } from '../../src/write/pdf.js'
import { printOf } from '../prints.js'
import { barRow, DARK, dots, MM_PER_DOT, outermost, render, tickSpan } from './rulers.js'

const folder = mkdtempSync(join(tmpdir(), 'starwright-interop-corrected-'))
afterAll(() => rmSync(folder, { recursive: true }))

/** Printers of 99.2 % and 100.4 %, what their owners read off 150 mm, and sheets that lie upright and on their side. */
const CASES = [99.2, 100.4].flatMap((across) =>
  [99.2, 100.4].flatMap((along) =>
    [
      { way: 'upright', star: 'points: 8, tip-angle: 50, radius: 220' },
      { way: 'on its side', star: 'points: 5, tip-angle: 45, across: 400' },
    ].map((sheet) => ({ across, along, ...sheet })),
  ),
)

describe.each(CASES)(
  'a sheet $way, corrected for $across % and $along %',
  async ({ across, along, way, star }) => {
    const print = printOf(star, `{ size: A4, printed: { across: ${across * 1.5}, along: ${along * 1.5} } }`)
    const file = join(folder, `${across}-${along}-${way}.pdf`)
    writeFileSync(file, await writePdf(drawingBook(print)))
    const isOnItsSide = way !== 'upright'
    const [short, long] = [across / 100, along / 100]
    const factors = isOnItsSide ? { x: long, y: short } : { x: short, y: long }
    const [page] = print.pages
    if (!page) throw new Error('no page')
    const { across: sheetAcross, along: sheetAlong, window } = page.sheet
    const image = render(file, 1, factors)
    const bar = barRow(image, window.min.x, window.min.y, sheetAlong)

    it('lies so, and comes out of the printer as large as the printer makes its sheet', () => {
      expect(sheetAcross > sheetAlong).toBe(isOnItsSide)
      // ISO 216: A4 is 210 x 297 mm.
      const [width, height] = isOnItsSide ? [297, 210] : [210, 297]
      expect(Math.abs(image.across * MM_PER_DOT - width * factors.x)).toBeLessThan(0.1)
      expect(Math.abs(image.down * MM_PER_DOT - height * factors.y)).toBeLessThan(0.1)
    })

    it('the scale check measures 100 mm and 4 in (101.6 mm) within 0.1 mm', () => {
      expect(Math.abs(tickSpan(image, bar - dots(1)) * MM_PER_DOT - 100)).toBeLessThan(0.1)
      expect(Math.abs(tickSpan(image, bar + dots(1)) * MM_PER_DOT - 101.6)).toBeLessThan(0.1)
    })

    it('the frame measures what is written beside it, both ways', () => {
      const middle = dots(sheetAlong - (window.min.y + window.max.y) / 2)
      const [left, right] = outermost(image.across, (x) => image.at(x, middle) < DARK)
      const inside = dots(window.min.x + 1)
      const [top, bottom] = outermost(dots(sheetAlong - window.min.y + 1), (y) => image.at(inside, y) < DARK)
      expect(Math.abs((right - left) * MM_PER_DOT - (window.max.x - window.min.x))).toBeLessThan(0.1)
      expect(Math.abs((bottom - top) * MM_PER_DOT - (window.max.y - window.min.y))).toBeLessThan(0.1)
    })

    it('a printer that is right would make it wrong: the file is stretched', () => {
      const [x, y] = [1 / factors.x, 1 / factors.y]
      const plain = render(file, 1)
      const row = barRow(plain, window.min.x * x, window.min.y * y, sheetAlong * y)
      const measured = tickSpan(plain, row - dots(1)) * MM_PER_DOT
      expect(Math.abs(measured - 100 * x)).toBeLessThan(0.1)
      expect(Math.abs(measured - 100)).toBeGreaterThan(0.3)
    })
  },
)
