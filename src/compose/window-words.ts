import { add, type Point, point } from '../geometry/point.js'
import { trialWindow, WORDS_ACROSS } from '../jigs/trial-window.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { showSmall } from '../units/show.js'
import type { PartWords } from './jig-letters.js'
import type { JigWords } from './jig-phrases.js'

/** The window for a star whose arms it fits, as its refusal has found out. */
export const windowOf = (plan: StarPlan, { shop }: Order): NonNullable<ReturnType<typeof trialWindow>> => {
  const window = trialWindow(plan, shop.jigStock, shop.cutter)
  if (!window) throw new RangeError('the tolerance leaves nothing of the narrow opening')
  return window
}

/** From one line of words below a window to the next, in mm. */
const LINE = 11

const inWindow = (text: string, middle: Point): PartWords => ({ text, in: { middle, across: WORDS_ACROSS } })

export const windowWords = (plan: StarPlan, order: Order): JigWords => {
  const { windows } = windowOf(plan, order)
  const by = showSmall(order.shop.jigStock.tolerance, order.lengths)
  return {
    title: 'Trial-piece window',
    onParts: {
      window: [
        ...windows.flatMap(({ wider, words }) =>
          wider === 0
            ? [inWindow('NOMINAL', words)]
            : [
                inWindow(wider > 0 ? 'GO' : 'NO GO', add(words, point(0, LINE / 2))),
                inWindow(`${wider > 0 ? '+' : '-'}${by}`, add(words, point(0, -LINE / 2))),
              ],
        ),
        { text: plan.order.name },
      ],
    },
    steps: [
      `Lay an arm on each opening, either side up, without force. GO is ${by} wider than the arm on every edge: a good arm drops through. NO GO is as much narrower: a good arm stays out.`,
      'An arm that stays out of GO is too large, or one of its angles is wrong: light along its edges shows where. One that drops through NO GO is too small: set it aside.',
      `Check the first arm, and then every tenth. ${order.shop.cutter.kind === 'hand' ? 'Saw the openings to the line and file them to a printed pattern.' : 'In each corner one edge is cut back, for the tip to go in.'}`,
    ],
    hardware: [],
  }
}
