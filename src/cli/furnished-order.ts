import { type Furniture, furnitureWith } from '../furniture/furniture-set.js'
import type { Order } from '../order/order.js'
import { parseOrder } from '../order/parse.js'
import { done, type Outcome, problemsOf, refused } from '../order/problem.js'
import type { Typed } from './order-flags.js'
import { orderInput } from './order-input.js'
import { ownFurniture } from './read-furniture.js'

/** An order, and the sheet furniture its pages get. */
export interface FurnishedOrder {
  readonly order: Order
  readonly furniture: Furniture
}

/** The order a command line speaks of, with our sheet furniture or the maker's own. */
export const furnishedOrder = async (typed: Typed): Promise<Outcome<FurnishedOrder>> => {
  const input = await orderInput(typed)
  const own = await ownFurniture(typed)
  const order = input.ok ? parseOrder(input.value) : input
  const furniture = own.ok ? furnitureWith(own.value, order.ok ? order.value.lengths.units : 'mm') : own
  if (!order.ok || !furniture.ok) return refused([order, furniture].flatMap(problemsOf))
  return done({ order: order.value, furniture: furniture.value })
}
