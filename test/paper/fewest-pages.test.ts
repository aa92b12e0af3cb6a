import { describe, expect, it } from 'vitest'
import { shapeExtents } from '../../src/drawing/bounds.js'
import type { Shape } from '../../src/drawing/model.js'
import { movedShape, turnedShapes } from '../../src/drawing/moved.js'
import { chain, path, ring } from '../../src/drawing/shapes.js'
import { type Side, shapeSides } from '../../src/drawing/sides.js'
import { closedOutline, type Outline } from '../../src/geometry/outline.js'
import { point } from '../../src/geometry/point.js'
import { fewestPages, plainCount, sheetsFor } from '../../src/paper/fewest-pages.js'
import { type Layout, printedPlaces, windowCorner } from '../../src/paper/layout.js'
import { windowSize } from '../../src/paper/sheet.js'
import { radians } from '../../src/units/convert.js'
import { planOf } from '../orders.js'
import { leastPages } from './least-pages.js'
import { inside, spotsOn } from './shown.js'

/** White kept at every edge of a window, in mm. */
const WHITE = 1

const paperOf = (paper: string) =>
  planOf(`stars: [{ points: 5, tip-angle: 45, across: 200 }]\nshop: { paper: ${paper} }`).order.shop.paper

const laidOn = (paper: string, figure: readonly Shape[], pieces: readonly Outline[] = []): Layout => {
  const layout = fewestPages(figure, pieces, paperOf(paper))
  if (!layout) throw new Error('every figure finds its pages')
  return layout
}

const countOf = (layout: Layout): number => printedPlaces(layout).length

const turnedBy = (figure: readonly Shape[], degrees: number): readonly Shape[] =>
  turnedShapes(figure, radians((degrees * Math.PI) / 180))

/** Windows of the printed pages, over the turned figure. */
const windowsOf = (layout: Layout) =>
  printedPlaces(layout).map((place) => {
    const min = windowCorner(layout, place)
    const { across, along } = windowSize(layout.sheet)
    return { min, max: point(min.x + across, min.y + along) }
  })

const polygon = (...corners: [number, number][]): Shape =>
  path('PATTERN', closedOutline(corners.map(([x, y]) => point(x, y))))

const stroke = (...corners: [number, number][]): Shape =>
  chain(
    'PATTERN',
    corners.map(([x, y]) => point(x, y)),
  )

const FIGURES: Readonly<Record<string, readonly Shape[]>> = {
  'a long stroke': [stroke([0, 0], [420, 130])],
  'a triangle': [polygon([0, 0], [390, 0], [150, 260])],
  'a corner': [stroke([0, 330], [0, 0], [330, 0])],
  'a square': [polygon([0, 0], [260, 0], [260, 260], [0, 260])],
  'a zigzag': [stroke([0, 0], [160, 300], [200, 20], [360, 240])],
}

/**
 * Is there a way over the search's turns (2 degrees) and offsets (5 mm, and the even one) that takes `most` pages or
 * fewer? Found with exact strokes and every set of pages.
 */
const someWayTakes = (most: number, figure: readonly Shape[], paper: string): boolean => {
  const { overlap, ...rest } = paperOf(paper)
  for (let degrees = 0; degrees < 180; degrees += 2) {
    const turned = turnedBy(figure, degrees)
    const strokes: readonly Side[] = turned.flatMap(shapeSides)
    const { min, max } = shapeExtents(turned)
    for (const sheet of sheetsFor({ overlap, ...rest }, { min, max })) {
      const { across, along } = windowSize(sheet)
      const window = point(across - 2 * WHITE, along - 2 * WHITE)
      const pitch = point(across - overlap, along - overlap)
      for (const x of starts(max.x - min.x, window.x, pitch.x)) {
        for (const y of starts(max.y - min.y, window.y, pitch.y)) {
          const columns = pagesFrom(x, max.x - min.x, window.x, pitch.x)
          const rows = pagesFrom(y, max.y - min.y, window.y, pitch.y)
          // Fewer cannot reach from the first to the last column and row.
          if (columns + rows - 1 > most) continue
          const grid = { corner: point(min.x + x, min.y + y), columns, rows, window, pitch }
          if (leastPages(strokes, grid, most) <= most) return true
        }
      }
    }
  }
  return false
}

const pagesFrom = (start: number, length: number, window: number, pitch: number): number => {
  let pages = 1
  while (start + (pages - 1) * pitch + window < length - 1e-6) pages++
  return pages
}

const starts = (length: number, window: number, pitch: number): number[] => {
  const pages = pagesFrom(0, length, window, pitch)
  const even = -((pages - 1) * pitch + window - length) / 2
  return pages === 1
    ? [even]
    : [even, ...Array.from({ length: Math.ceil(pitch / 5) }, (_, step) => -5 * step)]
}

describe.each(Object.entries(FIGURES))('%s', (_, figure) => {
  it.each(['{ size: A4 }', '{ size: Letter, overlap: 15, margin: 6 }'])(
    'on %s takes the fewest pages',
    (paper) => {
      const count = countOf(laidOn(paper, figure))
      expect(count).toBeGreaterThan(1)
      expect(someWayTakes(count, figure, paper)).toBe(true)
      expect(someWayTakes(count - 1, figure, paper)).toBe(false)
    },
  )

  it.each(['{ size: A4 }', '{ size: A4, margin: 25, overlap: 5 }', '{ roll: 297, longest: 300 }'])(
    'on %s is shown whole with white around it, on pages that all carry ink, never more than the plain grid',
    (paper) => {
      const layout = laidOn(paper, figure)
      const windows = windowsOf(layout)
      const spots = turnedBy(figure, layout.angle).flatMap(spotsOn)
      const lost = spots.filter((spot) => !windows.some((window) => inside(spot, window, WHITE - 1e-6)))
      expect(lost).toEqual([])
      expect(windows.filter((window) => !spots.some((spot) => inside(spot, window)))).toEqual([])
      expect(windows.length).toBeLessThanOrEqual(plainCount(shapeExtents(figure), paperOf(paper)))
    },
  )
})

describe('pages without ink', () => {
  it('inside a thin ring are left out', () => {
    const layout = laidOn('{ size: A4 }', [ring('PATTERN', point(0, 0), 420)])
    expect(countOf(layout)).toBeLessThan(layout.columns * layout.rows)
    expect(windowsOf(layout).some((window) => inside(point(0, 0), window))).toBe(false)
  })

  it('between the legs of a corner are left out', () => {
    const layout = laidOn('{ size: A4 }', [stroke([0, 700], [0, 0], [700, 0])])
    expect(countOf(layout)).toBeLessThan(layout.columns * layout.rows)
  })
})

describe('ties', () => {
  // Two squares of 120 mm, 60 mm apart, joined by a bar: 300 mm, too long for a page, so one seam there must be. It
  // finds room between them, where it cuts no piece; it need not go through either.
  const square = (x: number): Outline =>
    closedOutline([point(x, 0), point(x + 120, 0), point(x + 120, 120), point(x, 120)])
  const pieces = [square(0), square(180)]
  const figure = [...pieces.map((piece) => path('PATTERN', piece)), stroke([120, 60], [180, 60])]

  const seamsThrough = (layout: Layout): number => {
    const turned = pieces.map((piece) => turnedBy([path('PATTERN', piece)], layout.angle).flatMap(spotsOn))
    const windows = windowsOf(layout)
    // A piece that no seam cuts lies in a single page, and its trimmed neighbours do not reach into it.
    return turned.filter((spots) => !windows.some((window) => spots.every((spot) => inside(spot, window))))
      .length
  }

  it('go to the way that cuts no piece', () => {
    const layout = laidOn('{ size: A4, margin: 25 }', figure, pieces)
    expect(countOf(layout)).toBe(2)
    expect(seamsThrough(layout)).toBe(0)
  })
})

describe('a roll', () => {
  const bar: readonly Shape[] = [polygon([0, 0], [900, 0], [900, 100], [0, 100])]

  it('is cut to the shortest length: a bar across it rather than along it', () => {
    const layout = laidOn('{ roll: 1000 }', bar)
    expect(countOf(layout)).toBe(1)
    expect(Math.abs(layout.angle)).toBe(0)
    expect(windowSize(layout.sheet).along).toBeCloseTo(100 + 2 * WHITE, 6)
  })

  it('that is given standing is laid across it too', () => {
    const layout = laidOn('{ roll: 1000 }', turnedBy(bar, 90))
    expect(Math.abs(layout.angle)).toBe(90)
    expect(windowSize(layout.sheet).along).toBeCloseTo(100 + 2 * WHITE, 6)
  })
})

it('the search does not depend on where the figure lies', () => {
  const figure = FIGURES['a triangle'] ?? []
  const away = figure.map((shape) => movedShape(shape, point(-3210.4, 987.6)) as Shape)
  const [here, there] = [laidOn('{ size: A4 }', figure), laidOn('{ size: A4 }', away)]
  expect([there.angle, countOf(there)]).toEqual([here.angle, countOf(here)])
})
