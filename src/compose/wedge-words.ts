import { point } from '../geometry/point.js'
import type { WedgeJig } from '../jigs/cut-wedges.js'
import { firstCutWedge, jointCutWedge } from '../jigs/cut-wedges.js'
import type { Jig } from '../jigs/jig.js'
import { CLAMPS, RAIL } from '../jigs/on-rail.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { degrees, toRadians } from '../units/convert.js'
import { showAngle, showAtLeast, showSetting } from '../units/show.js'
import { settingText } from './cut-steps.js'
import type { PartWords } from './jig-letters.js'
import { boardClamp, handWords, type JigWords, railScrews, sideWords, spacerWords } from './jig-phrases.js'

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
  const face = toRadians(degrees(plan.star.tipAngle + Math.sign(cut.miter) * (cut.wedge?.angle ?? 0)))
  return {
    title: first ? 'Fence wedge, for cut 1' : 'Fence wedge, for cuts 2 and 3',
    onParts: {
      'heel plate': [
        { text: `SAW ${showAngle(cut.reading)}` },
        { text: `HEEL WEDGE ${wedge}` },
        { text: `${first ? 'CUT 1' : 'CUTS 2 + 3'}: ${set}` },
        { text: plan.order.name },
      ],
      'heel rail': [clampsBeyond(jig, 0), { text: 'HEEL RAIL' }],
      spacer: spacerWords(face, order),
      'rest plate': [
        { text: `SAW ${showAngle(cut.reading)}` },
        { text: `REST WEDGE ${wedge}` },
        { text: plan.order.name },
      ],
      'rest rail': [clampsBeyond(jig, 1), { text: 'REST RAIL' }],
    },
    steps: [
      `Saw ${settingText(cut)}: read ${showAngle(cut.reading)} on its scale, the handle swung ${cut.miter < 0 ? 'towards' : 'away from'} the heel; ${sideWords(order)}. ${first ? 'Each rail stands on its plate' : 'The rail stands on the plate'}, flush with the edge that goes to the fence.`,
      ...(first ? boardSteps(set) : cradleSteps(set)),
      `The blade must reach ${showAtLeast(reach, order.lengths)} from the fence along its cut: try it with the saw off.`,
      ...handWords(jig, order),
    ],
    hardware: [
      railScrews(first ? 2 : 1, order),
      first
        ? `2 clamps for each rail, ${boardClamp(order)}`
        : '2 clamps for the rail, and what the cradle needs',
    ],
  }
}

/** On the side of a rail's line that is further from the blade. */
const clampsBeyond = (jig: Jig, rail: number): PartWords => {
  const from = jig.hands[rail]?.at.x ?? 0
  const away = Math.sign(from - (jig.inUse?.blade?.[0].x ?? 0))
  return { text: 'CLAMPS', near: point(from + (away * CLAMPS) / 2, RAIL / 2) }
}

const boardSteps = (set: string): string[] => [
  `Clamp the heel rail to the fence so that the board's end, with the spacer between it and the heel, lies ${set} along the heel plate from the blade's near side. Lay a straight edge on that plate, push the rest plate up to it beyond the blade, clamp the rest rail.`,
  'Push the board, face side up, along both plates against the spacer and clamp it to the rest plate. Lift the spacer out, then start the saw: the blank must lie free, or the blade throws it. Take it out when the blade stands still.',
]

const cradleSteps = (set: string): string[] => [
  `Lay the arm cradle's base on the heel plate, against its heel. Clamp the heel rail to the fence so that the base's slanted edge lies along the blade's near side, the arm's tip ${set} from it along the cradle's strip; then clamp the base.`,
]
