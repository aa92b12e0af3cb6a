import type { Panel, Shop } from '../order/order.js'
import { BOARD_WIDTHS } from '../tables/lumber.js'
import type { Mm } from '../units/brand.js'
import { degrees, inches, mm, toRadians } from '../units/convert.js'
import { type LengthStyle, showAngle, showLength } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'
import { boardFits } from './boards.js'
import { closureGap } from './closure.js'
import type { PlannedCut, StarPlan } from './plan.js'

/** Something a maker must know before cutting. The code is for programs and never changes. */
export interface Warning {
  readonly code: WarningCode
  readonly text: string
}

export type WarningCode =
  | 'saw-limit'
  | 'crosscut'
  | 'board-too-narrow'
  | 'boards-too-few'
  | 'nominal-width'
  | 'short-arm'
  | 'fragile-tip'
  | 'marks-leave-gap'
  | 'panel-too-small'
  | 'backing-covers-little'

type Draft = Omit<StarPlan, 'warnings'>
type Show = (length: Mm) => string

/** Hands stay this far from either side of the blade: AS/NZS 62841.3.9:2020 (IEC 62841-3-9), safety warnings. */
const HAND_DISTANCE = mm(100)
const HAND_DISTANCE_TEXT = '100 mm (4 in)'
/** A hand's width on the piece beyond that distance. Common practice, no published source. */
const HAND_WIDTH = mm(80)
/** Slimmer tips break when dropped or clamped. Common practice, no published source. */
const FRAGILE_TIP = degrees(30)
/** A gap that filler and clamps do not hide. Common practice, no published source. */
const VISIBLE_GAP = mm(0.5)

export const warningsFor = (plan: Draft, shop: Shop, lengths: LengthStyle): Warning[] => {
  const show: Show = (length) => showLength(length, lengths)
  return [
    ...sawLimit(plan, shop),
    ...crosscut(plan, shop, show),
    ...boards(plan, shop, show),
    ...nominalWidth(plan, lengths, show),
    ...shortArm(plan, show),
    ...fragileTip(plan),
    ...marks(plan, show),
    ...backing(plan, shop, show),
  ]
}

const sawLimit = ({ firstCut, jointCut, star, tipAngles }: Draft, { saw }: Shop): Warning[] => {
  const beyond = [
    ...(firstCut.withinLimit ? [] : [wedgeWay('first cut', firstCut)]),
    ...(jointCut.withinLimit ? [] : [wedgeWay('joint cuts', jointCut)]),
  ]
  if (beyond.length === 0) return []
  const within =
    tipAngles === undefined
      ? `No tip angle of a ${star.points}-point star is within it.`
      : star.tipAngle < tipAngles.least
        ? `Within it the slenderest star has a tip angle of ${showAngle(tipAngles.least)}.`
        : `Within it the bluntest star has a tip angle of ${showAngle(tipAngles.most)}.`
  return [
    {
      code: 'saw-limit',
      text: `The saw stops at ${showAngle(saw.limit)}. ${within} Or: ${beyond.join('; ')}.`,
    },
  ]
}

const wedgeWay = (cut: string, { miter, wedge, reading }: PlannedCut): string =>
  `${cut} of ${showAngle(degrees(Math.abs(miter)))} with a fence wedge of ${showAngle(wedge?.angle ?? degrees(0))} and the saw at ${showAngle(reading)}`

const crosscut = ({ blank }: Draft, { saw }: Shop, show: Show): Warning[] =>
  saw.crosscut === undefined || blank.longestCut <= saw.crosscut + SHOP
    ? []
    : [
        {
          code: 'crosscut',
          text: `The longest cut goes through ${show(blank.longestCut)} of wood; the saw reaches ${show(saw.crosscut)}. Make the star smaller or choose another tip angle.`,
        },
      ]

const boards = ({ star, order, blank, arms, boardUse }: Draft, shop: Shop, show: Show): Warning[] => {
  if (shop.boards.length === 0) return []
  if (!boardUse) {
    const wide = shop.boards.some((board) => boardFits(board, star.armStrip, order.thickness))
    const widest = mm(Math.max(...shop.boards.map(({ width }) => width)))
    return [
      {
        code: 'board-too-narrow',
        text: wide
          ? `No board is long enough for one arm: it takes ${show(mm(blank.firstTrim + blank.pitch))} of length.`
          : `No board is ${show(star.armStrip)} wide${order.thickness === undefined ? '' : ` and ${show(order.thickness)} thick`}, as the arms need; the widest is ${show(widest)}. Buy a wider one, or size the star with board-width.`,
      },
    ]
  }
  const { board, boardsNeeded } = boardUse
  return board.count !== undefined && boardsNeeded > board.count
    ? [
        {
          code: 'boards-too-few',
          text: `${arms} arms take ${boardsNeeded} boards of ${show(board.width)} × ${show(board.length)}; the order has ${board.count}.`,
        },
      ]
    : []
}

/** A width that is only a name: a board sold as 4 inches measures 3 1/2 (DOC PS 20). */
const nominalWidth = ({ order }: Draft, { units }: LengthStyle, show: Show): Warning[] => {
  const sold = BOARD_WIDTHS.find(({ nominal }) => order.size.length === inches(nominal))
  return units === 'in' && order.size.by === 'board-width' && sold
    ? [
        {
          code: 'nominal-width',
          text: `A board sold as ${sold.nominal} inches wide measures ${show(sold.dry)} when dressed and dry (PS 20). Measure yours: the plan takes ${show(order.size.length)} as its true width.`,
        },
      ]
    : []
}

/** The hand holds the tip's side of the joint cut, where the piece is longest. */
const shortArm = ({ star, jointCut }: Draft, show: Show): Warning[] => {
  const hold = mm(star.tipEdge * Math.cos(toRadians(jointCut.miter)))
  return hold < HAND_DISTANCE + HAND_WIDTH
    ? [
        {
          code: 'short-arm',
          text: `At the joint cuts only ${show(hold)} of wood lies beside the blade: too short to hold by hand, which stays ${HAND_DISTANCE_TEXT} away. Clamp it or use a jig with a hold-down.`,
        },
      ]
    : []
}

const fragileTip = ({ star }: Draft): Warning[] =>
  star.tipAngle < FRAGILE_TIP
    ? [
        {
          code: 'fragile-tip',
          text: `Tips of ${showAngle(star.tipAngle)} break easily. Choose straight grain, and blunt or back them.`,
        },
      ]
    : []

const marks = ({ firstCut, jointCut, star }: Draft, show: Show): Warning[] => {
  const closure = degrees(firstCut.closureAtMark + jointCut.closureAtMark)
  const gap = closureGap(star.jointEdge, closure)
  return gap > VISIBLE_GAP
    ? [
        {
          code: 'marks-leave-gap',
          text: `With both cuts on the nearest marks the last joint gapes ${show(gap)} at the ${closure > 0 ? 'valley' : 'centre'}. Set the angles between the marks, or take a tip angle that falls on them.`,
        },
      ]
    : []
}

const backing = ({ backing: plate, star }: Draft, shop: Shop, show: Show): Warning[] => {
  if (!plate) return []
  const warnings: Warning[] = []
  if (shop.panels.length > 0 && !shop.panels.some((panel) => plateFits(plate, panel))) {
    warnings.push({
      code: 'panel-too-small',
      text: `The backing is ${show(plate.across)} × ${show(plate.height)}${plate.thickness === undefined ? '' : ` and ${show(plate.thickness)} thick`}; no panel of the order holds it.`,
    })
  }
  if (plate.covers < star.jointEdge / 2) {
    warnings.push({
      code: 'backing-covers-little',
      text: `The backing covers only ${show(plate.covers)} of each ${show(star.jointEdge)} joint. A smaller inset makes the star stronger.`,
    })
  }
  return warnings
}

const plateFits = (
  plate: { readonly across: Mm; readonly height: Mm; readonly thickness?: Mm },
  panel: Panel,
): boolean => {
  const [length, width] = [panel.length - 2 * panel.edge, panel.width - 2 * panel.edge]
  const fits = (along: number, over: number) => along <= length && over <= width
  const thick =
    plate.thickness === undefined ||
    panel.thickness === undefined ||
    Math.abs(plate.thickness - panel.thickness) <= SHOP
  return thick && (fits(plate.across, plate.height) || fits(plate.height, plate.across))
}
