import { notedDrawing } from '../drawing/drawing.js'
import { LARGE, MEDIUM, SMALL } from '../drawing/lettering.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { movedShape } from '../drawing/moved.js'
import { path } from '../drawing/shapes.js'
import { type Outline, turnedOutline } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import type { PanelPlan } from '../panels/plan-panels.js'
import { mm, radians } from '../units/convert.js'
import { type Block, fittedText, lineBlock, movedShapes, stacked, textBlock } from './card-blocks.js'
import { box, type NumberedPanels, numberedPanels } from './panel-drawing.js'
import { filledText, STOPPED, useText, worthText } from './panel-words.js'

/** As large as a shop card, to hang beside it. */
const WIDTH = 186
const HEIGHT = 250
const PADDING = 3
const INSIDE = WIDTH - 2 * PADDING
const GAP = 6

/** How the panels are laid out, to scale, on pages of a shop card's size. */
export const panelPages = (found: PanelPlan): Drawing[] => {
  const blocks = [headBlock(found), ...numberedPanels(found).map(panelBlock)]
  const pages: Block[][] = []
  let taken = Infinity
  for (const block of blocks) {
    if (taken + block.height + GAP > HEIGHT) {
      pages.push([])
      taken = 2 * PADDING
    }
    pages.at(-1)?.push(block)
    taken += block.height + GAP
  }
  return pages.map((page, index) =>
    pageOf(page, `${found.plan.order.title}: panels, page ${index + 1} of ${pages.length}`),
  )
}

const pageOf = (blocks: readonly Block[], title: string): Drawing =>
  notedDrawing({
    kind: 'panels',
    title,
    trueSize: { across: mm(WIDTH), height: mm(HEIGHT) },
    figure: [
      path('NOTE', box(0, 0, WIDTH, HEIGHT)),
      ...movedShapes(stacked(blocks, GAP).shapes, point(PADDING, HEIGHT - PADDING)),
    ],
    asides: [],
    pieces: [],
  })

const headBlock = (found: PanelPlan): Block => {
  const { title, lengths } = found.plan.order
  return stacked(
    [
      fittedText(
        title,
        [
          { height: 7, lines: 1 },
          { height: LARGE, lines: 2 },
        ],
        INSIDE,
      ),
      ...found.uses.map((use) =>
        textBlock(
          [
            `${use.stars.map(({ order }) => order.name).join(', ')}: ${useText(use, lengths)}.`,
            capital(worthText(use)),
          ],
          MEDIUM,
          INSIDE,
        ),
      ),
      textBlock(
        found.unplaced.map(({ order }) => `No panel of the order holds the backing of ${order.name}.`),
        MEDIUM,
        INSIDE,
      ),
      textBlock(found.stopped ? [`Stopped: ${STOPPED}.`] : [], MEDIUM, INSIDE),
      textBlock(
        [
          'Inside cuts first, then outlines. Clamp or tape the panel so that a plate that comes free cannot lift into the beam or the bit. The short line on a plate points to its upper tip.',
        ],
        SMALL,
        INSIDE,
      ),
    ],
    2.4,
  )
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`

/** Room for a picture; a larger panel is drawn smaller. */
const PICTURE = { across: INSIDE, height: 150 }
const SCALES = [2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150]

const panelBlock = ({ filled, title }: NumberedPanels): Block => {
  const { panel, plates } = filled
  const scale =
    SCALES.find((each) => panel.length / each <= PICTURE.across && panel.width / each <= PICTURE.height) ??
    200
  const height = panel.width / scale
  const picture: Shape[] = [
    path('PATTERN', scaled(box(0, 0, panel.length, panel.width), scale)),
    path(
      'GUIDE',
      scaled(box(panel.edge, panel.edge, panel.length - panel.edge, panel.width - panel.edge), scale),
    ),
    ...plates.flatMap(({ star: { backing: plate }, turn, at }) =>
      [
        ...plate.part.inner.map((opening) => path('CUT-INSIDE', opening, 'narrow')),
        path('CUT-OUTSIDE', plate.outline, 'narrow'),
        path('MARK', { vertices: [point(0, 0), point(0, plate.covers / 2)], closed: false }),
      ].map((shape) => {
        const turned = { ...shape, ...turnedOutline(shape, radians(turn)) }
        return { ...shape, ...scaled(movedShape(turned, at), scale) }
      }),
    ),
  ]
  const count = `${filledText(filled)}. Drawn 1 : ${scale}`
  return stacked(
    [
      lineBlock([title], MEDIUM, 'PATTERN'),
      textBlock([count], MEDIUM, INSIDE),
      { height, shapes: movedShapes(picture, point(0, -height)) },
    ],
    1.5,
  )
}

const scaled = ({ vertices, closed }: Outline, scale: number): Outline => ({
  closed,
  vertices: vertices.map((vertex) => ({ ...vertex, x: vertex.x / scale, y: vertex.y / scale })),
})
