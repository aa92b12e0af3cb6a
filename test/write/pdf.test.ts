import { PDFDict, PDFDocument, PDFName } from 'pdf-lib'
import { describe, expect, it } from 'vitest'
import { layerOf } from '../../src/drawing/layers.js'
import type { Drawing } from '../../src/drawing/model.js'
import { edges } from '../../src/geometry/outline.js'
import { distance, type Point } from '../../src/geometry/point.js'
import type { PrintedDrawing, View } from '../../src/paper/page.js'
import { drawingBook } from '../../src/paper/pattern-book.js'
import { writePdf } from '../../src/write/pdf.js'
import { printsOf } from '../prints.js'
import { scaleMarks } from '../read-back/page-scale.js'
import { type ReadStroke, readPdf } from '../read-back/read-pdf.js'

const STARS = [
  'points: 5, tip-angle: 45, board-width: 70, chamfer: 3, backing: { shape: disc, inset: 8 }',
  'regular: 6/2, across: 300, backing: { shape: polygon, inset: 6 }',
  'points: 9, tip-angle: 110, radius: 160, backing: { shape: star, inset: 5 }',
]

const pdfOf = (print: PrintedDrawing): Promise<Uint8Array> => writePdf(drawingBook(print))

/** The points an independent reader must find for each path: ends of edges, and for arcs every point lies on the circle. */
const expectDrawn = (drawing: Drawing, { shift }: View, strokes: readonly ReadStroke[]) => {
  for (const shape of drawing.shapes) {
    if (shape.kind !== 'path') continue
    const onPage = (p: Point): Point => ({ x: p.x + shift.x, y: p.y + shift.y })
    const colour = layerOf(shape.layer).colour.toLowerCase()
    const [first] = shape.vertices
    const found = strokes.find(
      ({ points, closed, colour: read }) =>
        read.toLowerCase() === colour &&
        closed === shape.closed &&
        edges(shape).every(({ from, arc }) => {
          if (!points.some((p) => distance(p, onPage(from)) < 0.01)) return false
          return (
            !arc ||
            points.every(
              (p) => Math.abs(distance(p, onPage(arc.centre)) - arc.radius) < 0.01 || edges(shape).length > 2,
            )
          )
        }),
    )
    expect(found, `${drawing.title}: a ${shape.layer} path from ${first?.x}, ${first?.y}`).toBeDefined()
  }
}

describe('PDF read back by pdf.js', () => {
  it.each(STARS)('%s: every path at its place within 0.01 mm, in its layer colour', async (star) => {
    for (const print of printsOf(star, '{ size: single }')) {
      const [view] = print.pages[0]?.views ?? []
      const [read] = await readPdf(await pdfOf(print))
      if (!view || !read) throw new Error('a single page shows the drawing')
      expect(print.pages).toHaveLength(1)
      expectDrawn(print.drawing, view, read.strokes)
    }
  })

  it('carries the lettering as text that can be searched', async () => {
    for (const print of printsOf(STARS[0] ?? '', '{ size: single }')) {
      const [read] = await readPdf(await pdfOf(print))
      const labels = print.drawing.shapes.filter((shape) => shape.kind === 'label').map(({ text }) => text)
      const texts = read?.texts.join('').replaceAll(/\s/g, '')
      for (const label of labels) expect(texts).toContain(label.replaceAll(/\s/g, ''))
    }
  })

  it('has a scale with marks at 100 mm and at 4 in (101.6 mm) on every page', async () => {
    for (const print of printsOf(STARS[1] ?? '', '{ size: A4 }')) {
      for (const page of await readPdf(await pdfOf(print))) {
        expect(scaleMarks(page, [50, 100, 25.4, 50.8, 101.6])).toEqual([50, 100, 25.4, 50.8, 101.6])
        expect(page.texts.join(' ')).toMatch(/\b100\b.*\b4\b/)
      }
    }
  })
})

describe('PDF boxes and preferences read by pdf-lib', () => {
  // Sheet sizes: ISO 216 and ASME Y14.1; 72 points to the inch: ISO 32000-1, 8.3.2.3.
  it.each([
    ['A4', 595.276, 841.89],
    ['A3', 841.89, 1190.551],
    ['Letter', 612, 792],
    ['Legal', 612, 1008],
    ['Tabloid', 792, 1224],
  ])('%s: media box and trim box of the sheet, PrintScaling None', async (size, short, long) => {
    for (const print of printsOf(STARS[0] ?? '', `{ size: ${size} }`)) {
      const read = await PDFDocument.load(await pdfOf(print), { updateMetadata: false })
      expect(read.getPageCount()).toBe(print.pages.length)
      for (const page of read.getPages()) {
        const sides = [page.getWidth(), page.getHeight()].sort((a, b) => a - b)
        expect(sides[0]).toBeCloseTo(short, 2)
        expect(sides[1]).toBeCloseTo(long, 2)
        expect(page.getTrimBox()).toEqual(page.getMediaBox())
      }
      const preferences = read.catalog.lookup(PDFName.of('ViewerPreferences'), PDFDict)
      expect(preferences.get(PDFName.of('PrintScaling'))).toBe(PDFName.of('None'))
    }
  })
})

it('gives the same bytes for the same drawing', async () => {
  for (const print of printsOf(STARS[0] ?? '', '{ size: A4 }')) {
    expect(Buffer.from(await pdfOf(print)).equals(Buffer.from(await pdfOf(print)))).toBe(true)
  }
})
