import { kite } from '../geometry/kite.js'
import { between, direction, point } from '../geometry/point.js'
import { angleGauge, GAUGE_WORDS, type GaugedAngle } from '../jigs/angle-gauge.js'
import { cradleReach } from '../jigs/arm-cradle.js'
import { freeDirections, isFree } from '../jigs/free-movements.js'
import { wallBeside } from '../jigs/holes.js'
import { type Jig, mirroredPoint } from '../jigs/jig.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { degrees, mm, radians, toRadians } from '../units/convert.js'
import { showAngle, showAtLeast, showAtMost, showLength, showSetting, showSize } from '../units/show.js'
import { SAME_POINT } from '../units/tolerance.js'
import { settingText } from './cut-steps.js'
import { drillSteps, withDrillWords } from './drill-words.js'
import { frameWords } from './frame-words.js'
import { readable } from './jig-letters.js'
import { handWords, type JigWords, railScrews, sideWords, spacerWords } from './jig-phrases.js'
import { wedgeWords } from './wedge-words.js'
import { windowWords } from './window-words.js'

/** What a jig says, and what is drilled in it because the cutter is too wide for it. */
export const jigWords = (jig: Jig, plan: StarPlan, order: Order): JigWords => {
  const words = ownWords(jig, plan, order)
  return {
    ...words,
    onParts: withDrillWords(words.onParts, jig, order),
    steps: [...words.steps, ...drillSteps(jig, order)],
  }
}

const ownWords = (jig: Jig, plan: StarPlan, order: Order): JigWords => {
  switch (jig.name) {
    case 'blank-stop':
      return blankStopWords(jig, plan, order)
    case 'arm-cradle':
      return armCradleWords(jig, plan, order)
    case 'first-cut-wedge':
    case 'joint-cut-wedge':
      return wedgeWords(jig, plan, order)
    case 'glue-up-frame':
      return frameWords(plan, order)
    case 'trial-window':
      return windowWords(plan, order)
    case 'angle-gauge':
      return angleGaugeWords(plan, order)
  }
}

const blankStopWords = (jig: Jig, plan: StarPlan, order: Order): JigWords => {
  const { star, blank, firstCut } = plan
  const set = showSetting(blank.side, order.lengths)
  return {
    title: 'Blank stop, for cut 1',
    onParts: {
      plate: [
        { text: 'BLANK STOP' },
        { text: plan.order.name },
        { text: `CUT 1: SAW ${settingText(firstCut)}` },
        { text: `END TO BLADE ${set}` },
        { text: `ANGLE ${showAngle(star.tipAngle)}` },
      ],
      rail: [{ text: 'RAIL' }, { text: 'CLAMPS', near: jig.hands[0]?.at ?? point(0, 0) }],
      spacer: spacerWords(toRadians(star.tipAngle), order),
    },
    steps: [
      `Saw ${settingText(firstCut)}, ${sideWords(order)}. Clamp the rail to the fence so that the board's end, with the spacer between it and the stop's slanted edge, lies ${set} along the fence from the blade's near side.`,
      'Push the board, face side up, against the spacer and clamp it on its long side, beyond the blade. Lift the spacer out, then start the saw: the blank must lie free, or the blade throws it.',
      `Take the blank out when the blade stands still. ${star.tipAngle < 90 ? 'The same stop serves every blank of this star.' : 'The slanted edge leans back; the board still meets it along its whole end.'}`,
      ...handWords(jig, order),
    ],
    hardware: [railScrews('the plate into the rail', order), '2 clamps for the rail, 1 for the board'],
  }
}

const armCradleWords = (jig: Jig, plan: StarPlan, order: Order): JigWords => {
  const { star, jointCut } = plan
  const { nearValley, centre } = kite(star)
  const along = direction(nearValley, centre)
  const edge = between(nearValley, centre, 0.5)
  const left = order.shop.jigStock.side === 'left'
  const lean = radians(Math.atan2(along.y, left ? -along.x : along.x))
  const face = toRadians(degrees(star.tipAngle - 90))
  const free = freeDirections([point(0, 1), point(Math.cos(face), Math.sin(face))])
  const offFence = isFree(free, degrees(90))
  const { jigStock } = order.shop
  const show = (length: typeof jigStock.screw) => showSize(length, order.lengths)
  const [strip, block] = ['fence strip', 'tip block'].map(
    (part) => jig.parts.find(({ word }) => word === part)?.pilots?.length ?? 0,
  ) as [number, number]
  return {
    title: 'Arm cradle, for cuts 2 and 3',
    onParts: {
      base: [
        {
          text: 'BLADE THIS EDGE',
          short: 'BLADE',
          near: left ? mirroredPoint(edge) : edge,
          turn: readable(lean),
        },
        { text: 'ARM CRADLE' },
        { text: plan.order.name },
        { text: `CUTS 2 + 3: SAW ${settingText(jointCut)}` },
        { text: `TIP TO BLADE ${showSetting(plan.stop, order.lengths)}` },
      ],
      'fence strip': [{ text: 'FENCE STRIP' }],
      'tip block': [{ text: 'TIP BLOCK' }],
      'hold-down bar': [{ text: 'BAR' }],
    },
    steps: [
      `Saw ${settingText(jointCut)}, ${sideWords(order)}, the handle swung away from it. Fence strip against the ${jointCut.wedge ? 'wedge' : "saw's fence"}, the base's slanted edge along the blade's near side. Clamp the base to the table or the fence.`,
      'Cut 2: face side up, the edge that lay on the fence on the fence strip, the tip against the tip block. Cut 3: the arm turned over, the other tip edge on the strip. Blow the dust out of the notch at the tip each time.',
      offFence
        ? 'Strip and block do not keep this arm on the strip: only the toggle clamp does. Close it before every cut.'
        : 'The arm can still slide towards the blade along the strip, and along the block: only the toggle clamp stops it. Close it before every cut.',
      'Pack up clamp and bar until the bar presses level on the arm.',
      reachWords(plan, order),
      ...thinWalls(jig, order),
      ...handWords(jig, order),
    ],
    hardware: [
      `${strip + block} wood screws, no longer than ${showAtMost(mm(2 * jigStock.thickness - SCREW_END), order.lengths)}, from below through the base: ${strip} into the fence strip, ${block} into the tip block; holes ${show(jigStock.screw)}, heads sunk. Drill pilot holes of ${show(jigStock.pilot)} at the crosses on strip and block, or the screws do not bite${GLUED[block] ?? ''}`,
      `toggle clamp, foot slots ${show(jigStock.clampAcross)} × ${show(jigStock.clampAlong)} apart, with ${show(jigStock.bolt)} holes in the bar for its bolt and a rubber foot`,
    ],
  }
}

/** What a tip block needs that has room for no screw, or for one. */
const GLUED = [
  '; glue the block, which has no room for a screw',
  '; glue the block too, for on one screw it turns',
]

/** Wood over the end of a screw, in mm. */
const SCREW_END = 2

/** The strip and the base take of the saw's reach and of its depth of cut. */
const reachWords = (plan: StarPlan, { shop: { jigStock }, lengths }: Order): string => {
  const depth =
    plan.thickness === undefined
      ? "the panel's thickness and the arm's"
      : showAtLeast(mm(jigStock.thickness + plan.thickness), lengths)
  const reach = plan.jointCut.wedge
    ? ''
    : `reach ${showAtLeast(cradleReach(plan, jigStock), lengths)} from the fence and `
  return `The blade must ${reach}cut ${depth} deep: try it with the saw off.`
}

/** Parts that a star leaves less wood beside a hole than the panel is thick. */
const thinWalls = ({ parts }: Jig, { shop: { jigStock }, lengths }: Order): string[] =>
  parts.flatMap((part) => {
    const wall = wallBeside(part)
    return wall === undefined || wall > jigStock.thickness - SAME_POINT
      ? []
      : [
          `The ${part.word} is only ${showLength(wall, lengths)} wide beside its holes, less than the panel is thick: cut it from sound hardwood, or give a thinner ${part.word === 'hold-down bar' ? 'bolt' : 'screw'}.`,
        ]
  })

const angleGaugeWords = (plan: StarPlan, order: Order): JigWords => {
  const { angles } = angleGauge(plan, order.shop.jigStock, order.shop.cutter)
  const gaugedAngle = (wanted: GaugedAngle['word']): string =>
    angles.flatMap(({ word, angle }) => (word === wanted ? [`${word} ${showAngle(angle)}`] : [])).join()
  return {
    title: 'Angle gauge',
    onParts: {
      gauge: [
        ...angles.map(({ word, angle, words }) => ({
          text: `${word} ${showAngle(angle)}`,
          in: { middle: words, across: GAUGE_WORDS },
        })),
        { text: plan.order.name },
      ],
    },
    steps: [
      `${gaugedAngle('TIP')} and ${gaugedAngle('CENTRE')} are the notches of the upper edge, ${gaugedAngle('SIDE')} that of the lower. ${gaugedAngle('VALLEY')} is the lower right corner: it goes between the tip edges of two arms that lie together.`,
      'Lay an arm into a notch and hold both against the light: light at the mouth, the angle is too small; at the corner, too large.',
      order.shop.cutter.kind === 'router'
        ? "In each notch one edge runs into the corner; beside the other stands the bit's relief."
        : 'Test the gauge on a printed pattern before you trust it.',
    ],
    hardware: [],
  }
}
