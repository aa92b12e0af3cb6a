import { dimension } from '../drawing/dimension.js'
import { notedDrawing } from '../drawing/drawing.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { centredLabel, cross, line, path, ring } from '../drawing/shapes.js'
import { blankIsArm, kiteInscribed } from '../geometry/kite.js'
import { boxOf, closedOutline, type Extents, type Outline } from '../geometry/outline.js'
import { add, direction, type Point, point, scale } from '../geometry/point.js'
import { starOutline } from '../geometry/star.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { degrees, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { showAngle, showLength, showMovement } from '../units/show.js'
import { SAME_POINT } from '../units/tolerance.js'
import { PRINT_CAUTION } from './cautions.js'
import { ownNote } from './own-note.js'
import { sizeText } from './size-text.js'

/**
 * The whole star at full size, one tip up: arms are laid on it for the dry fit and the glue-up. Joint lines, arm
 * numbers clockwise from the top, centre marks.
 */
export const starMat = (plan: StarPlan, order: Order): Drawing => {
  const { star } = plan
  const outline = starOutline(star)
  const extents = boxOf([outline])
  const trueSize = { across: star.across, height: star.height }
  const corners = outline.vertices
  const valleys = corners.filter((_, corner) => corner % 2 === 1)
  const tips = corners.filter((_, corner) => corner % 2 === 0)
  const dimensions = matDimensions(plan, order, extents, corners)
  return notedDrawing({
    kind: 'star-mat',
    title: `${plan.order.name}: star mat`,
    trueSize,
    figure: [
      path('PATTERN', outline),
      ...valleys.map((valley) => line('PATTERN', point(0, 0), valley, 'narrow')),
      ...centreMarks(plan, tips),
      ...armNumbers(plan, tips),
      ...dimensions,
    ],
    asides: dimensions,
    notes: { title: `${plan.order.name}: star mat`, lines: matNotes(plan, order, trueSize) },
    pieces: armOutlines(corners),
  })
}

/** The kites the mat is laid with. */
const armOutlines = (corners: readonly Point[]): Outline[] =>
  corners.flatMap((tip, corner) => {
    if (corner % 2 === 1) return []
    const [before, after] = [corners.at(corner - 1), corners[corner + 1]]
    return before && after ? [closedOutline([point(0, 0), before, tip, after])] : []
  })

/** A cross and ring at the centre, and a short line beyond each tip on the arm's axis. */
const centreMarks = ({ star }: StarPlan, tips: readonly Point[]): Shape[] => {
  const arm = Math.min(6, star.valleyRadius / 3)
  const centre = point(0, 0)
  return [
    ...cross('GUIDE', centre, arm),
    ring('GUIDE', centre, arm / 2),
    ...tips.map((tip) => {
      const out = direction(centre, tip)
      return line('GUIDE', add(tip, scale(out, 1)), add(tip, scale(out, 5)))
    }),
  ]
}

/** Clockwise from the tip that points up, each in the middle of the circle that touches its arm's four edges. */
const armNumbers = ({ star }: StarPlan, tips: readonly Point[]): Shape[] => {
  const inscribed = kiteInscribed(star)
  const fromCentre = star.radius - inscribed / maths.sin(toRadians(degrees(star.tipAngle / 2)))
  const height = Math.min(10, inscribed * 0.7)
  return tips.map((tip, index) => {
    const number = index === 0 ? 1 : star.points - index + 1
    return centredLabel(String(number), scale(tip, fromCentre / star.radius), { layer: 'PATTERN', height })
  })
}

const matDimensions = (
  { star }: StarPlan,
  order: Order,
  { min, max }: Extents,
  corners: readonly Point[],
): Shape[] => {
  const at = (value: number, of: (corner: Point) => number): Point =>
    corners.find((corner) => Math.abs(of(corner) - value) < SAME_POINT) ?? point(0, 0)
  const left = at(min.x, ({ x }) => x)
  return [
    ...dimension(
      left,
      point(max.x, left.y),
      'across',
      min.y - 14,
      `across ${showLength(star.across, order.lengths)}`,
    ),
    ...dimension(
      at(min.y, ({ y }) => y),
      at(max.y, ({ y }) => y),
      'up',
      min.x - 12,
      `height ${showLength(star.height, order.lengths)}`,
    ),
  ]
}

const matNotes = (plan: StarPlan, order: Order, trueSize: Drawing['trueSize']): string[] => {
  const { star, gapPerTenth } = plan
  const show = (length: typeof star.radius) => showLength(length, order.lengths)
  return [
    ...ownNote(plan),
    'Lay the arms on their numbers without glue, tips on the tip lines. Close the joints one after the other and look at the last one.',
    `A tenth of a degree in every ${blankIsArm(star) ? 'cut' : 'joint cut'} opens or jams the last joint by ${showMovement(gapPerTenth, order.lengths)}.`,
    `Centre to tip ${show(star.radius)}, centre to valley ${show(star.valleyRadius)}; centre angle ${showAngle(star.centreAngle)}. Outline ${sizeText(trueSize, order.lengths)}.`,
    'Cover the mat with film before you glue.',
    PRINT_CAUTION,
  ]
}
