import { goesInto } from '../geometry/goes-into.js'
import { cuttingRoom } from '../jigs/cutting-room.js'
import { armRoom, LEAST_SLOT } from '../jigs/frame-opening.js'
import { type GlueFrame, glueFrame } from '../jigs/glue-frame.js'
import { levelledSize } from '../jigs/levelled.js'
import type { Order } from '../order/order.js'
import type { Problem } from '../order/problem.js'
import { removedWidth } from '../order/removed-width.js'
import type { StarPlan } from '../plan/plan.js'
import { mm } from '../units/convert.js'
import { showLength, showSize, showSmall } from '../units/show.js'
import { screwsIntoFace } from './hardware-words.js'
import type { JigWords } from './jig-phrases.js'
import { sizeText } from './size-text.js'

/** In as few parts as go onto panel and bed; undefined when not even one for each arm does. */
const fittingFrame = (plan: StarPlan, { shop }: Order): GlueFrame | undefined => {
  const room = cuttingRoom(shop)
  const cut = removedWidth(shop.cutter)
  for (let pieces = 1; pieces <= plan.star.points; pieces++) {
    const frame = glueFrame(plan, shop.jigStock, pieces)
    const fits = frame.parts.every(({ outer }) => {
      const { across, height } = levelledSize(outer)
      return !room || goesInto(across + cut, height + cut, room)
    })
    if (fits) return frame
  }
  return undefined
}

/** The frame for a star it can be made for, as its refusal has found out. */
export const frameOf = (plan: StarPlan, order: Order): GlueFrame => {
  const frame = fittingFrame(plan, order)
  if (!frame) throw new RangeError('no part of the frame goes onto the panel')
  return frame
}

export const frameRefusal = (plan: StarPlan, order: Order): Problem | undefined => {
  const { shop, lengths } = order
  const at = { place: 'jigs', given: 'glue-up-frame' }
  const { slotRoom } = armRoom(plan.star, shop.jigStock)
  if (slotRoom < LEAST_SLOT) {
    return {
      ...at,
      advice: `Beside the arms of "${plan.order.name}" there is no room for wedges: ${showLength(mm(Math.max(0, slotRoom)), lengths)} of each tip edge is free, and they need ${showLength(mm(LEAST_SLOT), lengths)}. Make the star larger, cut the frame from thinner panel, give less clearance, or leave it out and glue with tape.`,
    }
  }
  if (fittingFrame(plan, order)) return undefined
  const smallest = glueFrame(plan, shop.jigStock, plan.star.points).parts[0]
  const room = cuttingRoom(shop)
  return {
    ...at,
    advice: `Even in ${plan.star.points} parts, each ${smallest ? sizeText(levelledSize(smallest.outer), lengths) : ''}, the frame of "${plan.order.name}" does not go onto ${room ? sizeText({ across: room.length, height: room.width }, lengths) : 'the panel'}. Give a larger panel or bed, or leave it out and glue with tape.`,
  }
}

export const frameWords = (plan: StarPlan, order: Order): JigWords => {
  const { pieces, parts, closes } = frameOf(plan, order)
  return {
    title: 'Glue-up frame',
    onParts: {
      ...Object.fromEntries(
        parts.map(({ word }) => [
          word,
          [
            { text: pieces === 1 ? 'GLUE-UP FRAME' : `GLUE-UP FRAME, ${word.toUpperCase()}` },
            { text: plan.order.name },
          ],
        ]),
      ),
      wedge: [{ text: 'WEDGE' }],
    },
    steps: [
      ...(pieces === 1
        ? ['Screw the frame to a flat board, foil or waxed paper under it.']
        : [
            `Press the ${pieces} parts together by their keys on a flat board, foil or waxed paper under them, and screw them down.`,
          ]),
      'Wax its inner edges and the wedges. Lay the arms in without glue, face side down, and push a wedge into each slot, its thin end towards the valley: by hand, a little at a time, evenly round the star, until every joint is closed.',
      `A wedge moves its edge by up to ${showSmall(mm(closes), order.lengths)} either way. Where one slips through or does not go in, the arms are off: dry-fit them first.`,
      'Then with glue. Lay a board and a weight on the arms before you push, so that none rises. Glue finds room at tips and valleys: wipe it off there. Leave it as long as the glue wants.',
    ],
    hardware: [
      `${plan.star.points} wood screws ${screwsIntoFace(order.shop.jigStock, order.lengths)}, for a board as thick as the frame, holes ${showSize(order.shop.jigStock.screw, order.lengths)}`,
      'a flat board, foil or waxed paper, a weight',
    ],
  }
}
