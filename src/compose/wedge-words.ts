import type { WedgeJig } from '../jigs/cut-wedges.js'
import { firstCutWedge, jointCutWedge } from '../jigs/cut-wedges.js'
import type { Jig } from '../jigs/jig.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { degrees, radians, toRadians } from '../units/convert.js'
import { showAngle, showLength, showSetting } from '../units/show.js'
import { settingText } from './cut-steps.js'
import { handWords, type JigWords, readable, sideWords } from './jig-phrases.js'

export const wedgeOf = (
  name: 'first-cut-wedge' | 'joint-cut-wedge',
  plan: StarPlan,
  { shop }: Order,
): WedgeJig =>
  name === 'first-cut-wedge'
    ? firstCutWedge(plan, shop.jigStock, shop.saw.kerf)
    : jointCutWedge(plan, shop.jigStock)

export const wedgeWords = (jig: Jig, plan: StarPlan, order: Order): JigWords => {
  const first = jig.name === 'first-cut-wedge'
  const cut = first ? plan.firstCut : plan.jointCut
  const { reach } = wedgeOf(first ? 'first-cut-wedge' : 'joint-cut-wedge', plan, order)
  const wedge = showAngle(cut.wedge?.angle ?? degrees(0))
  const set = showSetting(first ? plan.blank.side : plan.stop, order.lengths)
  const { screw } = order.shop.jigStock
  const spacerLies = toRadians(degrees(plan.star.tipAngle + Math.sign(cut.miter) * (cut.wedge?.angle ?? 0)))
  const seen = order.shop.jigStock.side === 'left' ? radians(Math.PI - spacerLies) : spacerLies
  return {
    title: first ? 'Fence wedge, for cut 1' : 'Fence wedge, for cuts 2 and 3',
    onParts: {
      A: [
        { text: `SAW ${showAngle(cut.reading)}` },
        { text: `A WEDGE ${wedge}` },
        { text: `${first ? 'CUT 1' : 'CUTS 2 + 3'}: ${set}` },
        { text: plan.order.name },
      ],
      B: [{ text: 'B RAIL' }],
      C: [{ text: 'C SPACER: LIFT OUT', turn: readable(seen) }],
      D: [{ text: `SAW ${showAngle(cut.reading)}` }, { text: `D WEDGE ${wedge}` }, { text: plan.order.name }],
      E: [{ text: 'E RAIL' }],
    },
    steps: [
      `Saw ${settingText(cut)}: read ${showAngle(cut.reading)} on its scale, the handle swung ${cut.miter < 0 ? 'towards' : 'away from'} the heel; ${sideWords(order)}. Rails stand on the plates, flush with the edge that goes to the fence.`,
      ...(first ? boardSteps(set) : cradleSteps(set)),
      `The blade must reach ${showLength(reach, order.lengths)} from the fence along its cut: try it with the saw off.`,
      ...handWords(jig, order),
    ],
    hardware: [
      `3 wood screws through each plate into its rail, holes ${showLength(screw, order.lengths)}`,
      first ? '2 clamps for each rail, 1 for the board' : '2 clamps for the rail, and what the cradle needs',
    ],
  }
}

const boardSteps = (set: string): string[] => [
  `Clamp rail B to the fence so that the board's end, with spacer C between it and the heel, lies ${set} along plate A from the blade's near side. Lay a straight edge on A, push D up to it beyond the blade, clamp rail E.`,
  'Push the board along D and A against the spacer and clamp it to D. Lift the spacer out, then start the saw: the blank must lie free, or the blade throws it. Take it out when the blade stands still.',
]

const cradleSteps = (set: string): string[] => [
  `Lay the arm cradle's base on plate A, against its heel. Clamp rail B to the fence so that the base's slanted edge lies along the blade's near side, the arm's tip ${set} from it along the cradle's strip; then clamp the base.`,
]
