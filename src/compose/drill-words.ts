import { drilledHoles } from '../jigs/drilled.js'
import type { Jig, JigPart } from '../jigs/jig.js'
import type { Order } from '../order/order.js'
import { removedWidth } from '../order/removed-width.js'
import { showSize } from '../units/show.js'
import type { JigWords } from './jig-phrases.js'

/** What to drill in a part that the cutter is too wide for: `4.0 mm`; undefined where it gets in everywhere. */
const drillText = (part: JigPart, { shop, lengths }: Order): string | undefined => {
  const [hole] = drilledHoles(part, removedWidth(shop.cutter))
  return hole && showSize(hole.diameter, lengths)
}

/** The words of a jig's parts, and on each what its crosses are drilled with. */
export const withDrillWords = (
  onParts: JigWords['onParts'],
  jig: Jig,
  order: Order,
): JigWords['onParts'] => ({
  ...onParts,
  ...Object.fromEntries(
    jig.parts.flatMap((part) => {
      const drill = drillText(part, order)
      const [near] = drilledHoles(part, removedWidth(order.shop.cutter)).flatMap(({ middles }) => middles)
      return drill === undefined || near === undefined
        ? []
        : [[part.word, [...(onParts[part.word] ?? []), { text: `DRILL ${drill}`, near }]]]
    }),
  ),
})

/** Which parts are drilled at crosses, for their holes are narrower than what the cutter removes. */
export const drillSteps = (jig: Jig, order: Order): string[] => {
  const width = removedWidth(order.shop.cutter)
  const drilled = jig.parts.flatMap((part) => {
    const drill = drillText(part, order)
    return drill === undefined ? [] : [`${part.word} ${drill}`]
  })
  const slots = jig.parts.some((part) => drilledHoles(part, width).some(({ middles }) => middles.length > 1))
  return drilled.length === 0
    ? []
    : [
        `Holes too narrow for the bit of ${showSize(width, order.lengths)} are marked, not cut. Drill at the crosses: ${drilled.join(', ')}.${slots ? ' Where a line joins two of them, clear out the slot between.' : ''}`,
      ]
}
