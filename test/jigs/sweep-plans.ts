import type { Order } from '../../src/order/order.js'
import { parseOrder } from '../../src/order/parse.js'
import { planOrder, type StarPlan } from '../../src/plan/plan.js'
import { SHAPES, type Shape, showShape } from '../geometry/sweep.js'

export interface SweptPlan {
  readonly name: string
  readonly plan: StarPlan
  readonly order: Order
}

/** How each shape of the sweep is made; sizes and hardware change from shape to shape. */
const SIZES = ['tip-edge: 60', 'tip-edge: 140', 'board-width: 88.9', 'radius: 150']

/** A plan for a shape, or nothing where the shape cannot be planned at that size. */
const planFor = (shape: Shape, index: number, shop: string, limit: number): SweptPlan[] => {
  const size = SIZES[index % SIZES.length] ?? ''
  const order = parseOrder({
    text: `shop: { saw: { limit: ${limit} }, ${shop} }\nstars: [{ points: ${shape.points}, tip-angle: ${shape.tipAngle}, ${size} }]`,
  })
  if (!order.ok) return []
  const plan = planOrder(order.value)
  const star = plan.ok ? plan.value.stars[0] : undefined
  return star ? [{ name: `${showShape(shape)}, ${size}`, plan: star, order: order.value }] : []
}

/** Stars of 3 to 24 points in every regime, with the shop's keys in YAML and a saw that stops where it is told to. */
export const sweptPlans = (shop = '', limit = 75): SweptPlan[] =>
  SHAPES.flatMap((shape, index) => planFor(shape, index, shop, limit))
