import { LARGE, MEDIUM, SMALL } from '../drawing/lettering.js'
import type { Drawing, Label, Path, Shape } from '../drawing/model.js'
import { movedShape } from '../drawing/moved.js'
import { centredLabel, path } from '../drawing/shapes.js'
import { distanceToEdge } from '../geometry/leaves-room.js'
import { edges, mapped, type Outline, rectangle, turnedOutline } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import {
  type Backed,
  type FilledPanel,
  isBacked,
  type LaidPlate,
  type PanelPlan,
} from '../panels/panel-plan.js'
import type { Plan } from '../plan/plan.js'
import { letterOf } from '../stock/blank-kinds.js'
import { mm, radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { type Block, fittedText, movedShapes, stacked, textBlock } from './card-blocks.js'
import { framedCard, insideFrame, onCards, PADDING } from './card-frame.js'
import { cardSize } from './card-size.js'
import { LOOSE_CAUTION } from './cautions.js'
import { type NumberedPanels, numberedPanels } from './panel-drawing.js'
import { filledText, type PlateLetters, panelNotes } from './panel-words.js'

const GAP = 6

/** How the panels are laid out, to scale, on pages of a shop card's size. */
export const panelPages = (found: PanelPlan): Drawing[] => {
  const { order } = found.plan
  const size = cardSize(order)
  const inside = insideFrame(size.across)
  const blocks = [
    headBlock(found, inside),
    ...numberedPanels(found).map((panels) => panelBlock(panels, found.plan, inside)),
  ]
  const pages = onCards(blocks, size, (page) => stacked(page, GAP).height + 2 * PADDING)
  return pages.map((page, index) =>
    framedCard(
      { kind: 'panels', title: `${order.title}: panels, page ${index + 1} of ${pages.length}` },
      size.across,
      size.height,
      movedShapes(stacked(page, GAP).shapes, point(PADDING, size.height - PADDING)),
    ),
  )
}

const headBlock = (found: PanelPlan, inside: number): Block => {
  const { title } = found.plan.order
  return stacked(
    [
      fittedText(
        title,
        [
          { height: 7, lines: 1 },
          { height: LARGE, lines: 2 },
        ],
        inside,
      ),
      ...panelNotes(found).map((lines) => textBlock(lines, MEDIUM, inside)),
      textBlock(
        [
          `Inside cuts first, then outlines. ${LOOSE_CAUTION} A short line on a plate points to its upper tip.`,
        ],
        SMALL,
        inside,
      ),
    ],
    2.4,
  )
}

/** How high a picture may be; a larger panel is drawn smaller. */
const PICTURE = 150
/** ISO 3098's smallest lettering. */
const LEAST_LETTER = 1.8
const SCALES = [2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150]

const panelBlock = ({ filled, title }: NumberedPanels, plan: Plan, inside: number): Block => {
  const { panel, plates } = filled
  const scale = SCALES.find((each) => panel.length / each <= inside && panel.width / each <= PICTURE) ?? 200
  const height = panel.width / scale
  const letters = lettersOf(filled, plan, scale)
  const picture: Shape[] = [
    path('PATTERN', scaled(rectangle(0, 0, panel.length, panel.width), scale)),
    path(
      'GUIDE',
      scaled(rectangle(panel.edge, panel.edge, panel.length - panel.edge, panel.width - panel.edge), scale),
    ),
    ...plates.flatMap((laid) =>
      [...plateLines(laid.star), ...upLine(laid.star, letters, scale)].map((shape) => {
        const turned = { ...shape, ...turnedOutline(shape, radians(laid.turn)) }
        return { ...shape, ...scaled(movedShape(turned, laid.at), scale) }
      }),
    ),
    ...plates.flatMap((laid) => plateLetter(laid, letters, scale)),
  ]
  const count = `${filledText(filled, letters)}. Drawn 1\u00a0:\u00a0${scale}`
  return stacked(
    [
      fittedText(title, [{ height: MEDIUM, lines: 2 }], inside),
      textBlock([count], MEDIUM, inside),
      { height, shapes: movedShapes(picture, point(0, -height)) },
    ],
    1.5,
  )
}

/**
 * Small letters, for capitals name blanks of boards; a star has one letter on all panels. None where all plates are of one
 * star; '' where plates are too small for one.
 */
const lettersOf = ({ worth }: FilledPanel, { stars }: Plan, scale: number): PlateLetters =>
  new Map(
    worth.stars.length < 2
      ? []
      : stars
          .filter(isBacked)
          .map((star, index) => [
            star,
            letterRoom(star, scale).height < LEAST_LETTER ? '' : letterOf(index).toLowerCase(),
          ]),
  )

const plateLines = ({ backing: plate }: Backed): Path[] => [
  ...plate.part.inner.map((opening) => path('CUT-INSIDE', opening, 'narrow')),
  path('CUT-OUTSIDE', plate.outline, 'narrow'),
]

/** To the upper tip; on a small plate the letter takes its place. */
const upLine = (star: Backed, letters: PlateLetters, scale: number): Path[] =>
  letters.get(star) && letterRoom(star, scale).instead
    ? []
    : [path('MARK', { vertices: [point(0, 0), point(0, star.backing.covers / 2)], closed: false })]

/** White around a letter, and how far the corner of a wide one's box is from its middle, over its height. */
const AROUND = 0.3
const HALF_DIAGONAL = 0.75

/** How high a plate's letter is, and whether it stands in the middle instead of the line to the tip. */
const letterRoom = (
  { backing }: Backed,
  scale: number,
): { readonly height: number; readonly instead: boolean } => {
  const beside = backing.covers / scale / 2
  if (beside >= LEAST_LETTER) return { height: Math.min(MEDIUM, beside), instead: false }
  const lines = [backing.outline, ...backing.part.inner].flatMap(edges)
  const room = Math.min(...lines.map((line) => distanceToEdge(point(0, 0), line))) / scale
  return { height: Math.min(SMALL, (room - AROUND) / HALF_DIAGONAL), instead: true }
}

/** Upright: below the plate's middle, clear of the line to its tip, or in the middle. */
const plateLetter = ({ star, turn, at }: LaidPlate, letters: PlateLetters, scale: number): Label[] => {
  const letter = letters.get(star) ?? ''
  if (letter === '') return []
  const { height, instead } = letterRoom(star, scale)
  const below = instead ? 0 : height
  const middle = point(at.x / scale + below * maths.sin(turn), at.y / scale - below * maths.cos(turn))
  return [centredLabel(letter, middle, { height: mm(height) })]
}

const scaled = (outline: Outline, scale: number): Outline =>
  mapped(outline, ({ x, y }) => point(x / scale, y / scale))
