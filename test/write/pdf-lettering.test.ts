import { describe, expect, it } from 'vitest'
import { DRAWING_NAMES } from '../../src/compose/drawing-names.js'
import { DRAWINGS } from '../../src/compose/drawings.js'
import { textWidth } from '../../src/drawing/lettering.js'
import type { PrintedDrawing } from '../../src/paper/page.js'
import { drawingBook } from '../../src/paper/pattern-book.js'
import { layOnPaper } from '../../src/paper/tile.js'
import { writePdf } from '../../src/write/pdf.js'
import { planOf } from '../orders.js'
import { FURNITURE } from '../prints.js'
import { readPdf } from '../read-back/read-pdf.js'

const NAMES = [
  'Łódź Œuvre ⅜',
  'Избушка у озера',
  'Ψαρόβαρκα στη λίμνη',
  'Փոքր նավակ Սևանում',
  'ნავი ტბაზე',
  'Thuyền nhỏ Ẵ Ặ',
  'fi ffl AVATo Ђ',
] as const
const NOTE = 'larch from the old jetty, ⌀ 12 − ½ × 3 ″, silver side out: ж Ж 100 %'

const printed = (name: string, note: string): PrintedDrawing[] => {
  const plan = planOf(
    JSON.stringify({
      shop: { paper: { size: 'A3' } },
      stars: [{ name, note, points: 5, 'tip-angle': 45, across: 250, backing: { inset: 8 } }],
    }),
  )
  return DRAWING_NAMES.flatMap((kind) => {
    const [star] = plan.stars
    const drawing = star && DRAWINGS[kind](star, plan.order, FURNITURE)
    const print = drawing && layOnPaper(drawing, plan.order, FURNITURE)
    return print?.ok ? [print.value] : []
  })
}

const latin1 = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1')
const squeezed = (text: string): string => text.replaceAll(/\s/g, '')

describe('a PDF in other scripts', () => {
  it.each(NAMES)('%s: every label can be searched and copied (pdf.js)', async (name) => {
    for (const print of printed(name, NOTE)) {
      const read = (await readPdf(await writePdf(drawingBook(print)))).flatMap(({ texts }) => texts)
      const whole = squeezed(read.join(''))
      for (const shape of print.drawing.shapes) {
        if (shape.kind === 'label') expect(whole).toContain(squeezed(shape.text))
      }
      expect(whole).toContain(squeezed(name.normalize('NFC')))
    }
  })

  it('embeds DejaVu Sans, a subset of it, only where a text leaves WinAnsiEncoding', async () => {
    for (const print of printed('Bäckerei “Latwa”', 'œuvre – 12 € × 3')) {
      const bytes = await writePdf(drawingBook(print))
      expect(latin1(bytes)).not.toContain('FontFile2')
    }
    for (const print of printed('Избушка', 'ж')) {
      const bytes = await writePdf(drawingBook(print))
      expect(latin1(bytes)).toMatch(/\/BaseFont \/[A-Z]{6}\+DejaVuSans/)
      // The whole font has 757 076 bytes.
      expect(bytes.length).toBeLessThan(150_000)
    }
  })

  it('has the same bytes each time', async () => {
    for (const print of printed('Избушка', NOTE)) {
      expect(
        Buffer.from(await writePdf(drawingBook(print))).equals(
          Buffer.from(await writePdf(drawingBook(print))),
        ),
      ).toBe(true)
    }
  })

  it('is not written with a sign that no face has: that is a fault of the program, not of the maker', async () => {
    const [print] = printed('Jetty', 'plain')
    if (!print) throw new Error('an order has its drawings')
    const pages = print.pages.map((page) => ({
      ...page,
      views: page.views.map((view) => ({
        ...view,
        shapes: view.shapes.map((shape) => (shape.kind === 'label' ? { ...shape, text: '星' } : shape)),
      })),
    }))
    await expect(writePdf(drawingBook({ ...print, pages }))).rejects.toThrow('no face has U+661F')
  })
})

describe('the width a label is placed by', () => {
  it.each(NAMES)('%s: pdf.js measures no line wider', async (name) => {
    for (const print of printed(name, NOTE)) {
      const [read] = await readPdf(await writePdf(drawingBook(print)))
      expect(read?.lines.length).toBeGreaterThan(3)
      for (const { text, width } of read?.lines ?? []) {
        const [page] = print.pages
        const labels = [
          ...(page?.views.flatMap(({ shapes }) => shapes) ?? []),
          ...(page?.furniture().shapes ?? []),
        ].filter((shape) => shape.kind === 'label' && shape.text === text)
        const onFurniture = page
          ?.furniture()
          .artwork.some(({ artwork }) =>
            artwork.marks.some((mark) => mark.kind === 'text' && mark.text === text),
          )
        const [label] = labels
        // The same word at two heights could be either.
        if (labels.length !== 1 || onFurniture || label?.kind !== 'label') continue
        expect(width, text).toBeLessThanOrEqual(textWidth(label.text, label.height) + 0.01)
        expect(width, text).toBeGreaterThan(textWidth(label.text, label.height) * 0.93)
      }
    }
  })
})
