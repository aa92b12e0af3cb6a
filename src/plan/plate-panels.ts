import { goesInto } from '../geometry/goes-into.js'
import { lonePlate } from '../nest/lone-plate.js'
import type { Cutter, Panel, StarOrder } from '../order/order.js'
import type { BackingPlan } from '../plate/plan-backing.js'
import type { Mm } from '../units/brand.js'
import { SHOP } from '../units/tolerance.js'
import { thicknessesOf } from './boards.js'

/** The panels that a star's backing may be cut from: all of its one thickness. */
export interface PlatePanels {
  /** As the order says, or as thick as the first panel that holds the plate and tells it; unknown when absent. */
  readonly plateThickness?: Mm
  /** As the order lists them. One that tells no thickness counts as of this one. */
  readonly panels: readonly Panel[]
  /** Thicknesses of panels that would hold the plate too and are left out, each once, as the order lists them. */
  readonly otherPlateThicknesses: readonly Mm[]
}

export const platePanels = (
  plate: Pick<BackingPlan, 'outline' | 'thickness'>,
  listed: readonly Panel[],
): PlatePanels => {
  const holding = listed.filter((panel) => holds(panel, plate))
  const thickness = plate.thickness ?? holding.find((panel) => panel.thickness !== undefined)?.thickness
  if (thickness === undefined) return { panels: holding, otherPlateThicknesses: [] }
  const isOther = (panel: Panel): boolean => Math.abs((panel.thickness ?? thickness) - thickness) > SHOP
  return {
    plateThickness: thickness,
    panels: holding.filter((panel) => !isOther(panel)),
    otherPlateThicknesses: thicknessesOf(holding.filter(isOther)),
  }
}

/** How thick a backing that is refused would be, if the order tells it without its size: so that all is told at once. */
export const supposedThickness = (
  backing: StarOrder['backing'],
  [first, ...others]: readonly Panel[],
): Mm | undefined =>
  backing?.thickness ??
  (others.every(({ thickness }) => thickness === first?.thickness) ? first?.thickness : undefined)

/** Does the panel hold the plate, turned as it may be? */
const holds = ({ length, width, edge, gap }: Panel, { outline }: Pick<BackingPlan, 'outline'>): boolean =>
  lonePlate(outline, { width: length, height: width, edge, gap }) !== undefined

/** Does the panel go onto the cutter's bed, either way round? A cutter without a bed takes any. */
export const goesOnBed = ({ length, width }: Panel, { bed }: Cutter): boolean =>
  !bed || goesInto(length, width, bed)
