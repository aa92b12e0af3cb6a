import { blankIsArm } from '../geometry/kite.js'
import type { Order } from '../order/order.js'
import type { PlannedCut, StarPlan } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { degrees, mm } from '../units/convert.js'
import { showAngle, showLength, showSetting } from '../units/show.js'

/** What to set for a cut: `45°`, or with a wedge `50° + 4° wedge`. */
export const settingText = ({ reading, wedge }: PlannedCut): string =>
  wedge ? `${showAngle(reading)} + ${showAngle(wedge.angle)} wedge` : showAngle(reading)

/** A step at the saw and what to do in it. */
export interface CutStep {
  readonly name: string
  readonly text: string
}

/**
 * The cuts in order, as they are made at the saw; one text each.
 *
 * The board's edge lies on the fence, the arm's tip at the stop's side. Seen so, all three cuts lean away from the tip
 * (the first one toward it when the tip angle is over 90°). Turned over about its long axis the arm shows the blade
 * the mirror image, and the cut face of cut 1 lies on the fence.
 */
export const cutSteps = (plan: StarPlan, order: Order): CutStep[] => {
  const { star, blank, firstCut, jointCut, stop } = plan
  const set = (length: Mm) => showSetting(length, order.lengths)
  const blade = mm(blank.pitch - blank.side)
  const swing =
    firstCut.miter < 0
      ? ' The saw swings opposite to cuts 2 and 3.'
      : firstCut.miter === 0
        ? ''
        : ' The saw swings to the same side for all cuts.'
  const first = {
    name: 'Cut 1',
    text: `saw ${settingText(firstCut)}, board edge on the fence. The next cut 1 comes ${set(blank.pitch)} further on: ${set(blank.side)} of blank and ${showLength(blade, order.lengths)} of blade on the slant${blankIsArm(star) ? '' : '; a little more does no harm, less spoils the arm'}. Repeat by marks, or by a stop that is lifted away before the blade comes down.${blankIsArm(star) ? '' : swing}`,
  }
  const wedge = firstCut.wedge || jointCut.wedge ? [WEDGE_STEP] : []
  if (blankIsArm(star)) return [first, rhombusStep(star.armStrip, order), ...wedge]
  const face =
    firstCut.miter < 0 ? '; cut the face of the stop to the slanted edge, which overhangs the tip' : ''
  return [
    first,
    {
      name: 'Cut 2',
      text: `saw ${settingText(jointCut)}, the same edge on the fence, the tip against a stop ${set(stop)} along the fence from the near side of the blade${face}. Arm clamped, offcut free.`,
    },
    {
      name: 'Cut 3',
      text: 'same saw, same stop. Turn the arm over so that the edge from cut 1 lies on the fence and the tip is at the stop again.',
    },
    ...wedge,
  ]
}

const rhombusStep = (boardWidth: Mm, order: Order): CutStep => ({
  name: 'Rhombus',
  text: `the blank is already the arm: with the board exactly ${showLength(boardWidth, order.lengths)} wide there are no cuts 2 and 3.`,
})

const WEDGE_STEP: CutStep = {
  name: 'Wedge',
  text: 'cut to its angle and fastened to the fence, its thick end on the side the saw handle swings to; stops and marks are measured along it.',
}

/** `4° of the ring: 14.9 mm at the valley`, what a closure leaves at the last joint. */
export const closureText = (closure: number, gap: Mm, order: Order): string =>
  `${showAngle(degrees(Math.abs(closure)))} of the ring: ${showLength(gap, order.lengths)} at the ${closure > 0 ? 'valley' : 'centre'}`
