import fc from 'fast-check'
import { expect, it } from 'vitest'
import { point } from '../../src/geometry/point.js'
import { bandsFrom } from '../../src/paper/bands.js'
import { CELL, inkRaster } from '../../src/paper/ink.js'
import { inkedPages } from '../../src/paper/inked-pages.js'
import { fewestByTrying } from './covering-pages.js'

const ACROSS = 9
const UP = 8
/** A page shows 4 cells, of which it shares one with each neighbour. */
const ROW = { window: 4 * CELL, pitch: 3 * CELL }

const cells = fc.uniqueArray(fc.record({ column: fc.nat(ACROSS - 1), row: fc.nat(UP - 1) }), {
  minLength: 1,
  maxLength: 14,
  selector: ({ column, row }) => row * ACROSS + column,
})

/** Which pages of a row show a cell, by their windows alone. */
const pagesShowing = (cell: number, start: number, pages: number): number[] =>
  Array.from({ length: pages }, (_, page) => page).filter((page) => {
    const begins = start + page * ROW.pitch
    return cell * CELL >= begins - 1e-9 && (cell + 1) * CELL <= begins + ROW.window + 1e-9
  })

// Oracle: every set of pages, tried one after the other.
it('takes as few pages as any set that shows all ink and meets nowhere at a corner alone', () => {
  fc.assert(
    fc.property(
      cells,
      fc.integer({ min: 0, max: 2 }),
      fc.integer({ min: 0, max: 2 }),
      (inked, left, below) => {
        const strokes = inked.flatMap(({ column, row }) => {
          const [x, y] = [(column + 0.5) * CELL, (row + 0.5) * CELL]
          return [x, y, x, y]
        })
        const extents = { min: point(0, 0), max: point(ACROSS * CELL - 0.1, UP * CELL - 0.1) }
        const raster = inkRaster(Float64Array.from(strokes), extents)
        const x = bandsFrom(-left * CELL, ACROSS * CELL, raster.columns, ROW)
        const y = bandsFrom(-below * CELL, UP * CELL, raster.rows, ROW)
        const found = inkedPages(raster, x, y, Infinity)
        const shownBy = inked.map(({ column, row }) =>
          pagesShowing(row, y.start, y.pages).flatMap((up) =>
            pagesShowing(column, x.start, x.pages).map((right) => up * x.pages + right),
          ),
        )
        expect(found?.count).toBe(fewestByTrying({ columns: x.pages, rows: y.pages, shownBy }))
        expect(found?.printed.filter((page) => page === 1)).toHaveLength(found?.count ?? 0)
        for (const group of shownBy) expect(group.some((page) => found?.printed[page] === 1)).toBe(true)
      },
    ),
    { numRuns: 300, seed: 3 },
  )
})
