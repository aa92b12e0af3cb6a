import { FEWEST_POINTS, MOST_POINTS } from '../geometry/star.js'
import type { Order } from '../order/order.js'
import { done, type Outcome, type Problem, problemsOf, refused } from '../order/problem.js'
import { wholeFlag } from '../order/whole-flag.js'

/** What stars are wanted, and how many of them are to be listed. */
export interface Wish {
  /** Stars of all points when undefined. */
  readonly points: number | undefined
  readonly quantity: number | undefined
  readonly most: number
}

/** As the flags `points`, `quantity` and `most` are written, each of which may be left out. */
export const readWish = (written: Readonly<Record<string, unknown>>): Outcome<Wish> => {
  const points = wholeFlag(written, 'points', {
    least: FEWEST_POINTS,
    most: MOST_POINTS,
    otherwise: undefined,
  })
  const quantity = wholeFlag(written, 'quantity', { least: 1, most: 10_000, otherwise: undefined })
  const most = wholeFlag(written, 'most', { least: 1, most: 10_000, otherwise: LISTED })
  return points.ok && quantity.ok && most.ok
    ? done({ points: points.value, quantity: quantity.value, most: most.value })
    : refused([points, quantity, most].flatMap(problemsOf))
}

/** Stars listed unless more or fewer are asked for: two sheets of them. */
export const LISTED = 24

/** Is the room told in which the star will hang? */
export const hasRoom = ({ space }: Order): boolean => space.across !== undefined || space.height !== undefined

export const nothingFound = ({ shop }: Order): Problem => ({
  place: 'choose',
  given: `a saw that stops at ${shop.saw.limit}°, ${shop.boards.length} kinds of board`,
  advice:
    'No star can be made with these. Allow a steeper saw (saw-limit), wider, longer or more boards, or more room on the wall.',
})
