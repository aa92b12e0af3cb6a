import { notedDrawing } from '../drawing/drawing.js'
import type { Shape } from '../drawing/model.js'
import { label, path } from '../drawing/shapes.js'
import { boxOf, closedOutline, type Extents } from '../geometry/outline.js'
import { point, subtract } from '../geometry/point.js'
import type { PrintedDrawing } from '../paper/page.js'
import { mm } from '../units/convert.js'
import { writeSvg } from '../write/svg.js'

/** Lettering of the pages' names over the longer side of the map. */
const NAME = 0.06

/** The drawing over the grid of its pages, as SVG; pages of notes alone are left out. */
export const gridMap = ({ drawing, pages }: PrintedDrawing): string => {
  const shown = pages.flatMap(({ name, views: [view] }) => (view?.reach ? [{ name, view }] : []))
  const boxes = shown.map(
    ({ view: { window, shift } }): Extents => ({
      min: subtract(window.min, shift),
      max: subtract(window.max, shift),
    }),
  )
  const outlines = boxes.map(({ min, max }) =>
    closedOutline([min, point(max.x, min.y), max, point(min.x, max.y)]),
  )
  const { min, max } = boxOf(outlines)
  const height = mm(NAME * Math.max(max.x - min.x, max.y - min.y))
  const figure: Shape[] = [
    ...(shown[0]?.view.shapes.filter((shape) => shape.kind === 'path') ?? []),
    ...outlines.map((outline) => path('GUIDE', outline, 'wide')),
    ...boxes.map((box, index) =>
      label(shown[index]?.name ?? '', point(box.min.x + height / 2, box.max.y - 1.5 * height), { height }),
    ),
  ]
  return writeSvg(
    notedDrawing({
      kind: 'page-map',
      title: `${drawing.title}: ${pages.length === 1 ? '1 sheet' : `${pages.length} sheets`}`,
      trueSize: { across: mm(max.x - min.x), height: mm(max.y - min.y) },
      figure,
      asides: [],
      pieces: [],
    }),
  )
}
