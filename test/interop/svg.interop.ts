import { execFileSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { drawingExtents } from '../../src/drawing/bounds.js'
import { layerOf, penOf } from '../../src/drawing/layers.js'
import type { Drawing } from '../../src/drawing/model.js'
import { extentsOf } from '../../src/geometry/outline.js'
import { inkBox, readPng } from './read-png.js'
import { writeFiles } from './written-files.js'

const files = writeFiles()

/** Kept free around a drawing, in mm; a drawing to cut is as large as its outline. */
const marginOf = ({ shapes }: Drawing): number =>
  shapes.some(({ layer }) => layer === 'CUT-OUTSIDE') ? 0 : 5

/** The finest whole number of pixels to the mm that keeps an image below 4000 pixels. */
const pixelsPerMm = (across: number, height: number): number =>
  Math.max(1, Math.min(10, Math.floor(4000 / Math.max(across, height))))

/** Renders with librsvg; `-d` and `-p` are dots per inch. */
const render = (svg: string, perMm: number): string => {
  const png = svg.replace(/svg$/, 'png')
  const dots = String(25.4 * perMm)
  execFileSync('rsvg-convert', ['-d', dots, '-p', dots, '-o', png, svg])
  return png
}

it('SVG is well-formed for xmllint', () => {
  const said = execFileSync('xmllint', ['--noout', ...files.map(({ svg }) => svg)], { encoding: 'utf8' })
  expect(said).toBe('')
})

describe('SVG rendered by librsvg', () => {
  it.each(files)('$name: has its true size', ({ svg, drawing }) => {
    const { min, max } = drawingExtents(drawing)
    const margin = marginOf(drawing)
    const [across, height] = [max.x - min.x + 2 * margin, max.y - min.y + 2 * margin]
    const perMm = pixelsPerMm(across, height)
    const image = readPng(render(svg, perMm))
    expect(Math.abs(image.across - across * perMm)).toBeLessThan(1)
    expect(Math.abs(image.down - height * perMm)).toBeLessThan(1)
  })

  const cut = files.filter(({ drawing }) => drawing.shapes.some(({ layer }) => layer === 'CUT-OUTSIDE'))

  it('draws outlines to cut', () => expect(cut.length).toBeGreaterThan(2))

  it.each(cut)('$name: the outline to cut lies where it should, to a pixel', ({ svg, drawing }) => {
    const { min, max } = drawingExtents(drawing)
    const perMm = pixelsPerMm(max.x - min.x, max.y - min.y)
    const outlines = drawing.shapes.flatMap((shape) =>
      shape.kind === 'path' && shape.layer === 'CUT-OUTSIDE' ? [shape] : [],
    )
    const box = extentsOf(outlines)
    if (!box) throw new RangeError('no outline')
    // Half of the line may lie outside the outline, and so outside the file.
    const half = penOf({ layer: 'CUT-OUTSIDE' }).width / 2
    const ink = inkBox(readPng(render(svg, perMm)), layerOf('CUT-OUTSIDE').colour)
    const expected = {
      left: Math.max(0, box.min.x - half - min.x),
      right: Math.min(max.x - min.x, box.max.x + half - min.x),
      top: Math.max(0, max.y - box.max.y - half),
      bottom: Math.min(max.y - min.y, max.y - box.min.y + half),
    }
    for (const side of ['left', 'right', 'top', 'bottom'] as const) {
      expect(Math.abs(ink[side] - expected[side] * perMm), `${side} at ${perMm} px/mm`).toBeLessThanOrEqual(1)
    }
  })
})
