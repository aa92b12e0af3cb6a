import { describe, expect, it } from 'vitest'
import type { Shape } from '../../src/drawing/model.js'
import { path } from '../../src/drawing/shapes.js'
import { closedOutline, type Outline } from '../../src/geometry/outline.js'
import { type Point, point } from '../../src/geometry/point.js'
import type { Paper } from '../../src/order/order.js'
import { fewestPages, plainCount } from '../../src/paper/fewest-pages.js'
import { inkExtents, inkOf } from '../../src/paper/ink.js'
import { type Layout, printedPlaces } from '../../src/paper/layout.js'
import { paperSize } from '../../src/tables/paper.js'
import { mm } from '../../src/units/convert.js'
import { searchByTrying } from './search-by-trying.js'
import { spotsOn } from './shown.js'

const A4: Paper = { sheet: { size: 'A4' }, margin: mm(10), overlap: mm(10) }

const open = (...corners: readonly (readonly [number, number])[]): Shape =>
  path('PATTERN', { vertices: corners.map(([x, y]) => point(x, y)), closed: false })
const box = (left: number, low: number, right: number, top: number): Outline =>
  closedOutline([point(left, low), point(right, low), point(right, top), point(left, top)])
const ring = (radius: number, corners = 24): Shape =>
  path(
    'PATTERN',
    closedOutline(
      Array.from({ length: corners }, (_, index) => {
        const angle = (2 * Math.PI * index) / corners
        return point(radius * Math.cos(angle), radius * Math.sin(angle))
      }),
    ),
  )

const countOf = (figure: readonly Shape[], paper = A4, pieces: readonly Outline[] = []): number => {
  const layout = fewestPages(figure, pieces, paper)
  if (!layout) throw new Error('every figure finds its pages')
  return printedPlaces(layout).length
}

const FIGURES: readonly { readonly name: string; readonly figure: readonly Shape[] }[] = [
  { name: 'a diagonal line', figure: [open([0, 0], [420, 390])] },
  { name: 'an angle', figure: [open([0, 380], [0, 0], [400, 0])] },
  { name: 'a ring', figure: [ring(210)] },
  { name: 'two strokes far apart', figure: [open([0, 0], [120, 20]), open([300, 330], [420, 300])] },
  { name: 'a triangle', figure: [ring(260, 3)] },
  { name: 'a box a little larger than a sheet', figure: [path('PATTERN', box(0, 0, 205, 262))] },
]

describe('the search', () => {
  // Oracle: the same turns and offsets, each tried by comparing points with windows. The search counts ink in cells of
  // 2 mm, so it may take more pages than bare points do, never more than points that keep a cell's diagonal of white.
  it.each(FIGURES)(
    'takes for $name as few sheets as trying every way',
    ({ figure }) => {
      const spots = figure.flatMap(spotsOn)
      const size = paperSize('A4')
      const found = countOf(figure)
      expect(found).toBeGreaterThanOrEqual(searchByTrying({ points: spots, inside: -1 }, A4, size))
      expect(found).toBeLessThanOrEqual(searchByTrying({ points: spots, inside: 2 * Math.SQRT2 }, A4, size))
    },
    60_000,
  )

  it('leaves out sheets that a thin ring and a diagonal line do not touch', () => {
    const large = [ring(330)]
    expect(countOf(large)).toBeLessThan(plainCount(inkExtents(inkOf(large)), A4))
    const line = [open([0, 0], [600, 600])]
    expect(countOf(line)).toBeLessThan(plainCount(inkExtents(inkOf(line)), A4))
  })

  it.each(FIGURES)('never takes more sheets for $name than the plain rectangle of them', ({ figure }) => {
    expect(countOf(figure)).toBeLessThanOrEqual(plainCount(inkExtents(inkOf(figure)), A4))
  })

  it.each(FIGURES)(
    'prints of $name only sheets with ink, and no two that meet at a corner alone',
    ({ figure }) => {
      const layout = fewestPages(figure, [], A4)
      if (!layout) throw new Error('every figure finds its pages')
      const printed = (row: number, column: number): boolean =>
        layout.printed[row * layout.columns + column] === true && column >= 0 && column < layout.columns
      for (const { row, column } of printedPlaces(layout)) {
        for (const side of [-1, 1]) {
          if (printed(row + 1, column + side))
            expect(printed(row, column + side) || printed(row + 1, column)).toBe(true)
        }
      }
      expect(inked(layout, figure)).toBe(true)
    },
  )
})

/** Does every printed sheet show ink, or join two that would meet at a corner alone? */
const inked = (layout: Layout, figure: readonly Shape[]): boolean => {
  const angle = (layout.angle * Math.PI) / 180
  const spots = figure.flatMap(spotsOn).map(
    ({ x, y }): Point => ({
      x: x * Math.cos(angle) - y * Math.sin(angle),
      y: x * Math.sin(angle) + y * Math.cos(angle),
    }),
  )
  const { min, max } = layout.sheet.window
  const [across, along] = [max.x - min.x, max.y - min.y]
  return printedPlaces(layout).every(({ row, column }) => {
    const left = layout.origin.x + column * (across - layout.overlap)
    const low = layout.origin.y + (layout.rows - 1 - row) * (along - layout.overlap)
    const shows = spots.some(({ x, y }) => x >= left && x <= left + across && y >= low && y <= low + along)
    return shows || joinsCorners(layout, row, column)
  })
}

const joinsCorners = ({ columns, printed }: Layout, row: number, column: number): boolean => {
  const has = (r: number, c: number): boolean => c >= 0 && c < columns && printed[r * columns + c] === true
  return [-1, 1].some((up) => [-1, 1].some((side) => has(row + up, column) && has(row, column + side)))
}

describe('of as many sheets', () => {
  // By hand: 2 sheets of A4 on their sides, or upright beside each other, hold a frame of 360 mm by 240 mm; it is one
  // stroke round the edge, so the grid may lie anywhere in it. A block 100 mm wide in its middle is cut in two by a
  // grid that lies evenly; shifted by 50 mm or more the seam passes beside it.
  const frame = path('PATTERN', box(0, 0, 300, 240))
  const across = (layout: Layout): number => {
    const { min, max } = layout.sheet.window
    return layout.origin.x + (max.x - min.x) - layout.overlap
  }

  it('those whose seam passes beside a piece are taken', () => {
    const layout = fewestPages([frame], [box(120, 40, 180, 200)], A4)
    if (!layout) throw new Error('it finds its pages')
    expect([printedPlaces(layout).length, layout.angle]).toEqual([2, 0])
    // The trimmed edge of the right sheet, where the seam is seen, keeps clear of 120 to 180.
    expect(across(layout) <= 120 || across(layout) >= 180).toBe(true)
  })

  it('without pieces the grid lies evenly around the figure', () => {
    const layout = fewestPages([frame], [], A4)
    if (!layout) throw new Error('it finds its pages')
    const { min, max } = layout.sheet.window
    const whole = 2 * (max.x - min.x) - layout.overlap
    expect(layout.origin.x + whole / 2).toBeCloseTo(150, 6)
  })
})

describe('a roll', () => {
  it('is turned so that the least paper is used', () => {
    const roll: Paper = { sheet: { roll: mm(610), longest: mm(5000) }, margin: mm(10), overlap: mm(10) }
    const layout = fewestPages([path('PATTERN', box(0, 0, 900, 300))], [], roll)
    // Lying across it the box would not fit; along it 900 mm are needed, slanted more.
    expect(layout?.printed).toHaveLength(1)
    const upright = fewestPages([path('PATTERN', box(0, 0, 560, 300))], [], roll)
    expect(upright?.angle).toBe(0)
    expect(upright?.sheet.along).toBeLessThan(300 + 80)
  })
})
