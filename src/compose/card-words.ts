import { blankIsArm } from '../geometry/kite.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { Warning } from '../plan/warnings.js'
import { backingFloats } from '../season/advice.js'
import { starSeason } from '../season/season.js'
import type { Hours, Mm } from '../units/brand.js'
import {
  type LengthStyle,
  showAngle,
  showAtMost,
  showLength,
  showMovement,
  showSetting,
} from '../units/show.js'
import { showMass, showTime } from '../units/show-measure.js'
import { SHOP } from '../units/tolerance.js'
import { longestFastenerOf } from './backing-words.js'
import { cutSteps } from './cut-steps.js'

/** How many of what is to be made. */
export const countText = ({ order, star, arms }: StarPlan): string =>
  `${order.quantity} ${order.quantity === 1 ? 'star' : 'stars'} of ${star.points} points, ${arms} arms to cut`

/** Which boards, and how many blanks they give. */
export const boardLines = ({ star, boardUse, boardForQuantity }: StarPlan, { lengths }: Order): string[] => {
  const width = `Board ${showSetting(star.armStrip, lengths)} wide`
  if (!boardUse) return [`${width}, ${showLength(boardForQuantity, lengths)} of it in all`]
  const { board, blanksPerBoard, rippedOff } = boardUse
  const show = (length: Mm) => showLength(length, lengths)
  return [
    `${width}${rippedOff < SHOP ? '' : `, ripped from ${show(board.width)}`}`,
    `${blanksPerBoard} ${blanksPerBoard === 1 ? 'blank' : 'blanks'} from a board of ${show(board.length)}`,
  ]
}

/** What to measure on the first arm before the stop is trusted for the batch. */
export const firstPiece = ({ star, kite }: StarPlan, { lengths }: Order): string[] => [
  `Tip ${showAngle(star.tipAngle)}, sides ${showAngle(star.sideAngle)}`,
  `Centre ${showAngle(star.centreAngle)}`,
  `Tip edges ${showSetting(star.tipEdge, lengths)}`,
  `Across valleys ${showLength(kite.width, lengths)}`,
  'Edges on their pattern lines',
]

export const accuracyText = ({ star, gapPerTenth }: StarPlan, { lengths }: Order): string =>
  `0.1° in every ${blankIsArm(star) ? 'cut' : 'joint cut'} is ${showMovement(gapPerTenth, lengths)} at the last joint.`

/** From the cut arms to the wall. Common practice, no published source; times are those of the products' labels. */
export const workingOrder = (plan: StarPlan, { lengths, shop, climate }: Order): string[] => {
  const { star, order, backing, weight } = plan
  const show = (length: Mm) => showLength(length, lengths)
  const { glue, stain, finish } = shop
  const floats = backing !== undefined && backingFloats(starSeason(plan, climate))
  return [
    `Dry fit: all ${star.points} arms on the star mat, face sides up, no glue.`,
    ...(stain
      ? [`Sand, stain${when(stain.dries, (time) => ` (dries in ${time})`)}; joint faces stay bare.`]
      : []),
    `Glue-up: film on the mat, glue on both faces of a joint, clamp or tape until it closes, no harder${when(glue?.clamp, (time) => ` (${time})`)}. Wipe off wet glue.`,
    `When the glue has cured (${glue?.cures === undefined ? 'see its label' : showTime(glue.cures)}): ${shapedText(order.chamfer === undefined ? undefined : show(order.chamfer), stain !== undefined)}.`,
    ...(backing
      ? [
          `Backing: ${backing.shape}, ${show(backing.across)} × ${show(backing.height)}, ${floats ? 'glued in the middle only' : 'glued on'}, centred, UP to the top tip; ${fastenerText(plan, lengths)}.${hollowText(plan)}`,
        ]
      : []),
    `Finish${finish ? `, ${finish.coats} ${finish.coats === 1 ? 'coat' : 'coats'}` : ''}${when(finish?.dries, (time) => ` ${time} apart`)}: both faces and all edges alike${backing ? ', the backing too' : ''}.`,
    `Hanging${when(finish?.cures, (time) => ` after ${time}`)}: ${hungBy(plan, lengths)}; ${
      weight?.whole ? `hanger for ${showMass(weight.whole.hanger, lengths.units)}; ` : ''
    }pull by hand first.`,
  ]
}

/** A chamfer cut after staining shows bright wood; what is stained is not sanded any more. */
const shapedText = (chamfer: string | undefined, stained: boolean): string => {
  if (stained)
    return chamfer === undefined ? 'break the edges' : `chamfer ${chamfer}, bright through the stain`
  return chamfer === undefined ? 'sand' : `chamfer ${chamfer}, sand`
}

/** The label's time in its words; nothing when the order does not tell it. */
const when = (time: Hours | undefined, words: (time: string) => string): string =>
  time === undefined ? '' : words(showTime(time))

const fastenerText = (plan: StarPlan, lengths: LengthStyle): string => {
  const fixing = plan.backing?.fixing
  const longest = longestFastenerOf(plan)
  return `${fixing ? `${fixing.kind} on the marks` : 'nails or screws'} ${
    longest === undefined
      ? 'shorter than arm and backing together'
      : `up to ${showAtMost(longest, lengths)} long`
  }`
}

/** What the arm behind an opening needs before the plate covers it. */
const hollowText = ({ backing }: StarPlan): string => {
  switch (backing?.hanging?.kind) {
    case 'cord':
      return ' First hollow the top arm behind its holes, for the knots.'
    case 'keyhole':
      return " First hollow the top arm behind its keyhole, for the screw's head."
    default:
      return ''
  }
}

const hungBy = (plan: StarPlan, lengths: LengthStyle): string => {
  const longest = longestFastenerOf(plan)
  switch (plan.backing?.hanging?.kind) {
    case 'cord':
      return "by a cord through the backing's two holes"
    case 'keyhole':
      return "by the backing's keyhole"
    case 'screws':
      return `by a hanger on the backing's two screw holes${longest === undefined ? '' : `, screws up to ${showAtMost(longest, lengths)} long`}`
    default:
      return 'above the centre, on the top arm'
  }
}

/** Every warning of the plan; or those that bear on the cut itself, with a count of the others. */
export type WarningsTold = 'all' | 'at the saw'

const AT_THE_SAW: ReadonlySet<Warning['code']> = new Set(['short-arm', 'crosscut', 'near-detent'])
/** The steps and the settings say as much, and at the place. */
const TOLD_ELSEWHERE: ReadonlySet<Warning['code']> = new Set(['saw-limit', 'marks-leave-gap'])

/** What of this star's plan must be in sight at the saw, and how a wedge is set. */
export const warningTexts = (plan: StarPlan, order: Order, told: WarningsTold): string[] => {
  const warnings = plan.warnings.filter(({ code }) => !TOLD_ELSEWHERE.has(code))
  const others = warnings.filter(({ code }) => !AT_THE_SAW.has(code))
  const shown = told === 'all' ? warnings : warnings.filter(({ code }) => AT_THE_SAW.has(code))
  const left = told === 'all' ? 0 : others.length
  const wedge = cutSteps(plan, order).filter(({ name }) => name === 'Wedge')
  return [
    ...shown.map(({ text }) => text),
    ...wedge.map(({ name, text }) => `${name}: ${text}`),
    ...(left === 0
      ? []
      : [
          `The cut plan has ${left} more ${left === 1 ? 'warning' : 'warnings'} for this star: read ${left === 1 ? 'it' : 'them'} before the first cut.`,
        ]),
  ].map((text) => `! ${text}`)
}
