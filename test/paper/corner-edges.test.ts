import { describe, expect, it } from 'vitest'
import { labelBox } from '../../src/drawing/bounds.js'
import type { Point } from '../../src/geometry/point.js'
import { cornerEdges } from '../../src/paper/corner-edges.js'
import type { Layout } from '../../src/paper/layout.js'
import { NOTES_PAGE } from '../../src/paper/page.js'
import { drawingBook } from '../../src/paper/pattern-book.js'
import { sheetOfSize } from '../../src/paper/sheet.js'
import { paperSize } from '../../src/tables/paper.js'
import { degrees } from '../../src/units/convert.js'
import { writePdf } from '../../src/write/pdf.js'
import { oneStar } from '../orders.js'
import { printOf } from '../prints.js'
import { type ReadStroke, readPdf } from '../read-back/read-pdf.js'
import { tiledPages } from '../read-back/read-seams.js'
import { inside } from './shown.js'

/** Printed pages as x, others as dots, row by row from the top. */
const layoutOf = (rows: readonly string[]): Layout => ({
  sheet: sheetOfSize(
    oneStar('points: 5, tip-angle: 45, across: 100').order.shop.paper,
    paperSize('A4'),
    false,
  ),
  angle: degrees(0),
  columns: rows[0]?.length ?? 0,
  rows: rows.length,
  printed: rows.flatMap((row) => [...row].map((sign) => sign === 'x')),
  origin: { x: 0, y: 0 },
  overlap: 10,
  firstRow: 0,
})

describe('edges that meet earlier pages only at a corner', () => {
  // Worked out by laying sheets of paper: a margin lies on the page diagonally above when no trimmed neighbour does.
  it.each([
    ['a full field has none', ['xx', 'xx'], 1, 1, []],
    ['the left margin, when the page on the left is left out', ['xx', '.x'], 1, 1, [['left', '1A']]],
    ['the right margin, when the page on the right is left out', ['xx', 'x.'], 1, 0, [['right', '1B']]],
    ['the upper margin, when the page above is left out', ['x.', 'xx'], 1, 1, [['upper', '1A']]],
    ['the upper margin on both sides', ['x.x', 'xxx'], 1, 1, [['upper', '1A and 1C']]],
    [
      'left and right of a page that hangs on the one above',
      ['xxx', '.x.'],
      1,
      1,
      [
        ['left', '1A'],
        ['right', '1C'],
      ],
    ],
    ['the first page has none', ['xx', '.x'], 0, 0, []],
  ] as const)('%s', (_, rows, row, column, expected) => {
    const layout = layoutOf(rows)
    const sides = cornerEdges(layout, { row, column }).map(({ line, on }) => [
      line.upright ? (line.inner > line.edge ? 'left' : 'right') : 'upper',
      on.join(' and '),
    ])
    expect(sides).toEqual(expected)
  })
})

const STARS = [
  ['points: 5, tip-angle: 45, across: 400', '{ size: A4 }'],
  ['points: 7, tip-angle: 60, radius: 400', '{ size: A4, overlap: 5 }'],
  ['points: 12, tip-angle: 130, radius: 300', '{ size: Letter, margin: 6, overlap: 15 }'],
  ['points: 9, tip-angle: 30, radius: 350', '{ roll: 610, longest: 400 }'],
] as const

describe.each(STARS)('%s on %s', (star, paper) => {
  const print = printOf(star, paper)

  it('words along edges end where the edges do', () => {
    for (const page of print.pages.filter(({ name }) => name !== NOTES_PAGE)) {
      const words = page
        .furniture()
        .shapes.filter((shape) => shape.kind === 'label')
        .filter(({ text }) => /^trim this edge|is laid on here$/.test(text))
      expect(words.length).toBeGreaterThan(0)
      const out = words.filter(
        (label) => !labelBox(label).every((corner) => inside(corner, page.sheet.window)),
      )
      expect(out.map(({ text }) => text)).toEqual([])
    }
  })

  it('edges to trim are drawn over the frame, not under it', async () => {
    for (const page of await readPdf(await writePdf(drawingBook(print)))) {
      const asked = page.lettering.filter(({ text }) => text.startsWith('trim this edge')).length
      const [tiled] = page.strokes.some(({ clip }) => clip) ? tiledPages([page]) : []
      if (!tiled) continue
      const { min, max } = tiled.frame
      const onFrame = (stroke: ReadStroke): boolean =>
        !stroke.clip &&
        [min, max].some(
          (corner) =>
            stroke.points.every(({ x }) => Math.abs(x - corner.x) < 0.001) ||
            stroke.points.every(({ y }) => Math.abs(y - corner.y) < 0.001),
        )
      const frame = page.strokes.findIndex(
        ({ points, closed, clip }) =>
          closed &&
          !clip &&
          points.length === 4 &&
          points.some(({ x, y }) => isNear({ x, y }, min)) &&
          points.some((point) => isNear(point, max)),
      )
      const edges = page.strokes
        .map((stroke, index) => ({ stroke, index }))
        .filter(({ stroke }) => onFrame(stroke))
      expect(frame).toBeGreaterThanOrEqual(0)
      expect(edges).toHaveLength(asked)
      expect(edges.every(({ index, stroke }) => index > frame && stroke.colour === '#000000')).toBe(true)
    }
  })
})

const isNear = (a: Point, b: Point): boolean => Math.hypot(a.x - b.x, a.y - b.y) < 0.001
