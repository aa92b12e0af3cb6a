import type { Panel } from '../order/order.js'

/** Of so many panels: what is paid, and their area. One without a price is the maker's already and costs nothing. */
export interface Cost {
  readonly money: number
  /** In mm². */
  readonly area: number
}

export const costOf = ({ price = 0, length, width }: Panel, count: number): Cost => ({
  money: count * price,
  area: count * length * width,
})

/** Of two that cost alike the one of less area is the cheaper. */
export const isCheaper = (one: Cost, other: Cost): boolean =>
  one.money === other.money ? one.area < other.area : one.money < other.money

export const costTogether = (costs: readonly Cost[]): Cost => ({
  money: costs.reduce((sum, { money }) => sum + money, 0),
  area: costs.reduce((sum, { area }) => sum + area, 0),
})
