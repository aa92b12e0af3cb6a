import { inStrokes } from '../drawing/stroke-lettering.js'
import type { Jig } from '../jigs/jig.js'
import { wallInRail } from '../jigs/on-rail.js'
import type { Order } from '../order/order.js'
import { capital } from '../order/problem.js'
import { SCREWS_HOLD } from '../order/wood-screw.js'
import type { StarPlan } from '../plan/plan.js'
import { HAND_DISTANCE } from '../plan/warnings.js'
import type { Radians } from '../units/brand.js'
import { radians } from '../units/convert.js'
import { showLength, showSize } from '../units/show.js'
import { SAME_POINT } from '../units/tolerance.js'
import { screwsIntoEdge } from './hardware-words.js'
import { type PartWords, readable } from './jig-letters.js'

/** What is said of a jig: on its parts, by their words, and in words on paper. */
export interface JigWords {
  readonly title: string
  readonly onParts: Readonly<Record<string, readonly PartWords[]>>
  readonly steps: readonly string[]
  readonly hardware: readonly string[]
}

/** Of jigs that lie beside the blade. Common practice, no published source. */
export const JIG_CAUTION =
  "Clamp the jig, then lower the blade with the saw off and turn it by hand: it must touch neither jig nor clamps. The saw's manual and local rules come first."

/** The rail is no thicker than the panel: what is left beside the screws in it. */
export const railScrews = (rails: number, { shop: { jigStock }, lengths }: Order): string =>
  `${3 * rails} wood screws ${screwsIntoEdge(jigStock, lengths)}, ${rails === 1 ? 'through the plate into the rail' : '3 through each plate into its rail'}, holes ${showSize(jigStock.screw, lengths)}; the rail has only ${showLength(wallInRail(jigStock), lengths)} beside them, so drill pilot holes of ${showSize(jigStock.pilot, lengths)}${jigStock.thickness < SCREWS_HOLD - SAME_POINT ? ' and glue the rail as well' : ''}`

/** It stands beyond the blade, where a hand that closes it is as far away as from any jig. */
export const boardClamp = ({ shop: { jigStock }, lengths }: Order): string =>
  `1 for the board, ${showLength(jigStock.hands, lengths)} or more from the kerf`

/** The letters that are cut have no signs of other scripts and few marks: what became of the star's name, if anything. */
export const nameWords = ({ order: { name } }: StarPlan): string[] =>
  inStrokes(name) === name
    ? []
    : [
        `On the parts the name reads "${inStrokes(name)}": the letters that are cut are Latin ones without most accents.`,
      ]

/** On the spacer of a jig, along the face that leans so from the fence on a jig for the right of the blade. */
export const spacerWords = (face: Radians, { shop }: Order): PartWords[] => {
  const turn = readable(shop.jigStock.side === 'left' ? radians(Math.PI - face) : face)
  return [
    { text: 'LIFT OUT', turn },
    { text: 'SPACER', turn },
  ]
}

export const sideWords = ({ shop }: Order): string => `kept piece to the ${shop.jigStock.side} of the blade`

/** How far hands and hold-down stay from the blade, and what is asked for where that is not far. */
export const handWords = (jig: Jig, order: Order): string[] =>
  jig.hands.map(({ place, fromBlade }) => {
    const far = showLength(fromBlade, order.lengths)
    if (place === "the spacer's grip")
      return `The spacer's grip is ${far} from the blade: touch it only while the saw is off.`
    return fromBlade >= order.shop.jigStock.hands - SAME_POINT
      ? `${capital(place)}: ${far} from the blade.`
      : `${capital(place)}: only ${far} from the blade${fromBlade < HAND_DISTANCE ? ', nearer than a hand may come' : ''}. Hands stay off while the saw runs; the clamp is required.`
  })
