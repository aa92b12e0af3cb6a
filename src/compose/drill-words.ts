import type { Point } from '../geometry/point.js'
import { type DrilledHole, drilledHoles } from '../jigs/drilled.js'
import type { Jig } from '../jigs/jig.js'
import type { Order } from '../order/order.js'
import { removedWidth } from '../order/removed-width.js'
import { showSize } from '../units/show.js'
import type { JigWords } from './jig-phrases.js'

/** A part that the cutter is too wide for somewhere. */
interface DrilledPart {
  readonly word: string
  readonly holes: readonly DrilledHole[]
  /** Of the drill: `4.0 mm`. */
  readonly drill: string
  /** One of the places to drill. */
  readonly near: Point
}

const drilledParts = ({ parts }: Jig, { shop, lengths }: Order): DrilledPart[] =>
  parts.flatMap((part) => {
    const holes = drilledHoles(part, removedWidth(shop.cutter))
    const [hole] = holes
    const near = hole?.middles[0]
    return hole && near ? [{ word: part.word, holes, drill: showSize(hole.diameter, lengths), near }] : []
  })

/** The words of a jig's parts, and on each what its crosses are drilled with. */
export const withDrillWords = (
  onParts: JigWords['onParts'],
  jig: Jig,
  order: Order,
): JigWords['onParts'] => ({
  ...onParts,
  ...Object.fromEntries(
    drilledParts(jig, order).map(({ word, drill, near }) => [
      word,
      [...(onParts[word] ?? []), { text: `DRILL ${drill}`, near }],
    ]),
  ),
})

/** Which parts are drilled at crosses, for their holes are narrower than what the cutter removes. */
export const drillSteps = (jig: Jig, order: Order): string[] => {
  const drilled = drilledParts(jig, order)
  const slots = drilled.some(({ holes }) => holes.some(({ middles }) => middles.length > 1))
  return drilled.length === 0
    ? []
    : [
        `Holes too narrow for the bit of ${showSize(removedWidth(order.shop.cutter), order.lengths)} are marked, not cut. Drill at the crosses: ${drilled.map(({ word, drill }) => `${word} ${drill}`).join(', ')}.${slots ? ' Where a line joins two of them, clear out the slot between.' : ''}`,
      ]
}
