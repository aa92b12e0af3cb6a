import type { Drawing } from '../drawing/model.js'
import { blankIsArm } from '../geometry/kite.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { tooSmallForSaw } from '../plan/warnings.js'
import { showAngle, showLength, showSetting } from '../units/show.js'
import { PRINT_CAUTION, SAW_CAUTION } from './cautions.js'
import { cutSteps } from './cut-steps.js'
import { ownNote } from './own-note.js'
import { sizeText } from './size-text.js'

/** What the arm pattern says in words: the cuts in order, the figures to check, the cautions. */
export const armNotes = (plan: StarPlan, order: Order, trueSize: Drawing['trueSize']): string[] => {
  const { star, kite } = plan
  const show = (length: typeof star.radius) => showLength(length, order.lengths)
  const chamfer = plan.order.chamfer
  const byHand = tooSmallForSaw(plan)
  const blade = byHand
    ? ''
    : ` Dashed blue beside a cut: the far side of the blade (${show(order.shop.saw.kerf)}).`
  return [
    ...plan.warnings.filter(({ code }) => code === 'short-arm').map(({ text }) => `! ${text}`),
    ...ownNote(plan),
    ...cutSteps(plan, order).map(({ name, text }) => `${name}: ${text}`),
    `Tip edge ${show(star.tipEdge)}, joint edge ${show(star.jointEdge)}, tip to centre ${show(star.radius)}, valley to valley ${show(kite.width)}. Tip ${showAngle(star.tipAngle)}, sides ${showAngle(star.sideAngle)}, centre ${showAngle(star.centreAngle)}. Board ${showSetting(star.armStrip, order.lengths)} wide, grain along ${byHand ? "the board's edge" : 'the edge at the fence'}.`,
    `Solid black: the finished arm, ${sizeText(trueSize, order.lengths)}.${blankIsArm(star) ? '' : ' Hatched: waste.'}${blade}${chamfer === undefined ? '' : ` Dashed black: chamfer, ${show(chamfer)} wide, after all cuts.`} Every edge of the trial piece must meet its line.`,
    PRINT_CAUTION,
    SAW_CAUTION,
  ]
}
