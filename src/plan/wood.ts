import type { Panel, Shop, StarOrder } from '../order/order.js'
import { type Problem, sentences } from '../order/problem.js'
import type { Wood } from '../order/season-order.js'
import type { Mm } from '../units/brand.js'
import { type LengthStyle, showAtMost, showGivenLength } from '../units/show.js'
import { starBody } from './body.js'
import type { StarPlan } from './plan.js'
import { type ArmsWood, weighStar } from './weight.js'

type Drawn = Pick<
  StarPlan,
  'star' | 'order' | 'thickness' | 'boards' | 'boardUse' | 'backing' | 'plateThickness' | 'panels'
>

/** What the star is made of, and what it is as a body, as far as the order lets it be known. */
export const woodOf = (
  { star, order, thickness, boards, boardUse, backing, plateThickness, panels }: Drawn,
  shop: Shop,
): Pick<StarPlan, 'wood' | 'body' | 'weight'> => {
  const wood = boardUse?.board.wood ?? shop.wood
  if (thickness === undefined) return { wood }
  const body = starBody(star, {
    thickness,
    ...(order.chamfer === undefined ? {} : { chamfer: order.chamfer }),
    ...(backing
      ? {
          plate: {
            outline: backing.outline,
            openings: backing.part.inner,
            ...(plateThickness === undefined ? {} : { thickness: plateThickness }),
          },
        }
      : {}),
  })
  const arms = heaviestArms(boards.length > 0 ? boards.map((board) => board.wood) : [wood])
  if (arms === undefined) return { wood, body }
  return { wood, body, weight: weighStar(body, { arms, panels: densitiesOf(panels) }) }
}

/** Of all woods that the arms could be cut from the one they weigh most of; undefined while a density is unknown. */
const heaviestArms = (woods: readonly Wood[]): ArmsWood | undefined => {
  const known = woods.flatMap(({ name, density }) => (density === undefined ? [] : [{ name, density }]))
  if (known.length < woods.length) return undefined
  const [heaviest] = [...known].sort((a, b) => b.density - a.density)
  const differ = known.some(({ density }) => Math.abs(density - (heaviest?.density ?? 0)) > SAME_DENSITY)
  return heaviest && { ...heaviest, ...(differ ? { ofHeaviest: true } : {}) }
}

/** In kg/m³: no scale in a workshop tells them apart. */
const SAME_DENSITY = 0.01

/** Of the panels that could be bought for a plate; none while one of them is unknown. */
const densitiesOf = (panels: readonly Panel[]): readonly number[] => {
  const densities = panels.flatMap(({ density }) => (density === undefined ? [] : [density]))
  return densities.length < panels.length ? [] : densities
}

/** A chamfer through the whole of the board; one through a thickness that the order states is refused by its checks. */
export const chamferTooDeep = (
  order: StarOrder,
  thickness: Mm | undefined,
  thicker: string | undefined,
  lengths: LengthStyle,
): Problem | undefined => {
  return order.chamfer !== undefined && thickness !== undefined && order.chamfer >= thickness
    ? {
        ...order.at.chamfer,
        given: showGivenLength(order.chamfer, lengths),
        advice: sentences(
          `Allowed: less than the board's thickness, ${showAtMost(thickness, lengths)}.`,
          thicker,
        ),
      }
    : undefined
}
