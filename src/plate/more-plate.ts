import type { Star } from '../geometry/star.js'
import type { BackingOrder } from '../order/order.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { type LengthStyle, showAtMost } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'
import { coverOf, marginOf } from './plate-shape.js'

type Asked = Pick<BackingOrder, 'shape' | 'inset' | 'cornerRadius' | 'covers'>

/** What makes this plate cover more of the joints: `a smaller inset`; nothing where it covers all it can. */
export const coverWays = (
  star: Star,
  order: Asked,
  chamfer: Mm | undefined,
  lengths: LengthStyle,
): string[] => {
  const inset = order.inset > 0 ? ['a smaller inset'] : []
  if (order.shape !== 'auto' || order.covers === undefined) return inset
  // A plate that is told what to cover is as large as that asks, whatever the inset leaves.
  const most = mm(coverOf(star, order, marginOf(order, chamfer)))
  if (order.covers < most - SHOP) return [`a longer covers (up to ${showAtMost(most, lengths)})`]
  return inset.map((way) => `a longer covers with ${way}`)
}

/** What leaves more room in the upper arm, one at least: only a plate of shape star reaches into the arms. */
export const roomWays = (
  star: Star,
  order: Asked,
  chamfer: Mm | undefined,
  lengths: LengthStyle,
): string[] => {
  const ways = [
    ...coverWays(star, order, chamfer, lengths),
    ...(order.shape !== 'star' ? ['shape: star'] : order.cornerRadius ? ['a smaller corner-radius'] : []),
  ]
  return ways.length > 0 ? ways : ['a larger star']
}
