import type { Shop } from '../order/order.js'
import { sentences } from '../order/problem.js'
import type { Mm } from '../units/brand.js'
import { WHOLE } from '../units/tolerance.js'
import { type ArmBoards, thicknessesOf } from './boards.js'
import type { StarPlan } from './plan.js'
import type { Warning } from './warnings.js'

/** The way out where boards of another thickness would carry the arms: nothing is cut from them unasked. */
export const otherThickness = (
  stars: readonly Pick<StarPlan, 'otherThicknesses'>[],
  show: (length: Mm) => string,
): string | undefined => {
  const others = thicknessesOf(
    stars.flatMap(({ otherThicknesses }) => otherThicknesses.map((thickness) => ({ thickness }))),
  )
  return others.length === 0
    ? undefined
    : `Boards ${others.map(show).join(' or ')} thick would carry the arms too: give the star that thickness to use them.`
}

/** The same where the arms are too thin. */
export const thickerBoards = (
  { thickness, otherThicknesses }: ArmBoards,
  show: (length: Mm) => string,
): string | undefined =>
  otherThickness(
    [{ otherThicknesses: otherThicknesses.filter((other) => other > (thickness ?? other)) }],
    show,
  )

/** Boards of one kind serve all the stars that need them; where other boards or strips would do too, `stock` decides. */
export const boardsTooFew = (
  plans: readonly StarPlan[],
  shop: Shop,
  show: (length: Mm) => string,
): ReadonlyMap<StarPlan, Warning> => {
  const warned = new Map<StarPlan, Warning>()
  for (const board of new Set(plans.map(({ boardUse }) => boardUse?.board))) {
    const users = plans.filter(({ boardUse }) => board !== undefined && boardUse?.board === board)
    const parts = users.reduce((sum, { arms, boardUse }) => sum + arms / (boardUse?.blanksPerBoard ?? 1), 0)
    const needed = Math.ceil(parts - WHOLE)
    const [last] = users.slice(-1)
    if (!board || !last || board.count === undefined || needed <= board.count) continue
    const elsewhere = users.some(({ boards }) => boards.some((other) => other !== board))
    if (elsewhere || shop.ripKerf !== undefined) continue
    const sizes = [board.width, board.length, ...(board.thickness === undefined ? [] : [board.thickness])]
    const together = users.length > 1 ? 'The stars together take' : 'It takes'
    warned.set(last, {
      code: 'boards-too-few',
      text: sentences(
        `${together} at least ${needed} boards of ${sizes.map(show).join(' × ')}; the order has ${board.count}.`,
        otherThickness(users, show),
      ),
    })
  }
  return warned
}
