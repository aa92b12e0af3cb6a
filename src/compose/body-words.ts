import type { Order, Shop } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { Kilograms } from '../units/brand.js'
import { MM2_PER_M2 } from '../units/convert.js'
import { showLength } from '../units/show.js'
import { showArea, showMass, showVolume } from '../units/show-measure.js'

/** `0.42 kg a star: ...; a hanger rated for 1.68 kg`; nothing while wood or thickness is unknown. */
export const weightText = (plan: StarPlan, { lengths, shop }: Order): string | undefined => {
  const { weight } = plan
  if (!weight) return undefined
  const show = (mass: Kilograms) => showMass(mass, lengths.units)
  const board = weight.wood.ofHeaviest ? ', of the heaviest board that carries them' : ''
  const arms = `arms ${show(weight.arms)} of ${weight.wood.name}${board}`
  if (!weight.whole) return `${arms}; for the backing's, and the hanger, give ${missingOfPlate(plan, shop)}`
  const panel = weight.ofHeaviest ? ' of the heaviest panel that holds it' : ''
  const plate = weight.plate === undefined ? '' : `, backing ${show(weight.plate)}${panel}`
  return `${show(weight.whole.mass)} a star: ${arms}${plate}; a hanger rated for ${show(weight.whole.hanger)}`
}

/** What the backing cannot be weighed without. */
const missingOfPlate = ({ plateThickness, panels }: StarPlan, shop: Shop): string => {
  const light = panels.filter(({ density }) => density === undefined)
  const numbers = light.map((panel) => shop.panels.indexOf(panel) + 1)
  return [
    ...(plateThickness === undefined ? ['its thickness'] : []),
    ...(panels.length === 0
      ? ['a panel that holds it, with its density']
      : light.length === 0
        ? []
        : [`the density of ${light.length === 1 ? 'panel' : 'panels'} ${numbers.join(', ')}`]),
  ].join(' and ')
}

/** How long the joints are, and how much face there is to glue. */
export const glueText = ({ body }: StarPlan, { lengths }: Order): string | undefined =>
  body &&
  `joints ${showLength(body.glue.joints, lengths)} long in all, ${showArea(body.glue.jointArea, lengths.units)} a star on each side${body.glue.plateArea > 0 ? `; backing ${showArea(body.glue.plateArea, lengths.units)}, if it is glued all over` : ''}`

/** What there is to coat, and how much finish and stain that takes where the tin's coverage is known. */
export const coatText = ({ body, order }: StarPlan, { shop, lengths }: Order): string | undefined => {
  if (!body) return undefined
  const { coated } = body
  const all = coated.all * order.quantity
  const show = (area: number) => showArea(area, lengths.units)
  const parts = coated.chamfers > 0 ? 'faces, edges and chamfers' : 'faces and edges'
  const { finish, stain } = shop
  const needs = [
    ...(stain?.coverage === undefined ? [] : [`${volume(all, 1, stain.coverage, lengths.units)} of stain`]),
    ...(finish?.coverage === undefined
      ? []
      : [
          `${volume(all, finish.coats, finish.coverage, lengths.units)} of finish for ${finish.coats} ${finish.coats === 1 ? 'coat' : 'coats'}`,
        ]),
  ]
  return `${show(coated.all)} a star (${parts})${order.quantity > 1 ? `, ${show(all)} for all ${order.quantity}` : ''}${needs.length > 0 ? `: ${needs.join(', ')}` : ''}`
}

/** What a product of this coverage, in m² per litre, takes for an area in mm². */
const volume = (area: number, coats: number, coverage: number, units: Order['lengths']['units']): string =>
  showVolume(litresFor(area, coats, coverage), units)

export const litresFor = (area: number, coats: number, coverage: number): number =>
  (area / MM2_PER_M2) * (coats / coverage)
