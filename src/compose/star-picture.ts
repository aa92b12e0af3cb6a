import { dimension } from '../drawing/dimension.js'
import type { Shape } from '../drawing/model.js'
import { line, path } from '../drawing/shapes.js'
import { hatch } from '../geometry/hatch.js'
import { boxOf, closedOutline } from '../geometry/outline.js'
import { add, direction, leftOf, type Point, point, scale, subtract } from '../geometry/point.js'
import { starOutline } from '../geometry/star.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { type LengthStyle, showLength } from '../units/show.js'
import { type Block, movedShapes } from './card-blocks.js'

/** Room for a dimension line and its figure beside the star. */
const DIMENSION = 12

/** Of the star's smaller side: a figure of seven signs and a fraction still fits between the arrows. */
const DIMENSIONED = 35
/** Without its dimensions: which star it is still shows. */
const BARE = 20

/** No star is more than 2/√3 times as wide as high, or as high as wide: that is the hexagon's and the triangle's. */
const LONGER_SIDE = 2 / Math.sqrt(3)

/** With width and height, or small and bare where these stand in words. */
export type PictureKind = 'dimensioned' | 'bare'

/** Every picture of a kind takes that width. */
export const pictureWidth = (kind: PictureKind): number =>
  Math.ceil(kind === 'bare' ? BARE * LONGER_SIDE : DIMENSIONED * LONGER_SIDE + DIMENSION)

/** Room for the dimension line under the star. */
const BELOW = 9

/** Between the strokes that show how the boards lie in the arms. */
const GRAIN_SPACING = 2.2

/**
 * The star as it hangs, small: joints, the arms' boards along their grain, width and height.
 * Every arm's grain follows the tip edge that lay on the fence: face sides up, the one on the tip's left.
 */
export const starPicture = ({ star }: StarPlan, { lengths }: Order, kind: PictureKind): Block => {
  const isBare = kind === 'bare'
  const reduced = (isBare ? BARE : DIMENSIONED) / Math.min(star.across, star.height)
  const corners = starOutline(star).vertices.map((corner) => scale(corner, reduced))
  const outline = closedOutline(corners)
  const { min, max } = boxOf([outline])
  const shapes: Shape[] = [
    path('PATTERN', outline),
    ...corners.flatMap((corner, index) => (index % 2 === 1 ? [line('PATTERN', point(0, 0), corner)] : [])),
    ...grain(corners),
    ...(isBare ? [] : dimensions(corners, star, lengths)),
  ]
  const corner = point(pictureWidth(kind) - max.x, -max.y)
  return { height: max.y - min.y + (isBare ? 0 : BELOW), shapes: movedShapes(shapes, corner) }
}

const dimensions = (corners: readonly Point[], star: StarPlan['star'], lengths: LengthStyle): Shape[] => {
  const { min, max } = boxOf([closedOutline(corners)])
  const at = (pick: (corner: Point) => boolean): Point => corners.find(pick) ?? point(0, 0)
  return [
    ...dimension(
      at(({ x }) => x === min.x),
      at(({ x }) => x === max.x),
      'across',
      min.y - 7,
      showLength(star.across, lengths),
    ),
    ...dimension(
      at(({ y }) => y === min.y),
      at(({ y }) => y === max.y),
      'up',
      min.x - 5,
      showLength(star.height, lengths),
    ),
  ]
}

/** Strokes along the grain of each arm, parallel to the edge from the tip to the valley on its left. */
const grain = (corners: readonly Point[]): Shape[] =>
  corners.flatMap((tip, index) => {
    const [left, right] = [corners[(index + 1) % corners.length], corners.at(index - 1)]
    if (index % 2 === 1 || !left || !right) return []
    const along = direction(tip, left)
    // Half a space aside, or a stroke lies on the joint of a rhombus arm.
    const aside = scale(leftOf(along), GRAIN_SPACING / 2)
    const arm = [tip, left, point(0, 0), right].map((corner) => add(corner, aside))
    return hatch(arm, radians(maths.atan2(along.y, along.x)), GRAIN_SPACING).map(([from, to]) =>
      line('GUIDE', subtract(from, aside), subtract(to, aside)),
    )
  })
