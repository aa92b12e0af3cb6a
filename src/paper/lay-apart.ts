import { shapeExtents } from '../drawing/bounds.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { cutOutlines, laidShapes } from '../drawing/moved.js'
import { layBoxes } from '../geometry/lay-boxes.js'
import { point } from '../geometry/point.js'
import type { Paper } from '../order/order.js'
import { sheetsFor } from './fewest-pages.js'
import { type Laid, layFigure } from './lay-figure.js'
import { printedPlaces } from './layout.js'
import { PADDING } from './padding.js'
import type { LaidFigure } from './page-of.js'
import { windowSize } from './sheet.js'

/** White between parts that share a sheet: a hand cuts them apart. */
const GAP = 6
/** What the search for pages may take an outline to be larger. */
const RASTER = 4

/** The figures of a drawing, each with pages of its own, and the notes that found no room on any. */
export interface LaidApart extends Pick<Laid, 'notesApart'> {
  readonly figures: readonly LaidFigure[]
}

/**
 * Lays a drawing on the fewest pages. Parts that need not hang together lie whole wherever they fit a sheet, several on
 * one; where a part takes more, and all parts laid as one figure take fewer pages, so they are laid.
 */
export const layDrawing = (drawing: Drawing, paper: Paper): LaidApart => {
  const apart = drawing.apart && 'size' in paper.sheet ? laidApart(drawing, drawing.apart, paper) : undefined
  if (apart?.figures.every(({ layout }) => printedPlaces(layout).length === 1)) return apart
  const { figure, ...rest } = layFigure(drawing, paper)
  const whole = { figures: [figure], ...rest }
  return apart && pagesOf(apart) <= pagesOf(whole) ? apart : whole
}

const pagesOf = ({ figures, notesApart }: LaidApart): number =>
  figures.reduce((sum, { layout }) => sum + printedPlaces(layout).length, notesApart ? 1 : 0)

const laidApart = (drawing: Drawing, parts: readonly (readonly Shape[])[], paper: Paper): LaidApart => {
  const { notes, ...bare } = drawing
  const groups = groupsOf(parts, paper).map(
    (figure): Drawing => ({ ...bare, figure, shapes: figure, pieces: cutOutlines(figure) }),
  )
  const figures = groups.map((group) => layFigure(group, paper).figure)
  const named = (all: readonly LaidFigure[]): LaidFigure[] => {
    let firstRow = 0
    return all.map((figure) => {
      const layout = { ...figure.layout, firstRow }
      firstRow += layout.rows
      return { ...figure, layout }
    })
  }
  if (!notes) return { figures: named(figures) }
  for (const [index, group] of groups.entries()) {
    const noted = layFigure({ ...group, notes }, paper)
    if (!noted.notesApart) return { figures: named(figures.with(index, noted.figure)) }
  }
  return { figures: named(figures), notesApart: notes }
}

/** Parts that are too large for a sheet, one by one, then the others as they share sheets. */
const groupsOf = (parts: readonly (readonly Shape[])[], paper: Paper): (readonly Shape[])[] => {
  const boxed = parts.map((shapes) => {
    const { min, max } = shapeExtents(shapes)
    return { shapes, min, max, across: max.x - min.x, height: max.y - min.y }
  })
  const [sheet] = sheetsFor(paper, { min: point(0, 0), max: point(0, 0) })
  const window = sheet ? windowSize(sheet) : { across: 0, along: 0 }
  const room = {
    across: window.across - 2 * PADDING - RASTER,
    height: window.along - 2 * PADDING - RASTER,
  }
  const small = boxed.filter((box) => layBoxes([box], GAP, room))
  const places = layBoxes(small, GAP, room) ?? []
  const shared: Shape[][] = []
  for (const [index, { shapes, min, max }] of small.entries()) {
    const place = places[index]
    if (!place) continue
    const lying = laidShapes(shapes, { min, max }, place.turned, point(place.x, place.y))
    shared[place.sheet] = [...(shared[place.sheet] ?? []), ...lying]
  }
  return [...boxed.filter((box) => !small.includes(box)).map(({ shapes }) => shapes), ...shared]
}
