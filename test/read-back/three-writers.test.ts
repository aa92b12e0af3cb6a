import { afterAll, describe, expect, it } from 'vitest'
import { DRAWING_NAMES } from '../../src/compose/drawing-names.js'
import { DRAWINGS } from '../../src/compose/drawings.js'
import { drawingExtents } from '../../src/drawing/bounds.js'
import type { Drawing } from '../../src/drawing/model.js'
import { moved } from '../../src/geometry/outline.js'
import { point } from '../../src/geometry/point.js'
import { writeDxf } from '../../src/write/dxf.js'
import { writeSvg } from '../../src/write/svg.js'
import { oneStar } from '../orders.js'
import { FURNITURE } from '../prints.js'
import { expectSamePaths, expectSamePlaces, labelsInFileOrder, pathsInFileOrder } from './agreement.js'
import { openDxfReader } from './read-dxf.js'
import { readSvg } from './read-svg.js'
import { edgesOfNoLength, repeatedEdges } from './repeated-edges.js'

const reader = openDxfReader()
afterAll(reader.close)

const STARS = [
  'points: 5, tip-angle: 45, board-width: 70, chamfer: 3, backing: { shape: star, inset: 8 }',
  'points: 3, tip-angle: 20, across: 400, backing: { shape: star, inset: 4 }',
  'regular: 6/2, across: 300, backing: { shape: polygon, inset: 6 }',
  'regular: 8/3, height: 500, backing: { shape: disc, inset: 6 }',
  'points: 9, tip-angle: 110, radius: 160, backing: { shape: disc, inset: 8 }',
  'points: 24, tip-angle: 90, radius: 900, backing: { shape: star, inset: 10 }',
]

const drawingsOf = (star: string): Drawing[] => {
  const { stars, order } = oneStar(star)
  return DRAWING_NAMES.flatMap((name) => (stars[0] && DRAWINGS[name](stars[0], order, FURNITURE)) ?? [])
}

/** The file is drawn from the lower left corner of a margin of 5 mm, or of none when it is to be cut. */
const inSvgPlace = (drawing: Drawing): Drawing => {
  const { min } = drawingExtents(drawing)
  const margin = drawing.shapes.some(({ layer }) => layer === 'CUT-OUTSIDE') ? 0 : 5
  const by = point(margin - min.x, margin - min.y)
  const shapes = drawing.shapes.map((shape) =>
    shape.kind === 'path'
      ? { ...shape, ...moved(shape, by) }
      : { ...shape, at: point(shape.at.x + by.x, shape.at.y + by.y) },
  )
  return { ...drawing, shapes }
}

describe.each(STARS)('%s: every drawing read back from every file', (star) => {
  const drawings = drawingsOf(star)

  it('has an arm pattern, a star mat and a backing', () => {
    expect(drawings.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['arm-pattern', 'star-mat', 'backing']),
    )
  })

  it.each(drawings)('$kind agrees within 0.01 mm', async (drawing) => {
    const svg = readSvg(writeSvg(drawing))
    const files = [
      { read: svg, expected: inSvgPlace(drawing) },
      { read: await reader.read(writeDxf(drawing, 'r12')), expected: drawing },
      { read: await reader.read(writeDxf(drawing, 'r2000')), expected: drawing },
    ]
    for (const { read, expected } of files) {
      expectSamePaths(read.outlines, pathsInFileOrder(expected))
      expectSamePlaces(read.texts, labelsInFileOrder(expected))
      expect(read.texts.map(({ text }) => text)).toEqual(labelsInFileOrder(expected).map(({ text }) => text))
      expect(repeatedEdges(read.outlines)).toEqual([])
      expect(edgesOfNoLength(read.outlines)).toBe(0)
    }
  })
})
