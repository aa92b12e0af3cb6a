import { notedDrawing } from '../drawing/drawing.js'
import type { Shape } from '../drawing/model.js'
import { movedShape } from '../drawing/moved.js'
import { label, path } from '../drawing/shapes.js'
import { boxOf, closedOutline, type Extents, type Outline } from '../geometry/outline.js'
import { point, subtract } from '../geometry/point.js'
import type { Page, PrintedDrawing, View } from '../paper/page.js'
import { mm } from '../units/convert.js'
import { writeSvg } from '../write/svg.js'

/** Lettering of the pages' names over the longer side of the map. */
const NAME = 0.06
/** Between figures that stand apart, in mm. */
const APART = 20

/** Does a page show some of the drawing? Pages of notes alone do not. */
export const isMapped = ({ views: [view] }: Page): boolean => view?.reach !== undefined

/** The drawing over the grid of its pages, as SVG; pages of notes alone are left out. */
export const gridMap = ({ drawing, pages }: PrintedDrawing): string => {
  const shown = pages.filter(isMapped).flatMap(({ name, views: [view] }) => (view ? [{ name, view }] : []))
  const figures = [...new Set(shown.map(({ view }) => view.shapes))].map((shapes) => {
    const own = shown.filter(({ view }) => view.shapes === shapes)
    return { shapes, own, extents: boxOf(own.map(({ view }) => windowOf(view))) }
  })
  const height = mm(NAME * Math.max(...figures.map(({ extents }) => longerSide(extents))))
  let left = 0
  const figure = figures.flatMap(({ shapes, own, extents }): Shape[] => {
    const by = point(left - extents.min.x, -extents.max.y)
    left += extents.max.x - extents.min.x + APART
    return [
      ...shapes.filter((shape) => shape.kind === 'path'),
      ...own.map(({ view }) => path('GUIDE', windowOf(view), 'wide')),
      ...own.map(({ name, view }) => {
        const { min, max } = boxOf([windowOf(view)])
        return label(name, point(min.x + height / 2, max.y - 1.5 * height), { height })
      }),
    ].map((shape) => movedShape(shape, by))
  })
  const tallest = Math.max(...figures.map(({ extents: { min, max } }) => max.y - min.y))
  return writeSvg(
    notedDrawing({
      kind: 'page-map',
      title: `${drawing.title}: ${pages.length === 1 ? '1 sheet' : `${pages.length} sheets`}`,
      trueSize: { across: mm(left - APART), height: mm(tallest) },
      figure,
      asides: [],
      pieces: [],
    }),
  )
}

/** What a view shows of its figure. */
const windowOf = ({ window, shift }: View): Outline => {
  const [min, max] = [subtract(window.min, shift), subtract(window.max, shift)]
  return closedOutline([min, point(max.x, min.y), max, point(min.x, max.y)])
}

const longerSide = ({ min, max }: Extents): number => Math.max(max.x - min.x, max.y - min.y)
