import { blankIsArm } from '../geometry/kite.js'
import type { Order } from '../order/order.js'
import { closureGap } from '../plan/closure.js'
import type { PlannedCut, StarPlan } from '../plan/plan.js'
import { tooSmallForSaw } from '../plan/warnings.js'
import type { Mm } from '../units/brand.js'
import { degrees, mm } from '../units/convert.js'
import { showAngle, showLength, showMovement, showSetting } from '../units/show.js'

/** What to set for a cut: `45°`, or with a wedge `50° + 4° wedge`. */
export const settingText = ({ reading, wedge }: Pick<PlannedCut, 'reading' | 'wedge'>): string =>
  wedge ? `${showAngle(reading)} + ${showAngle(wedge.angle)} wedge` : showAngle(reading)

/** `read 31.7° to cut 31.5°: …`, where a setting makes a learned bias good; undefined where it does not. */
export const biasText = ({ miter, bias }: PlannedCut, { shop }: Order): string | undefined => {
  if (bias === undefined || shop.saw.bias === undefined) return undefined
  const { uncertainty } = shop.saw.bias
  const sure = uncertainty === 0 ? '' : `, give or take ${showAngle(uncertainty)}`
  const way = bias < 0 ? 'shallower' : 'steeper'
  return `read ${showAngle(degrees(Math.abs(miter - bias)))} to cut ${showAngle(miter)}: this saw cuts ${showAngle(degrees(Math.abs(bias)))} ${way} than its scale says${sure}`
}

/** Which reading is meant, and in inches what stands after a fraction. */
export const readingNotes = ({ lengths }: Order): string[] => [
  'Miter angles are read from a square crosscut.',
  ...(lengths.units === 'in'
    ? [
        '+0.012 or -0.012 after a fraction: decimals of an inch more or less, for a caliper; by tape, cut blanks a hair long.',
      ]
    : []),
]

/** A step at the saw and what to do in it. */
export interface CutStep {
  readonly name: string
  readonly text: string
}

/**
 * The cuts in order, as they are made at the saw; for an arm that is too small for it, how it is cut by hand.
 *
 * With the fence along x, the wood at y > 0 and the tip at the origin, a joint cut leans away from the tip as it leaves
 * the fence, so the saw's handle swings away from the stop that stands at the tip; the first cut leans the same way,
 * and the other way when the tip angle is over 90°. Turned over about its long axis the arm shows the blade its mirror
 * image, and the face of cut 1 lies on the fence. A wedge adds to the swing when its thick end is on the handle's side.
 */
export const cutSteps = (plan: StarPlan, order: Order): CutStep[] => {
  if (tooSmallForSaw(plan)) return [BY_HAND]
  return blankIsArm(plan.star)
    ? [firstStep(plan, order), rhombusStep(plan, order), ...wedgeSteps(plan)]
    : [firstStep(plan, order), secondStep(plan, order), THIRD_STEP, ...wedgeSteps(plan)]
}

/** Nothing can hold so small an arm beside a spinning blade. */
export const TOO_SMALL = 'Too small for a miter saw: fine hand saw and miter box.'
export const BY_HAND_WAY =
  "Glue the arm pattern on the board, one long edge of the arm along the board's edge. Leave the lines standing and sand down to them."

const BY_HAND: CutStep = { name: 'By hand', text: `${TOO_SMALL} ${BY_HAND_WAY}` }

const firstStep = (plan: StarPlan, order: Order): CutStep => {
  const { blank, firstCut } = plan
  const set = (length: Mm) => showSetting(length, order.lengths)
  const blade = showLength(mm(blank.pitch - blank.side), order.lengths)
  const tolerance = blankIsArm(plan.star)
    ? 'more spoils the arm as well as less'
    : 'a little more does no harm, less spoils the arm'
  const corner =
    firstCut.miter > 0 && !blankIsArm(plan.star)
      ? ", in its corner at the fence on the stop's side, the tip"
      : ''
  return {
    name: 'Cut 1',
    text: `pencil a mark on the face side, the one to be seen, of every blank${corner}: it lies up. Saw ${settingText(firstCut)}, board edge on the ${firstCut.wedge ? 'wedge' : 'fence'}. Begin each board with a trim: its end sawn off at this setting. The next cut 1 comes ${set(blank.pitch)} further on: ${set(blank.side)} of blank and ${blade} of blade on the slant; ${tolerance}. Repeat by marks, or by a stop ${set(blank.side)} from the near side of the blade, its face cut to the slant, that is lifted away before the blade comes down.`,
  }
}

const secondStep = ({ firstCut, jointCut, stop }: StarPlan, order: Order): CutStep => {
  const edge = jointCut.wedge
    ? 'the same edge on the wedge'
    : firstCut.wedge
      ? 'wedge off, the same edge on the fence'
      : 'the same edge on the fence'
  const face = firstCut.miter < 0 ? ', its face cut to the slanted edge, which overhangs the tip' : ''
  const swing =
    firstCut.miter < 0 ? ' (at cut 1 the other way)' : firstCut.miter === 0 ? '' : ' (at cut 1 the same way)'
  return {
    name: 'Cut 2',
    text: `face side up, saw ${settingText(jointCut)}, its handle swung away from the stop${swing}; ${edge}, the tip against a stop ${showSetting(stop, order.lengths)} along it from the near side of the blade${face}. Arm clamped, offcut free.`,
  }
}

const THIRD_STEP: CutStep = {
  name: 'Cut 3',
  text: 'same saw, same stop. Turn the arm over, face side down, so that the edge from cut 1 lies where the first edge lay and the tip is at the stop again.',
}

const rhombusStep = ({ star }: StarPlan, order: Order): CutStep => ({
  name: 'Rhombus',
  text: `the blank is already the arm: with the board exactly ${showSetting(star.armStrip, order.lengths)} wide there are no cuts 2 and 3. If yours measures otherwise, give its true width as the star's board-width.`,
})

const wedgeSteps = ({ star, firstCut, jointCut }: StarPlan): CutStep[] => {
  const wedges = [
    ...(firstCut.wedge ? [`${showAngle(firstCut.wedge.angle)} for cut 1`] : []),
    ...(jointCut.wedge && !blankIsArm(star) ? [`${showAngle(jointCut.wedge.angle)} for cuts 2 and 3`] : []),
  ]
  return wedges.length === 0
    ? []
    : [
        {
          name: 'Wedge',
          text: `${wedges.join(', ')}, between fence and board, thick end on the side the saw handle swings to; clamped or screwed to the fence, no screw in the blade's path.`,
        },
      ]
}

/** `4° of a full turn: 14.9 mm at the valley`, what a closure leaves at the last joint. */
export const closureText = (closure: number, gap: Mm, order: Order): string =>
  `${showAngle(degrees(Math.abs(closure)))} of a full turn: ${showMovement(gap, order.lengths)} at the ${closure > 0 ? 'valley' : 'centre'}`

/** What the nearest mark of a cut leaves open at the last joint: `nothing`, or as {@link closureText} says. */
export const leftOpenText = ({ closureAtMark }: PlannedCut, { star }: StarPlan, order: Order): string =>
  closureAtMark === 0
    ? 'nothing'
    : closureText(closureAtMark, closureGap(star.jointEdge, closureAtMark), order)
