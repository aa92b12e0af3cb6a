import { describe, expect, it } from 'vitest'
import type { Side } from '../../src/drawing/sides.js'
import { type Point, point } from '../../src/geometry/point.js'
import { bandsFrom } from '../../src/paper/bands.js'
import { CELL, inkExtents, inkRaster } from '../../src/paper/ink.js'
import { inkedPages } from '../../src/paper/inked-pages.js'
import { printOf } from '../prints.js'
import { type Grid, hangs, leastPages } from './least-pages.js'
import { shown } from './shown.js'

const WINDOW = 100
const PITCH = 92

/** The search's own answer for strokes on one grid, and the grid. */
const found = (strokes: readonly Side[], shiftX: number, shiftY: number) => {
  const ink = Float64Array.from(strokes.flatMap(([a, b]) => [a.x, a.y, b.x, b.y]))
  const { min, max } = inkExtents(ink)
  const raster = inkRaster(ink, { min, max })
  const row = { window: WINDOW, pitch: PITCH }
  const x = bandsFrom(shiftX, max.x - min.x, raster.columns, row)
  const y = bandsFrom(shiftY, max.y - min.y, raster.rows, row)
  const grid: Grid = {
    corner: point(min.x + shiftX, min.y + shiftY),
    columns: x.pages,
    rows: y.pages,
    window: point(WINDOW, WINDOW),
    pitch: point(PITCH, PITCH),
  }
  const pages = inkedPages(raster, x, y, Infinity)
  const set = pages?.printed.flatMap((printed, page) => (printed ? [page] : [])) ?? []
  return { grid, set, count: pages?.count }
}

/** Numbers from 0 to 1, the same in every run. */
const numbersFrom = (seed: number): (() => number) => {
  let state = seed
  return () => {
    state = (state * 1664525 + 1013904223) >>> 0
    return state / 2 ** 32
  }
}

const cases = (count: number, seed: number, joined: boolean) => {
  const next = numbersFrom(seed)
  const anywhere = (): Point => point(next() * 280, next() * 280)
  return Array.from({ length: count }, () => {
    const corners = Array.from({ length: 2 + Math.floor(next() * 4) }, anywhere)
    const strokes = corners.slice(1).map((to, index): Side => {
      const from = corners[index] ?? to
      return joined ? [from, to] : [to, point(to.x + 60 * (next() - 0.5), to.y + 60 * (next() - 0.5))]
    })
    const shift = () => -5 * Math.floor(next() * 18)
    return { strokes, shiftX: shift(), shiftY: shift() }
  })
}

/** The same grid with every strip that neighbours share a cell of the raster narrower on both sides. */
const narrowed = (grid: Grid): Grid => ({ ...grid, trimmed: CELL })

describe('pages of one grid, against every set of its pages', () => {
  it('are the fewest for ink that hangs together, but for strips that the raster takes a cell too narrow', () => {
    let same = 0
    const joinedAmiss: number[] = []
    for (const { strokes, shiftX, shiftY } of cases(600, 7, true)) {
      const { grid, set, count = 0 } = found(strokes, shiftX, shiftY)
      if (grid.columns * grid.rows > 12) continue
      expect(set).toHaveLength(count)
      const least = leastPages(strokes, grid, count)
      expect(count).toBeGreaterThanOrEqual(least)
      if (count === least) same++
      else if (count > leastPages(strokes, narrowed(grid), count)) joinedAmiss.push(count - least)
    }
    expect(same).toBeGreaterThan(500)
    expect(joinedAmiss).toEqual([])
  })

  it('hang together by whole edges, even where the ink does not', () => {
    for (const { strokes, shiftX, shiftY } of cases(600, 11, false)) {
      const { grid, set, count = 0 } = found(strokes, shiftX, shiftY)
      expect(hangs(set, grid.columns)).toBe(true)
      if (grid.columns * grid.rows > 12) continue
      expect(count).toBeGreaterThanOrEqual(leastPages(strokes, grid, count))
    }
  })

  it('leave no page out of a line that runs through every one, and leave the rest of a diagonal out', () => {
    const across: Side = [point(0, 0), point(280, 0)]
    expect(found([across], 0, 0).count).toBe(3)
    // Three pages on the diagonal, and two that join them.
    expect(found([[point(0, 0), point(280, 280)]], 0, 0).count).toBe(5)
  })
})

/** Are all pages reached from the first over edges that neighbours share? */
const hangTogether = (star: string, name: 'star-mat' | 'backing'): boolean => {
  const pages = printOf(star, '{ size: A4 }', name).pages.filter((page) => page.name !== 'Notes')
  const boxes = pages.map(shown)
  const [first, ...rest] = boxes
  const reached = first ? [first] : []
  let left = rest
  for (const a of reached) {
    const touches = (b: typeof a): boolean => {
      const across = Math.min(a.max.x, b.max.x) - Math.max(a.min.x, b.min.x)
      const along = Math.min(a.max.y, b.max.y) - Math.max(a.min.y, b.min.y)
      return Math.min(across, along) > 1e-6 && Math.max(across, along) > 50
    }
    reached.push(...left.filter(touches))
    left = left.filter((box) => !touches(box))
  }
  return left.length === 0
}

it.each([2200, 3000])('the middle of a plate of %i mm with its note is joined to its outline', (across) => {
  expect(hangTogether(`points: 8, tip-angle: 40, across: ${across}, backing: { inset: 10 }`, 'backing')).toBe(
    true,
  )
})
