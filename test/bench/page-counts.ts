/*
 * For a row of drawings: sheets of the plain grid, sheets of the search, area of the pieces over a window's, and the
 * time. Run: npm run bench:pages
 */

import type { DrawingName } from '../../src/compose/drawing-names.js'
import { DRAWINGS } from '../../src/compose/drawings.js'
import { shapeExtents } from '../../src/drawing/bounds.js'
import { defaultFurniture } from '../../src/furniture/furniture-set.js'
import { signedArea } from '../../src/geometry/outline.js'
import { fewestPages, plainCount, sheetsFor } from '../../src/paper/fewest-pages.js'
import { printedPlaces } from '../../src/paper/layout.js'
import { windowSize } from '../../src/paper/sheet.js'
import { oneStar } from '../orders.js'

const CASES: readonly (readonly [string, string, DrawingName])[] = [
  ['points: 5, tip-angle: 45, across: 300', '{ size: A4 }', 'star-mat'],
  ['points: 5, tip-angle: 45, across: 600', '{ size: A4 }', 'star-mat'],
  ['points: 5, tip-angle: 30, across: 900', '{ size: A4 }', 'star-mat'],
  ['points: 8, tip-angle: 40, across: 900', '{ size: A4 }', 'star-mat'],
  ['points: 5, tip-angle: 45, across: 600', '{ size: Letter }', 'star-mat'],
  ['points: 5, tip-angle: 45, across: 900', '{ size: A3 }', 'star-mat'],
  ['points: 5, tip-angle: 30, across: 1200', '{ size: A4 }', 'arm-pattern'],
  ['points: 6, tip-angle: 50, across: 700, backing: { inset: 10 }', '{ size: A4 }', 'backing'],
  ['points: 5, tip-angle: 45, across: 1500', '{ size: A4 }', 'star-mat'],
  ['points: 5, tip-angle: 45, across: 3000', '{ size: A4 }', 'star-mat'],
]

console.log('drawing, paper: plain grid, search, pieces over a window by area, ms')
for (const [star, paper, name] of CASES) {
  const { stars, order } = oneStar(star, `shop: { paper: ${paper} }`)
  const drawing = stars[0] && DRAWINGS[name](stars[0], order, defaultFurniture('mm'))
  if (!drawing) throw new Error(`the star has no ${name}`)
  const figure = drawing.figure.filter((shape) => !drawing.asides.includes(shape))
  const start = performance.now()
  const layout = fewestPages(figure, drawing.pieces, order.shop.paper)
  const time = performance.now() - start
  if (!layout) throw new Error('every figure finds its pages')
  const extents = shapeExtents(figure)
  const plain = plainCount(extents, order.shop.paper)
  const [sheet] = sheetsFor(order.shop.paper, extents)
  const { across, along } = windowSize(sheet ?? layout.sheet)
  // No strict bound: pages inside the outline that carry no ink are not counted on by it, and strips are shared.
  const area = drawing.pieces.reduce((sum, piece) => sum + Math.abs(signedArea(piece)), 0)
  const bound = Math.ceil(area / (across * along))
  console.log(
    `${name} { ${star} }, ${paper}: ${plain}, ${printedPlaces(layout).length}, ${bound}, ${time.toFixed(0)}`,
  )
}
