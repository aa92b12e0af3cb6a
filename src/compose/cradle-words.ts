import { kite } from '../geometry/kite.js'
import { between, point } from '../geometry/point.js'
import { cradleReach } from '../jigs/arm-cradle.js'
import { freeDirections, isFree } from '../jigs/free-movements.js'
import { wallBeside } from '../jigs/holes.js'
import { type Jig, mirroredPoint } from '../jigs/jig.js'
import { jointBlade, pastBase, pastBlade } from '../jigs/uncut-wood.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { Degrees } from '../units/brand.js'
import { degrees, mm, radians, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { showAtLeast, showLength, showSetting, showSize } from '../units/show.js'
import { SAME_POINT } from '../units/tolerance.js'
import { settingText } from './cut-steps.js'
import { boltsThrough, screwsIntoFace } from './hardware-words.js'
import { readable } from './jig-letters.js'
import { handWords, type JigWords, sideWords } from './jig-phrases.js'
import { wedgeOf } from './wedge-words.js'

export const cradleWords = (jig: Jig, plan: StarPlan, order: Order): JigWords => {
  const { star, jointCut } = plan
  const { nearValley, centre } = kite(star)
  const { along } = jointBlade(plan)
  const edge = between(nearValley, centre, 0.5)
  const left = order.shop.jigStock.side === 'left'
  const lean = radians(maths.atan2(along.y, left ? -along.x : along.x))
  const {
    shop: { jigStock },
    lengths,
  } = order
  const show = (length: typeof jigStock.screw) => showSize(length, lengths)
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
      freeWords(star.tipAngle),
      'Pack up clamp and bar until the bar presses level on the arm.',
      reachWords(plan, order),
      ...restWords(jig, plan, order),
      ...thinWalls(jig, order),
      ...handWords(jig, order),
    ],
    hardware: [
      `${strip + block} wood screws ${screwsIntoFace(jigStock, lengths)}, from below through the base: ${strip} into the fence strip, ${block} into the tip block; holes ${show(jigStock.screw)}, heads sunk. Drill pilot holes of ${show(jigStock.pilot)} at the crosses on strip and block, or the screws do not bite${GLUED[block] ?? ''}`,
      `toggle clamp, foot slots ${show(jigStock.clampAcross)} × ${show(jigStock.clampAlong)} apart; for its foot 4 bolts ${boltsThrough(jigStock.screw, jigStock, lengths)} with washers and nuts, from below, heads sunk`,
      `for the bar's holes of ${show(jigStock.bolt)} a bolt ${boltsThrough(jigStock.bolt, jigStock, lengths)} and a rubber foot`,
    ],
  }
}

/** What a tip block needs that has room for no screw, or for one. */
const GLUED = [
  '; glue the block, which has no room for a screw',
  '; glue the block too, for on one screw it turns',
]

/** Which ways strip and block leave free, and what takes them. */
const freeWords = (tipAngle: Degrees): string => {
  const face = toRadians(degrees(tipAngle - 90))
  const free = freeDirections([point(0, 1), point(maths.cos(face), maths.sin(face))])
  const ways = [
    { way: degrees(0), words: 'along the strip towards the blade' },
    { way: degrees(90), words: 'straight off the strip' },
    { way: tipAngle, words: 'along the block' },
  ].filter(({ way }) => isFree(free, way))
  return `The arm can still move ${ways.map(({ words }) => words).join(', ')}, and up: only the toggle clamp stops it. Close it before every cut.`
}

/** Wood that sticks out farther than this tips without a rest, in mm. Common practice, no published source. */
const TIPS = 50

/** What carries the blank in cut 2 where it is much larger than the cradle. */
const restWords = ({ parts, inUse }: Jig, plan: StarPlan, { lengths }: Order): string[] => {
  const base = parts.find(({ word }) => word === 'base')?.outer
  const ends = [
    { far: base && inUse?.uncut ? pastBase(inUse.uncut, base) : mm(0), past: 'the base' },
    { far: pastBlade(plan), past: 'the blade' },
  ].filter(({ far }) => far > TIPS)
  return ends.length === 0
    ? []
    : [
        `Cut 2: the uncut wood reaches ${ends.map(({ far, past }) => `${showLength(far, lengths)} past ${past}`).join(' and ')}. Lay pieces of the same panel under it there, clear of the blade, and carry what goes past the saw's table. What is cut off stays unclamped.`,
      ]
}

/** The strip and the base take of the saw's reach and of its depth of cut. */
const reachWords = (plan: StarPlan, order: Order): string => {
  const {
    shop: { jigStock },
    lengths,
  } = order
  const depth =
    plan.thickness === undefined
      ? "the panel's thickness and the arm's"
      : showAtLeast(mm(jigStock.thickness + plan.thickness), lengths)
  const reach = plan.jointCut.wedge
    ? wedgeOf('joint-cut-wedge', plan, order).reach
    : cradleReach(plan, jigStock)
  return `The blade must reach ${showAtLeast(mm(reach), lengths)} from the fence and cut ${depth} deep: try it with the saw off.`
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
