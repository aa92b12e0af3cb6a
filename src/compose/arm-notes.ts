import type { Drawing } from '../drawing/model.js'
import { blankIsArm } from '../geometry/kite.js'
import type { Order } from '../order/order.js'
import type { PlannedCut, StarPlan } from '../plan/plan.js'
import { degrees } from '../units/convert.js'
import { showAngle, showLength, showSetting } from '../units/show.js'
import { PRINT_CAUTION, SAW_CAUTION } from './cautions.js'
import { sizeText } from './size-text.js'

/** What the arm pattern says in words: the cuts in order, the figures to check, the cautions. */
export const armNotes = (plan: StarPlan, order: Order, trueSize: Drawing['trueSize']): string[] => {
  const { star, kite, blank, firstCut, jointCut, stop } = plan
  const show = (length: typeof stop) => showLength(length, order.lengths)
  const set = (length: typeof stop) => showSetting(length, order.lengths)
  const chamfer = plan.order.chamfer
  return [
    `Cut 1: ${settingText(firstCut)}; lower edge to the fence. The next arm's cut 1 comes ${set(blank.side)} further along, plus the blade.`,
    blankIsArm(star)
      ? `The blank is the finished arm: with the board exactly ${show(star.armStrip)} wide there are no cuts 2 and 3.`
      : `Cuts 2 and 3: ${settingText(jointCut)}; stop ${set(stop)} from the tip to the blade, along the fence. Turn the piece over in between.`,
    `Tip edge ${show(star.tipEdge)}, joint edge ${show(star.jointEdge)}, tip to centre ${show(star.radius)}, valley to valley ${show(kite.width)}. Tip ${showAngle(star.tipAngle)}, sides ${showAngle(star.sideAngle)}, centre ${showAngle(star.centreAngle)}.`,
    `Grain along the lower edge. Board ${show(star.armStrip)} wide, blade ${show(order.shop.saw.kerf)}, ${set(blank.pitch)} of board an arm.${chamfer === undefined ? '' : ` Dashed black: chamfer, ${show(chamfer)} wide, on the tip edges.`}`,
    `Solid black: the finished arm, ${sizeText(trueSize, order.lengths)}. Hatched: waste; dashed beside a cut: the far side of the blade. Every edge of the trial piece must meet its line.`,
    PRINT_CAUTION,
    SAW_CAUTION,
  ]
}

/** `saw 45°`, or with a wedge `fence wedge 9° and saw 45°`, with the lean when it is the other way. */
export const settingText = ({ miter, wedge, reading }: PlannedCut): string => {
  const saw = wedge
    ? `fence wedge ${showAngle(wedge.angle)} and saw ${showAngle(reading)}`
    : `saw ${showAngle(reading)}`
  return miter < 0 ? `${saw}, leaning the other way (${showAngle(degrees(-miter))} past square)` : saw
}
