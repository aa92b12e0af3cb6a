import { withTabs } from '../cutter/tabs.js'
import { goesInto } from '../geometry/goes-into.js'
import { outlineSize } from '../geometry/outline.js'
import type { Cutter, Shop } from '../order/order.js'
import { capital } from '../order/problem.js'
import { removedWidth } from '../order/removed-width.js'
import { coverWays } from '../plate/more-plate.js'
import { type LengthStyle, showLength } from '../units/show.js'
import type { Draft, Show, Warning } from './warnings.js'

/** What its maker must know of a star's backing before cutting it. */
export const backingWarnings = (
  { backing: plate, star, panels, order }: Draft,
  shop: Shop,
  lengths: LengthStyle,
): Warning[] => {
  if (!plate) return []
  const show: Show = (length) => showLength(length, lengths)
  const warnings: Warning[] = []
  if (shop.panels.length > 0 && panels.length === 0) {
    warnings.push({
      code: 'panel-too-small',
      text: `The backing is ${show(plate.across)} × ${show(plate.height)}${plate.thickness === undefined ? '' : ` and ${show(plate.thickness)} thick`}; no panel of the order holds it.`,
    })
  }
  if (plate.covers < star.jointEdge / 2) {
    const ways = coverWays(star, plate.order, order.chamfer, lengths)
    warnings.push({
      code: 'backing-covers-little',
      text: `The backing covers only ${show(plate.covers)} of each ${show(star.jointEdge)} joint.${ways.length === 0 ? '' : ` ${capital(ways.join(' or '))} makes the star stronger.`}`,
    })
  }
  return [...warnings, ...onMachine(plate, shop.cutter, show)]
}

/** What the cutter cannot do for this plate. */
const onMachine = (plate: NonNullable<Draft['backing']>, cutter: Cutter, show: Show): Warning[] => {
  const { bed, tabs, kind } = cutter
  const line = plate.cut.outer
  const size = outlineSize(line)
  const left =
    kind === 'router' && tabs
      ? withTabs(line, tabs, removedWidth(cutter)).filter(({ closed }) => !closed).length
      : undefined
  return [
    ...(bed && !goesInto(size.across, size.height, bed)
      ? [
          {
            code: 'beyond-bed' as const,
            text: `The backing's line is ${show(size.across)} × ${show(size.height)}; the cutter's bed takes ${show(bed.width)} × ${show(bed.length)}.`,
          },
        ]
      : []),
    ...(tabs && left !== undefined && left < tabs.count
      ? [
          {
            code: 'tabs-missing' as const,
            text: `The backing's edge has room for ${left} of ${tabs.count} tabs, none on curves. Hold the plate down otherwise, or it lifts into the bit as it comes free.`,
          },
        ]
      : []),
  ]
}
