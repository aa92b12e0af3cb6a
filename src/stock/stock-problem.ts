import type { Board } from '../order/order.js'
import { done, type Outcome, type Problem, refused, sentences } from '../order/problem.js'
import { otherThickness } from '../plan/boards-too-few.js'
import type { Plan } from '../plan/plan.js'
import { noBoardText } from '../plan/warnings.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { showAtLeast, showGivenLength, showLength } from '../units/show.js'
import { type BlankKind, blankKinds } from './blank-kinds.js'
import { type RoomyBoard, roomyBoard } from './board-rooms.js'
import { type CuttingProblem, costStep, fits, type Supply } from './cutting-problem.js'

/** An order's boards and blanks as a problem of cutting. */
export interface StockProblem {
  readonly plan: Plan
  readonly kinds: readonly BlankKind[]
  readonly boards: readonly RoomyBoard[]
  /** Supplies from the number of boards on stand for arms that no board is left for. */
  readonly problem: CuttingProblem
  /** Does it hold every way of ripping, so that a proof is one? */
  readonly complete: boolean
  /** Is the cost money, or wood in m² because no board has a price? */
  readonly priced: boolean
}

export const stockProblem = (plan: Plan): Outcome<StockProblem> => {
  const { shop } = plan.order
  if (shop.boards.length === 0) return refused([NO_BOARDS])
  const kinds = blankKinds(plan.stars)
  const priced = shop.boards.some(({ price }) => price !== undefined)
  const boards = shop.boards.map((board) => roomyBoard(board, kinds, shop, boardCost(board, priced)))
  const homeless = kinds.filter((_, blank) => !boards.some((board) => holds(board, blank, kinds)))
  if (homeless.length > 0) return refused(homeless.flatMap((kind) => homelessProblems(kind, plan)))
  const demands = kinds.map(({ count, plan: { blank } }) => ({ count, length: blank.pitch }))
  const supplies = boards.map(({ supply }) => supply)
  const missing = kinds.flatMap((_, blank) =>
    boards.some((board) => board.supply.limit === Infinity && holds(board, blank, kinds))
      ? []
      : [missingArms(blank, { demands, supplies })],
  )
  const complete = boards.every(({ allWays }) => allWays)
  return done({
    plan,
    kinds,
    boards,
    complete,
    priced,
    problem: { demands, supplies: [...supplies, ...missing] },
  })
}

const NO_BOARDS: Problem = {
  place: 'shop.boards',
  given: 'no boards',
  advice:
    'Add those you can buy or have on the rack, such as boards: [{ width: 70 mm, length: 2400 mm, price: 6.80 }].',
}

/** The price; one without a price lies on the rack and costs nothing. Where none has a price, the wood in m². */
const boardCost = ({ price, width, length }: Board, priced: boolean): number =>
  priced ? (price ?? 0) : (width * length) / 1e6

const holds = ({ supply }: RoomyBoard, blank: number, kinds: readonly BlankKind[]): boolean => {
  const one = kinds.map((_, each) => (each === blank ? 1 : 0))
  const demands = kinds.map(({ plan }) => ({ count: 1, length: plan.blank.pitch }))
  return supply.rooms.some(
    (room) => room.placings.some((placing) => placing.blank === blank) && fits(one, room, demands),
  )
}

/** Holds one blank and costs more than all boards that end: taken only where nothing else is left. */
const missingArms = (blank: number, { demands, supplies }: CuttingProblem): Supply => {
  const all = supplies.reduce((sum, { cost, limit }) => sum + (limit === Infinity ? 0 : cost * limit), 0)
  const step = costStep({ demands, supplies })
  const cost = step === 0 ? 1 : (Math.round(all / step) + 1) * step
  const length = demands[blank]?.length ?? 0
  return {
    cost,
    limit: Infinity,
    rooms: [{ length, placings: [{ blank, slant: 0, spare: 0 }] }],
    ways: [[0]],
  }
}

const homelessProblems = ({ stars }: BlankKind, { order }: Plan): Problem[] =>
  stars.map((star) => {
    const { lengths, shop } = order
    const atLeast = (length: Mm) => showAtLeast(length, lengths)
    const { thickness, size, at, name } = star.order
    const thick = thickness === undefined ? '' : ` and ${atLeast(thickness)} thick`
    const length = mm(star.blank.firstTrim + star.blank.pitch)
    return {
      ...at.size,
      given: showGivenLength(size.length, lengths),
      advice: `${name}: ${noBoardText(star, shop, (each) => showLength(each, lengths))} A sound board from ${atLeast(star.star.armStrip)} wide and ${atLeast(length)} long${thick} would do for one arm.`,
    }
  })

/** Arms that no board is left for, by star and what would help. */
export const missingProblems = (
  missing: readonly number[],
  { kinds, plan: { order } }: StockProblem,
): Problem[] =>
  kinds.flatMap(({ stars, count, plan }, blank) => {
    const short = missing[blank] ?? 0
    if (short === 0) return []
    const names = stars.map((star) => star.order.name).join(', ')
    const length = mm(plan.blank.firstTrim + short * plan.blank.pitch)
    const show = (each: Mm) => showLength(each, order.lengths)
    const thick = plan.thickness === undefined ? '' : `, ${show(plan.thickness)} thick`
    return [
      {
        place: 'shop.boards',
        given: `boards for ${count - short} of ${count} arms of ${names}`,
        advice: sentences(
          `Add boards, raise count, or make fewer stars: about ${showAtLeast(length, order.lengths)} of sound wood, ${showAtLeast(plan.star.armStrip, order.lengths)} wide${thick}, is missing. Or list what can be bought, with its price and without a count.`,
          otherThickness(stars, show),
        ),
      },
    ]
  })
