import type { Panel, Shop, StarOrder } from '../order/order.js'
import type { Outcome, Problem } from '../order/problem.js'
import { fastenerProblem } from '../plate/fixing.js'
import type { BackingPlan } from '../plate/plan-backing.js'
import type { Mm } from '../units/brand.js'
import { type LengthStyle, showAtMost, showLength } from '../units/show.js'
import { plateFits } from './backing-warnings.js'
import { type BoardUse, boardFits } from './boards.js'
import { starBody } from './body.js'
import type { StarPlan } from './plan.js'
import { type ArmsWood, weighStar } from './weight.js'

type Drawn = Pick<StarPlan, 'star' | 'order' | 'boardUse' | 'backing'>

/** As the order says, or as thick as the board. */
const thicknessOf = (order: StarOrder, use: BoardUse | undefined): Mm | undefined =>
  order.thickness ?? use?.board.thickness

/** As the order says, or as thick as the panel that holds it. */
const plateThicknessOf = (backing: BackingPlan, shop: Shop): Mm | undefined =>
  backing.thickness ?? shop.panels.find((each) => plateFits(backing, each))?.thickness

/** What the star is made of, and what it is as a body, as far as the order lets it be known. */
export const woodOf = (
  { star, order, boardUse, backing }: Drawn,
  shop: Shop,
): Pick<StarPlan, 'wood' | 'thickness' | 'plateThickness' | 'body' | 'weight'> => {
  const wood = boardUse?.board.wood ?? shop.wood
  const thickness = thicknessOf(order, boardUse)
  const plateThickness = backing && plateThicknessOf(backing, shop)
  const known = {
    wood,
    ...(thickness === undefined ? {} : { thickness }),
    ...(plateThickness === undefined ? {} : { plateThickness }),
  }
  if (thickness === undefined) return known
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
  const arms = heaviestArms(star, order, { wood, thickness }, shop)
  if (arms === undefined) return { ...known, body }
  const plate = backing && {
    ...backing,
    ...(plateThickness === undefined ? {} : { thickness: plateThickness }),
  }
  const holding = plate ? shop.panels.filter((each) => plateFits(plate, each)) : []
  return { ...known, body, weight: weighStar(body, { arms, panels: densitiesOf(holding) }) }
}

/** Of all boards that could carry the arms the one they weigh most of; undefined while a density is unknown. */
const heaviestArms = (
  { armStrip }: StarPlan['star'],
  order: StarOrder,
  first: { readonly wood: StarPlan['wood']; readonly thickness: Mm },
  { boards }: Shop,
): ArmsWood | undefined => {
  const carrying = boards.filter((board) => boardFits(board, armStrip, order.thickness))
  const all = carrying.map(({ wood, thickness }) => ({
    name: wood.name,
    density: wood.density,
    thicker: (order.thickness ?? thickness ?? first.thickness) / first.thickness,
  }))
  const candidates = all.length > 0 ? all : [{ ...first.wood, thicker: 1 }]
  const known = candidates.flatMap(({ name, density, thicker }) =>
    density === undefined ? [] : [{ name, density: density * thicker }],
  )
  if (known.length < candidates.length) return undefined
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

/**
 * A nail or screw that comes through or does not hold, told also where the backing itself is refused, if the order then
 * tells how thick it would be.
 */
export const fastenerTold = (
  order: StarOrder,
  use: BoardUse | undefined,
  backing: Outcome<BackingPlan | undefined>,
  shop: Shop,
  lengths: LengthStyle,
): Problem | undefined => {
  if (!order.backing) return undefined
  const [first, ...others] = shop.panels
  const alike = others.every(({ thickness }) => thickness === first?.thickness)
  const plate =
    backing.ok && backing.value
      ? plateThicknessOf(backing.value, shop)
      : (order.backing.thickness ?? (alike ? first?.thickness : undefined))
  return fastenerProblem(order.backing, order.at.backing, plate, thicknessOf(order, use), lengths)
}

/** A chamfer through the whole of the board; one through a thickness that the order states is refused by its checks. */
export const chamferTooDeep = (
  order: StarOrder,
  use: BoardUse | undefined,
  lengths: LengthStyle,
): Problem | undefined => {
  const thickness = thicknessOf(order, use)
  return order.chamfer !== undefined && thickness !== undefined && order.chamfer >= thickness
    ? {
        ...order.at.chamfer,
        given: showLength(order.chamfer, lengths),
        advice: `Allowed: less than the board's thickness, ${showAtMost(thickness, lengths)}.`,
      }
    : undefined
}
