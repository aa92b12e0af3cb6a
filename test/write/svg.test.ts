import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drawingExtents } from '../../src/drawing/bounds.js'
import { LAYERS } from '../../src/drawing/layers.js'
import type { Drawing } from '../../src/drawing/model.js'
import { label, line, path, ring } from '../../src/drawing/shapes.js'
import { moved } from '../../src/geometry/outline.js'
import { point } from '../../src/geometry/point.js'
import { writeSvg } from '../../src/write/svg.js'
import {
  expectSamePaths,
  expectSamePlaces,
  labelsInFileOrder,
  pathsInFileOrder,
} from '../read-back/agreement.js'
import { readSvg } from '../read-back/read-svg.js'
import { anyDrawing, drawingOf, HOSTILE, HOSTILE_TEXTS, SAMPLER } from './test-drawings.js'

/** Kept free around a drawing, in mm; a drawing to cut is as large as its outline. */
const marginOf = ({ shapes }: Drawing): number =>
  shapes.some(({ layer }) => layer === 'CUT-OUTSIDE') ? 0 : 5

/** The file shows the drawing from the lower left corner of its margin. */
const expectAgreement = (drawing: Drawing): void => {
  const { min, max } = drawingExtents(drawing)
  const file = readSvg(writeSvg(drawing))
  const margin = marginOf(drawing)
  const by = point(margin - min.x, margin - min.y)
  expect(Math.abs(file.across - (max.x - min.x + 2 * margin))).toBeLessThan(0.001)
  expect(Math.abs(file.height - (max.y - min.y + 2 * margin))).toBeLessThan(0.001)
  expectSamePaths(
    file.outlines,
    pathsInFileOrder(drawing).map((drawn) => ({ ...drawn, ...moved(drawn, by) })),
  )
  expectSamePlaces(
    file.texts,
    labelsInFileOrder(drawing).map((drawn) => ({
      ...drawn,
      at: { x: drawn.at.x + by.x, y: drawn.at.y + by.y },
    })),
  )
  expect(file.elements.filter((name) => !ALLOWED.has(name))).toEqual([])
}

const ALLOWED = new Set(['svg', 'title', 'g', 'path', 'text'])

describe('SVG read back by svgson', () => {
  it('agrees with a drawing that has a bit of everything', () => expectAgreement(SAMPLER))

  it('agrees with any drawing of outlines, arcs and hostile lettering', { timeout: 60_000 }, () => {
    fc.assert(fc.property(anyDrawing, expectAgreement), { seed: 42, numRuns: 300 })
  })

  it('is the same bytes for the same drawing', () => {
    expect(writeSvg(structuredClone(SAMPLER))).toBe(writeSvg(SAMPLER))
  })

  it('keeps a 3 m arc at its place although it is nearly a half turn', () => {
    for (const bulge of [1 - 1e-9, 1 - 1e-6, 1 - 1e-4, 1 + 1e-9, 1 + 1e-4, 1e-5, 50]) {
      expectAgreement(
        drawingOf([
          path('CUT-OUTSIDE', {
            closed: false,
            vertices: [{ x: 0.00004, y: 1, bulge }, point(3000.00003, 700)],
          }),
        ]),
      )
    }
  })
})

describe('an SVG file', () => {
  const square = path('CUT-OUTSIDE', {
    closed: true,
    vertices: [point(0, 0), point(20, 0), point(20, 20), point(0, 20)],
  })

  it('is plain', () => {
    const drawing: Drawing = {
      ...drawingOf([
        square,
        ring('CUT-INSIDE', point(10, 10), 4),
        label('UP', point(10, 2), { anchor: 'middle' }),
      ]),
      title: 'Porch star: backing',
    }
    expect(writeSvg(drawing)).toBe(`<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" width="20mm" height="20mm" viewBox="0 0 20 20">
<!-- Starwright -->
<title>Porch star: backing</title>
<g id="CUT-INSIDE" fill="none" stroke="#CC79A7" stroke-width="0.5" stroke-linejoin="round">
<title>Cut first: holes and openings</title>
<path d="M14 10A3.9999 3.9999 0 0 0 6 10A3.9999 3.9999 0 0 0 14 10Z"/>
</g>
<g id="CUT-OUTSIDE" fill="none" stroke="#D55E00" stroke-width="0.5" stroke-linejoin="round">
<title>Cut last: outlines</title>
<path d="M0 20L20 20L20 0L0 0Z"/>
</g>
<g id="NOTE" fill="none" stroke="#000000" stroke-width="0.25" stroke-linejoin="round">
<title>Notes</title>
<text x="10" y="18" font-family="Helvetica, Arial, sans-serif" font-size="4.8747" textLength="6.7709" lengthAdjust="spacingAndGlyphs" text-anchor="middle" fill="#000000" stroke="none">UP</text>
</g>
</svg>
`)
  })

  it('has its layers in cutting order, each with what it is for', () => {
    const file = readSvg(writeSvg(SAMPLER))
    expect(file.titles.slice(1)).toEqual(LAYERS.map(({ title }) => title))
  })

  it('gathers strokes of one pen that follow each other, and nothing else', () => {
    const strokes = (count: number, from: number) =>
      Array.from({ length: count }, (_, row) => line('GUIDE', point(0, from + row), point(20, from + row)))
    const text = writeSvg(
      drawingOf([
        ...strokes(1000, 0),
        line('GUIDE', point(0, 0), point(9, 9), 'chain'),
        ...strokes(3, 2000),
        square,
        square,
      ]),
    )
    expect(text.match(/<path/g)).toHaveLength(4)
    expect(text).toContain('<path stroke-width="0.25" stroke-dasharray="6 1.25 0.25 1.25" d="')
    expect(readSvg(text).outlines).toHaveLength(1000 + 1 + 3 + 1)
  })

  it('refuses a drawing with a place that is no number', () => {
    expect(() => writeSvg(drawingOf([line('MARK', point(0, Number.NaN), point(1, 1))]))).toThrow(RangeError)
    expect(() =>
      writeSvg(
        drawingOf([
          path('MARK', { closed: false, vertices: [{ x: 0, y: 0, bulge: Number.NaN }, point(1, 1)] }),
        ]),
      ),
    ).toThrow(RangeError)
  })

  it.each([
    ['Lake star\n0\nCIRCLE', 'Lake star 0 CIRCLE'],
    ['</text><script>alert(1)</script>', '</text><script>alert(1)</script>'],
    [']]>x]]><script/>', ']]>x]]><script/>'],
    ['"><g onload="x">&amp;&lt;', '"><g onload="x">&amp;&lt;'],
    ['½ in, 31.5°, ⅛ ′ ⌀ Łódź', '½ in, 31.5°, ⅛ ′ ⌀ Łódź'],
    ['nul\u0000 bell\u0007 delete\u007f next\u0085line\u2028break', 'nul bell delete next line break'],
    ['turned \u202e53.1\u202c and \u200fmarked\u200e', 'turned 53.1 and marked'],
    ['half \ud83d and \ude00 and \uffff.', 'half  and  and .'],
    ['a whole pair \u{1f600}', 'a whole pair \u{1f600}'],
    ['%%c \\U+0041', '%%c \\U+0041'],
  ])('says %j as %j', (given, expected) => {
    const file = readSvg(writeSvg({ ...drawingOf([label(given, point(0, 0))]), title: given }))
    expect(file.texts.map(({ text }) => text)).toEqual([expected])
    expect(file.titles).toEqual([expected, 'Notes'])
  })

  it('holds no element but its own, whatever the lettering says', () => {
    const { elements } = readSvg(writeSvg(HOSTILE))
    expect(elements.filter((name) => name !== 'text')).toEqual([
      'svg',
      'title',
      'g',
      'title',
      'path',
      'g',
      'title',
    ])
    expect(elements.filter((name) => name === 'text')).toHaveLength(HOSTILE_TEXTS.length)
  })

  it('leaves out lettering of which nothing remains', () => {
    expect(writeSvg(drawingOf([square, label('\n \u0000', point(0, 0))]))).not.toContain('<text')
  })
})
