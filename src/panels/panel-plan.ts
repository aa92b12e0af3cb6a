import type { Placed } from '../nest/panel.js'
import type { Panel } from '../order/order.js'
import type { Plan, StarPlan } from '../plan/plan.js'
import type { BackingPlan } from '../plate/plan-backing.js'
import type { PanelWorth, SharedPanels } from './panel-worth.js'

/** All backings of an order on panels. */
export interface PanelPlan {
  readonly plan: Plan
  /** Panels cut alike stand once. */
  readonly panels: readonly FilledPanel[]
  readonly uses: readonly SharedPanels[]
  /** Backings that no panel of the order holds. */
  readonly unplaced: readonly StarPlan[]
  /** Was the search ended before its last step, so that another run may find more? */
  readonly stopped: boolean
}

export interface FilledPanel {
  readonly panel: Panel
  readonly times: number
  readonly plates: readonly LaidPlate[]
  readonly worth: PanelWorth
}

/** A plate turned counter-clockwise about its centre, then moved there; the panel's lower left corner is the origin. */
export interface LaidPlate extends Pick<Placed, 'turn' | 'at'> {
  readonly star: Backed
}

/** A star with a backing. */
export type Backed = StarPlan & { readonly backing: BackingPlan }

export const isBacked = (star: StarPlan): star is Backed => star.backing !== undefined

/** Has the order backings, and panels to cut them from? */
export const takesPanels = ({ stars, order }: Plan): boolean =>
  order.shop.panels.length > 0 && stars.some(isBacked)

/** Of an order whose panels do not matter. */
export const noPanels = (plan: Plan): PanelPlan => ({
  plan,
  panels: [],
  uses: [],
  unplaced: [],
  stopped: false,
})
