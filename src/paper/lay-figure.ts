import { shapeExtents } from '../drawing/bounds.js'
import type { Drawing, Notes, Shape } from '../drawing/model.js'
import { turnedShapes } from '../drawing/moved.js'
import type { Paper } from '../order/order.js'
import type { Degrees } from '../units/brand.js'
import { degrees, toRadians } from '../units/convert.js'
import { fewestPages } from './fewest-pages.js'
import { inkExtents, inkOf, inkRaster } from './ink.js'
import { type Layout, printedPlaces } from './layout.js'
import { middleOf, onePage } from './one-page.js'
import { PADDING } from './padding.js'
import { type LaidFigure, outlinesOf } from './page-of.js'
import { placeNotes, setNotes } from './place-notes.js'
import { roomBetweenSeams, type Seam, seamsOf } from './seams.js'
import { sheetAround } from './sheet.js'

/** A figure on its pages, and the notes that found no room there. */
export interface Laid {
  readonly figure: LaidFigure
  readonly notesApart?: Notes
}

/** Lays a drawing's figure on the fewest pages, and its notes where these have room. */
export const layFigure = (drawing: Drawing, paper: Paper): Laid => {
  if ('single' in paper.sheet) return { figure: laidFigure(drawing.shapes, singlePage(drawing, paper), []) }
  const { notes } = drawing
  const { figure, layout } = onFewestPages(drawing, paper)
  const blocks = notes ? setNotes(notes) : []
  if (notes && layout.printed.length === 1) {
    // On its side a long figure may leave a column for the notes.
    for (const angle of [layout.angle, degrees(layout.angle + 90)]) {
      const { shapes, raster, extents } = turnedFigure(figure, angle)
      const noted = onePage({ ...layout, angle }, extents, blocks, raster, paper)
      if (noted) return { figure: laidFigure([...shapes, ...noted.notes], noted.layout, []) }
    }
  }
  const { shapes, raster } = turnedFigure(figure, layout.angle)
  const seams = seamsOf(layout, raster)
  if (!notes) return { figure: laidFigure(shapes, layout, seams) }
  for (const place of printedPlaces(layout)) {
    const placed = placeNotes(blocks, roomBetweenSeams(layout, place), raster)
    if (placed) return { figure: laidFigure([...shapes, ...placed], layout, seams) }
  }
  return { figure: laidFigure(shapes, layout, seams), notesApart: notes }
}

/** The whole figure where that takes no more pages than it takes without its asides. */
const onFewestPages = ({ figure, asides, pieces }: Drawing, paper: Paper) => {
  const rest = figure.filter((shape) => !asides.includes(shape))
  const fewest = fewestPages(rest, pieces, paper)
  if (!fewest) throw new RangeError('every figure finds its pages')
  const whole = asides.length > 0 && fewestPages(figure, pieces, paper, printedPlaces(fewest).length)
  return whole ? { figure, layout: whole } : { figure: rest, layout: fewest }
}

const turnedFigure = (figure: readonly Shape[], angle: Degrees) => {
  const shapes = turnedShapes(figure, toRadians(angle))
  const ink = inkOf(shapes)
  const extents = inkExtents(ink)
  return { shapes, extents, raster: inkRaster(ink, extents) }
}

const laidFigure = (shapes: readonly Shape[], layout: Layout, seams: readonly Seam[]): LaidFigure => ({
  layout,
  seams,
  shapes,
  reach: new Map(shapes.map((shape) => [shape, shapeExtents([shape])])),
  outlines: outlinesOf(shapes),
})

/** One page of the drawing's own size. */
const singlePage = ({ shapes }: Drawing, paper: Paper): Layout => {
  const extents = shapeExtents(shapes)
  const { min, max } = extents
  const sheet = sheetAround(paper, max.x - min.x + 2 * PADDING, max.y - min.y + 2 * PADDING)
  const one = { angle: degrees(0), columns: 1, rows: 1, printed: [true], overlap: 0, origin: min }
  return middleOf(sheet, one, extents)
}
