import { PDFDict, PDFDocument, PDFName } from 'pdf-lib'
import { describe, expect, it } from 'vitest'
import { DRAWING_NAMES } from '../../src/compose/drawing-names.js'
import { DRAWINGS } from '../../src/compose/drawings.js'
import { layerOf } from '../../src/drawing/layers.js'
import type { Drawing } from '../../src/drawing/model.js'
import { edges } from '../../src/geometry/outline.js'
import { distance, type Point } from '../../src/geometry/point.js'
import type { Page, PrintedDrawing } from '../../src/paper/page.js'
import { layOnPaper } from '../../src/paper/tile.js'
import { writePdf } from '../../src/write/pdf.js'
import { oneStar } from '../orders.js'
import { readPdf } from '../read-back/read-pdf.js'

const STARS = [
  'points: 5, tip-angle: 45, board-width: 70, chamfer: 3, backing: { shape: disc, inset: 8 }',
  'regular: 6/2, across: 300, backing: { shape: polygon, inset: 6 }',
  'points: 9, tip-angle: 110, radius: 160, backing: { shape: star, inset: 5 }',
]

const drawingsOf = (star: string, paper: string): PrintedDrawing[] => {
  const plan = oneStar(star, `shop: { paper: ${paper} }`)
  return DRAWING_NAMES.flatMap((name) => {
    const [first] = plan.stars
    const drawing = first && DRAWINGS[name](first, plan.order)
    const print = drawing && layOnPaper(drawing, plan.order)
    return print?.ok ? [print.value] : []
  })
}

/** The points an independent reader must find for each path: ends of edges, and for arcs every point lies on the circle. */
const expectDrawn = (
  drawing: Drawing,
  page: Page,
  strokes: Awaited<ReturnType<typeof readPdf>>[number]['strokes'],
) => {
  for (const shape of drawing.shapes) {
    if (shape.kind !== 'path') continue
    const onPage = (p: Point): Point => ({ x: p.x + page.shift.x, y: p.y + page.shift.y })
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
    for (const print of drawingsOf(star, '{ roll: 1500 }')) {
      const [page] = print.pages
      const [read] = await readPdf(await writePdf(print))
      if (!page || !read) throw new Error('a roll carries the drawing on one page')
      expect(print.pages).toHaveLength(1)
      expectDrawn(print.drawing, page, read.strokes)
    }
  })

  it('carries the lettering as text that can be searched', async () => {
    for (const print of drawingsOf(STARS[0] ?? '', '{ roll: 1500 }')) {
      const [read] = await readPdf(await writePdf(print))
      const labels = print.drawing.shapes.filter((shape) => shape.kind === 'label').map(({ text }) => text)
      const texts = read?.texts.join('').replaceAll(/\s/g, '')
      for (const label of labels) expect(texts).toContain(label.replaceAll(/\s/g, ''))
    }
  })

  it('has a bar of 100 mm and of 4 in (101.6 mm) on every page', async () => {
    for (const print of drawingsOf(STARS[1] ?? '', '{ size: A4 }')) {
      for (const { strokes, texts } of await readPdf(await writePdf(print))) {
        const bar = strokes.find(({ points: [a, b] }) => a && b && Math.abs(distance(a, b) - 101.6) < 0.001)
        const [from] = bar?.points ?? []
        if (!from) throw new Error('the bar is missing')
        const tick = (x: number) =>
          strokes.some(
            ({ points: [a] }) => a && Math.abs(a.x - from.x - x) < 0.001 && Math.abs(a.y - from.y) < 0.001,
          )
        expect([tick(0), tick(50), tick(100), tick(25.4), tick(50.8), tick(101.6)]).toEqual(
          Array(6).fill(true),
        )
        expect(texts.join(' ')).toMatch(/100 mm.*4 in/)
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
    for (const print of drawingsOf(STARS[0] ?? '', `{ size: ${size} }`)) {
      const read = await PDFDocument.load(await writePdf(print), { updateMetadata: false })
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
  for (const print of drawingsOf(STARS[0] ?? '', '{ size: A4 }')) {
    expect(Buffer.from(await writePdf(print)).equals(Buffer.from(await writePdf(print)))).toBe(true)
  }
})
