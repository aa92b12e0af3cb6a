import type { Star } from '../../src/geometry/star.js'
import type { BackingOrder, Cutter, HangingOrder } from '../../src/order/order.js'
import { showProblem } from '../../src/order/problem.js'
import { backingPlaces } from '../../src/order/to-plate.js'
import { type BackingPlan, planBacking } from '../../src/plate/plan-backing.js'
import { mm } from '../../src/units/convert.js'

export const HAND: Cutter = { kind: 'hand', dxf: 'r12', kerf: mm(0.2), bit: mm(3.175) }
export const ROUTER: Cutter = { ...HAND, kind: 'router' }
export const LASER: Cutter = { ...HAND, kind: 'laser' }

export const hanging = (kind: HangingOrder['kind'], more: Partial<HangingOrder> = {}): HangingOrder => ({
  kind,
  hole: mm(kind === 'keyhole' ? 9 : 5),
  slot: mm(4.5),
  rise: mm(9),
  wall: mm(3),
  ...more,
})

export interface Shop {
  readonly chamfer?: number
  readonly cutter?: Cutter
}

const outcome = (star: Star, order: BackingOrder, { chamfer, cutter = HAND }: Shop) =>
  planBacking(
    star,
    order,
    backingPlaces((...path) => ({ place: path.join('.') })),
    {
      chamfer: chamfer === undefined ? undefined : mm(chamfer),
      cutter,
      lengths: { units: 'mm', nearest: 32 },
      name: 'Quay',
    },
  )

/** The planned plate; undefined when it is refused. */
export const plateOf = (star: Star, order: BackingOrder, shop: Shop = {}): BackingPlan | undefined => {
  const planned = outcome(star, order, shop)
  return planned.ok ? planned.value : undefined
}

/** What a person is told when the plate is refused. */
export const refusalOf = (star: Star, order: BackingOrder, shop: Shop = {}): string => {
  const planned = outcome(star, order, shop)
  return planned.ok ? '' : planned.problems.map(showProblem).join('\n')
}
