import { chanceOfStar } from '../fit/chances.js'
import { acceptedClosure, closureLaw } from '../fit/closure-law.js'
import type { Board, Order, StarOrder } from '../order/order.js'
import type { Wall } from '../order/season-order.js'
import { backingPlaces } from '../order/to-plate.js'
import { armBoards, blanksOn } from '../plan/boards.js'
import { closureGap } from '../plan/closure.js'
import { planStar, type StarPlan } from '../plan/plan.js'
import { tooSmallForSaw } from '../plan/warnings.js'
import type { Mm } from '../units/brand.js'
import { degrees, mm } from '../units/convert.js'
import { trimmed } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'
import { ALL_POINTS, type Shape, shapesFor } from './shapes.js'
import { type Sized, sizesFor } from './sizes.js'

/** A star that can be made with what the shop has. */
export interface Choice {
  /** What it is called by: `5/2`, `5@45`, or the name it has in the order. */
  readonly label: string
  readonly shape: Shape
  readonly plan: StarPlan
  readonly board?: Board
  readonly wholeBoard: boolean
  /** Gap at the last joint with both cuts on the nearest marks. */
  readonly markGap: Mm
  /** Chance that a star closes within the accepted gap on those marks, the saw's scale being true. */
  readonly chance: number
  /** Arms that one board gives, and what is left of it after those. */
  readonly perBoard?: { readonly arms: number; readonly left?: Mm }
  /** Board used by one star, in mm², the part ripped off its width included. */
  readonly wood: number
}

export interface ChoiceAsked {
  /** Only stars with these points; stars of all points when absent. */
  readonly points?: number
  readonly quantity: number
  /** The size of all stars, where the order has no boards. */
  readonly size?: StarOrder['size']
  /** The order's own stars are offered beside the others. */
  readonly own: boolean
}

export interface Choices {
  readonly found: readonly Choice[]
  /** Kinds of star that the saw cannot cut without a wedge, or that are too small to cut on it. */
  readonly beyondSaw: number
  /** Names of the order's own stars that are left out for the same reasons. */
  readonly ownLeftOut: readonly string[]
}

/** Every star that can be made, as {@link shapesFor} lists them, in the sizes of {@link sizesFor}. */
export const choicesFor = (order: Order, asked: ChoiceAsked): Choices => {
  const points = asked.points === undefined ? ALL_POINTS : [asked.points]
  const shapes = shapesFor(points, order.shop.saw)
  const offered = shapes.map((shape) =>
    sizesFor(shape, order, asked.size, asked.points !== undefined).flatMap((sized) =>
      choiceOf(labelOf(shape), shape, starOf(shape, sized, asked.quantity, order.climate.wall), sized, order),
    ),
  )
  const wanted = asked.own ? order.stars.filter((star) => points.includes(star.points)) : []
  const own = wanted.flatMap((star) => ownChoice(star, order))
  return {
    found: [...own, ...offered.flat()],
    beyondSaw: offered.filter((sizes) => sizes.length === 0).length,
    ownLeftOut: wanted.map(({ name }) => name).filter((name) => !own.some(({ label }) => label === name)),
  }
}

/** `5/2` of a regular star, `5@45` of another: its points and its tip angle. */
export const labelOf = ({ points, tipAngle, step }: Pick<Shape, 'points' | 'tipAngle' | 'step'>): string =>
  step === undefined ? `${points}@${trimmed(tipAngle, 2)}` : `${points}/${step}`

const NOWHERE = { place: 'choose' }

export const starOf = (
  { points, tipAngle }: Shape,
  { size }: Sized,
  quantity: number,
  wall: Wall,
): StarOrder => ({
  at: { shape: NOWHERE, size: NOWHERE, chamfer: NOWHERE, backing: backingPlaces(() => NOWHERE) },
  name: 'Star',
  fileName: 'star',
  quantity,
  points,
  shape: { by: 'tip-angle', tipAngle },
  size,
  wall,
})

/** A star of the order, on the first of its boards that fits. */
const ownChoice = (star: StarOrder, order: Order): Choice[] => {
  const plan = planStar(star, order.shop, order.lengths)
  if (!plan.ok) return []
  const { tipAngle } = plan.value.star
  const step = star.shape.by === 'regular' ? { step: star.shape.step } : {}
  const shape: Shape = {
    points: star.points,
    tipAngle,
    ...step,
    slenderest: star.shape.by === 'slenderest',
    onMarks: closesOnMarks(plan.value),
  }
  const board = plan.value.boardUse?.board
  if (!fitsWall(plan.value, order.space)) return []
  return choiceOf(
    star.name,
    shape,
    star,
    { size: star.size, wholeBoard: false, ...(board ? { board } : {}) },
    order,
  )
}

const fitsWall = ({ star }: StarPlan, { across, height }: Order['space']): boolean =>
  star.across <= (across ?? Number.POSITIVE_INFINITY) + SHOP &&
  star.height <= (height ?? Number.POSITIVE_INFINITY) + SHOP

/** Do the boards that there are of its thickness give all arms of the batch? */
const boardsSuffice = ({ star, thickness, blank, arms }: StarPlan, { shop }: Order): boolean =>
  shop.boards.length === 0 ||
  armBoards(shop, star.armStrip, thickness, blank).boards.reduce(
    (sum, board) => sum + armsFrom(board, star, blank, shop),
    0,
  ) >= arms

const armsFrom = (
  board: Board,
  { armStrip }: StarPlan['star'],
  blank: StarPlan['blank'],
  shop: Order['shop'],
): number => {
  const { ripKerf } = shop
  const strips = ripKerf === undefined ? 1 : Math.floor((board.width + ripKerf) / (armStrip + ripKerf))
  return blanksOn(board, shop, blank) * Math.max(1, strips) * (board.count ?? Number.POSITIVE_INFINITY)
}

const closesOnMarks = ({ firstCut, jointCut }: StarPlan): boolean =>
  firstCut.closureAtMark === 0 && jointCut.closureAtMark === 0

/** The star of a shape and size; nothing when the saw or the board cannot make it. */
export const choiceOf = (
  label: string,
  shape: Shape,
  star: StarOrder,
  { board, wholeBoard }: Sized,
  order: Order,
): Choice[] => {
  const shop = { ...order.shop, boards: board ? [board] : [] }
  const outcome = planStar(star, shop, order.lengths)
  if (!outcome.ok) return []
  const plan = outcome.value
  if (!plan.feasible || (board && !plan.boardUse) || tooSmallForSaw(plan) || !boardsSuffice(plan, order))
    return []
  const accepted = acceptedClosure(plan.star.jointEdge, shop.acceptedGap)
  const law = { ...closureLaw(plan, shop.saw, 'marks'), shared: degrees(0) }
  const { jointEdge, armStrip } = plan.star
  return [
    {
      label,
      shape: { ...shape, onMarks: shape.onMarks || closesOnMarks(plan) },
      plan,
      ...(board ? { board } : {}),
      wholeBoard,
      markGap: closureGap(jointEdge, degrees(plan.firstCut.closureAtMark + plan.jointCut.closureAtMark)),
      chance: chanceOfStar(law, accepted),
      ...(board && plan.boardUse ? { perBoard: perBoard(board, plan, plan.boardUse.blanksPerBoard) } : {}),
      wood: plan.boardPerStar * (board?.width ?? armStrip),
    },
  ]
}

/** With defects what is left lies in several pieces, and is not told. */
const perBoard = (board: Board, { blank }: StarPlan, arms: number): NonNullable<Choice['perBoard']> => ({
  arms,
  ...(board.defects.length > 0
    ? {}
    : { left: mm(Math.max(0, board.length - blank.firstTrim - arms * blank.pitch)) }),
})
