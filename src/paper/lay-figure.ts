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
import { NOTE_HEIGHTS, placeNotes, type SetNotes, setNotes } from './place-notes.js'
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
  const bare = betweenSeams(figure, layout)
  if (!notes) return { figure: bare.laid([]) }
  for (const height of NOTE_HEIGHTS) {
    const blocks = setNotes(notes, height)
    const noted =
      layout.printed.length === 1 && besideOnePage(figure, layout, blocks, paper, drawing.apart ? -90 : 90)
    if (noted) return { figure: noted }
    const placed = bare.place(blocks)
    if (placed) return { figure: bare.laid(placed) }
  }
  return { figure: bare.laid([]), notesApart: notes }
}

/**
 * Figure and notes on one sheet: on its side a long figure may leave a column for the notes.
 *
 * @param onSide how far it is turned then; parts that share a sheet may be turned already, their letters reading up
 */
const besideOnePage = (
  figure: readonly Shape[],
  layout: Layout,
  blocks: readonly SetNotes[],
  paper: Paper,
  onSide: number,
): LaidFigure | undefined => {
  for (const angle of [layout.angle, degrees(layout.angle + onSide)]) {
    const { shapes, raster, extents } = turnedFigure(figure, angle)
    const noted = onePage({ ...layout, angle }, extents, blocks, raster, paper)
    if (noted) return laidFigure([...shapes, ...noted.notes], noted.layout, [])
  }
  return undefined
}

/** The figure on the pages it has, and the room that is left on each between its seams. */
const betweenSeams = (figure: readonly Shape[], layout: Layout) => {
  const { shapes, raster } = turnedFigure(figure, layout.angle)
  const seams = seamsOf(layout, raster)
  return {
    laid: (notes: readonly Shape[]): LaidFigure => laidFigure([...shapes, ...notes], layout, seams),
    place: (blocks: readonly SetNotes[]): readonly Shape[] | undefined => {
      for (const place of printedPlaces(layout)) {
        const placed = placeNotes(blocks, roomBetweenSeams(layout, place), raster)
        if (placed) return placed
      }
      return undefined
    },
  }
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
  const one = {
    angle: degrees(0),
    columns: 1,
    rows: 1,
    printed: [true],
    overlap: 0,
    firstRow: 0,
    origin: min,
  }
  return middleOf(sheet, one, extents)
}
