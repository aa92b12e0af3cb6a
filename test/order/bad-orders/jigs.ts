import { A_STAR, type BadOrder } from './bad-order.js'

/** Jig stock that cannot be meant. */
export const JIGS: readonly BadOrder[] = [
  [
    'a pilot hole as wide as the screw',
    ['shop: { jig-stock: { screw: 3.5, pilot: 3.5 } }', A_STAR],
    [
      'shop.jig-stock.pilot, line 1: given 3.5. A wood screw does not bite in a hole as wide as its own, 3.5 mm. Allowed: less than that; five eighths will do.',
    ],
  ],
  [
    'a pilot hole wider than the usual screw of a thin panel',
    ['shop: { jig-stock: { thickness: 1/4 in, pilot: 3.2 mm } }', A_STAR],
    [
      'shop.jig-stock.pilot, line 1: given "3.2 mm". A wood screw does not bite in a hole as wide as its own, 3.0 mm. Allowed: less than that; five eighths will do.',
    ],
  ],
]
