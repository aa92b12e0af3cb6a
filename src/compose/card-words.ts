import { blankIsArm } from '../geometry/kite.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { showAngle, showLength, showSetting } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'
import { cutSteps } from './cut-steps.js'

/** How many of what is to be made. */
export const countText = ({ order, star, arms }: StarPlan): string =>
  `${order.quantity} ${order.quantity === 1 ? 'star' : 'stars'} of ${star.points} points, ${arms} arms to cut`

/** Which boards, and how many blanks they give. */
export const boardLines = ({ star, boardUse, boardForQuantity }: StarPlan, { lengths }: Order): string[] => {
  const width = `Board ${showSetting(star.armStrip, lengths)} wide`
  if (!boardUse) return [`${width}, ${showLength(boardForQuantity, lengths)} of it in all`]
  const { board, boardsNeeded, blanksPerBoard, rippedOff } = boardUse
  const show = (length: Mm) => showLength(length, lengths)
  return [
    `${width}${rippedOff < SHOP ? '' : `, ripped from ${show(board.width)}`}`,
    `${boardsNeeded} ${boardsNeeded === 1 ? 'board' : 'boards'} of ${show(board.length)}, ${blanksPerBoard} ${blanksPerBoard === 1 ? 'blank' : 'blanks'} a board`,
  ]
}

/** What to measure on the first arm before the stop is trusted for the batch. */
export const firstPiece = ({ star, kite }: StarPlan, { lengths }: Order): string[] => [
  `Tip ${showAngle(star.tipAngle)}, sides ${showAngle(star.sideAngle)}`,
  `Centre ${showAngle(star.centreAngle)}`,
  `Tip edges ${showLength(star.tipEdge, lengths)}`,
  `Across valleys ${showLength(kite.width, lengths)}`,
  'Edges on their pattern lines',
]

export const accuracyText = ({ star, gapPerTenth }: StarPlan, { lengths }: Order): string =>
  `0.1° in every ${blankIsArm(star) ? 'cut' : 'joint cut'} is ${showLength(gapPerTenth, lengths)} at the last joint.`

/** From the cut arms to the wall. Common practice, no published source. */
export const workingOrder = (plan: StarPlan, { lengths }: Order): string[] => {
  const { star, order, backing } = plan
  const show = (length: Mm) => showLength(length, lengths)
  return [
    `Dry fit: all ${star.points} arms on the star mat, face A up, no glue.`,
    'Glue-up: film on the mat, glue on both faces of a joint, clamp or tape until it closes, no harder. Wipe off wet glue.',
    `When the glue has cured (see its label): ${order.chamfer === undefined ? 'sand' : `chamfer ${show(order.chamfer)}, sand`}.`,
    ...(backing
      ? [
          `Backing: ${backing.shape}, ${show(backing.across)} × ${show(backing.height)}, glued on centred, UP to the top tip; nails or screws ${fastenerText(plan, show)}.`,
        ]
      : []),
    `Finish: both faces and all edges alike${backing ? ', the backing too' : ''}.`,
    'Hanging: above the centre, on the top arm; pull by hand first.',
  ]
}

const fastenerText = ({ order, backing }: StarPlan, show: (length: Mm) => string): string =>
  order.thickness === undefined || backing?.thickness === undefined
    ? 'shorter than arm and backing together'
    : `shorter than ${show(mm(order.thickness + backing.thickness))}`

/** What of this star's plan must be in sight at the saw: the piece that is too short to hold, and the wedge. */
export const sawWarnings = (plan: StarPlan, order: Order): string[] => {
  const short = plan.warnings.filter(({ code }) => code === 'short-arm')
  const others = plan.warnings.length - short.length
  return [
    ...short.map(({ text }) => text),
    ...cutSteps(plan, order)
      .filter(({ name }) => name === 'Wedge')
      .map(({ name, text }) => `${name}: ${text}`),
    ...(others === 0
      ? []
      : [
          `The cut plan has ${others} more ${others === 1 ? 'warning' : 'warnings'} for this star: read ${others === 1 ? 'it' : 'them'} before the first cut.`,
        ]),
  ].map((text) => `! ${text}`)
}
