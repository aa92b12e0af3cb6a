import { blankIsArm } from '../geometry/kite.js'
import type { Shop } from '../order/order.js'
import { BOARD_WIDTHS } from '../tables/lumber.js'
import type { Mm } from '../units/brand.js'
import { degrees, inches, mm, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { type LengthStyle, showAngle, showLength } from '../units/show.js'
import { SAME_ANGLE, SHOP } from '../units/tolerance.js'
import { backingWarnings } from './backing-warnings.js'
import { isWideEnough, ofThickness } from './boards.js'
import { closureGap, closureOfFirstCut, closureOfJointCut, closureOfRhombus } from './closure.js'
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
  | 'unusual-size'
  | 'fragile-tip'
  | 'marks-leave-gap'
  | 'near-detent'
  | 'panel-too-small'
  | 'backing-covers-little'
  | 'beyond-bed'
  | 'tabs-missing'

export type Draft = Omit<StarPlan, 'warnings'>
export type Show = (length: Mm) => string

/** Hands stay this far from either side of the blade: AS/NZS 62841.3.9:2020 (IEC 62841-3-9), safety warnings. */
export const HAND_DISTANCE = mm(100)
export const HAND_DISTANCE_TEXT = '100 mm (4 in)'
/** Below this nothing can be clamped beside the blade. Common practice, no published source. */
const TINY = mm(50)
/** What a large sliding miter saw cuts across. Common practice, no published source. */
const USUAL_REACH = mm(300)
/** Above this the board hardly rests on the table. Common practice, no published source. */
const STEEP_WEDGE = degrees(20)
/** A hand's breadth, and a barn's gable. */
const SMALLEST_USUAL = mm(60)
const LARGEST_USUAL = mm(3000)
/** A hand's width on the piece beyond that distance. Common practice, no published source. */
const HAND_WIDTH = mm(80)
/** A table that is let go so near a detent slips into it. Common practice, no published source. */
const DETENT_PULL = degrees(1)
/** Slimmer tips break when dropped or clamped. Common practice, no published source. */
const FRAGILE_TIP = degrees(30)

export const warningsFor = (plan: Draft, shop: Shop, lengths: LengthStyle): Warning[] => {
  const show: Show = (length) => showLength(length, lengths)
  return [
    ...sawLimit(plan, shop),
    ...crosscut(plan, shop, show),
    ...boards(plan, shop, show),
    ...nominalWidth(plan, lengths, show),
    ...shortArm(plan, show, lengths.units === 'in' ? inches(4) : HAND_DISTANCE),
    ...unusualSize(plan, lengths, show),
    ...fragileTip(plan),
    ...marks(plan, shop, show),
    ...nearDetents(plan, shop, show),
    ...backingWarnings(plan, shop, lengths),
  ]
}

const sawLimit = ({ firstCut, jointCut, star, tipAngles }: Draft, { saw }: Shop): Warning[] => {
  const beyond = [
    ...(firstCut.withinLimit ? [] : [wedgeWay('first cut', firstCut)]),
    ...(jointCut.withinLimit || blankIsArm(star) ? [] : [wedgeWay('joint cuts', jointCut)]),
  ]
  if (beyond.length === 0) return []
  const within =
    tipAngles === undefined
      ? `No tip angle of a ${star.points}-point star is within it.`
      : star.tipAngle < tipAngles.least
        ? `Within it the slenderest star has a tip angle of ${showAngle(tipAngles.least)}.`
        : `Within it the bluntest star has a tip angle of ${showAngle(tipAngles.most)}.`
  const steep = [firstCut, jointCut].some(({ wedge }) => (wedge?.angle ?? 0) > STEEP_WEDGE)
  const advice = steep
    ? ` So steep a wedge leaves the board little to lie on: rather choose the star within the limit.`
    : ''
  return [
    {
      code: 'saw-limit',
      text: `The saw stops at ${showAngle(saw.limit)}. ${within} Or: ${beyond.join('; ')}.${advice}`,
    },
  ]
}

const wedgeWay = (cut: string, { miter, wedge, reading }: PlannedCut): string =>
  `${cut} of ${showAngle(degrees(Math.abs(miter)))} with a fence wedge of ${showAngle(wedge?.angle ?? degrees(0))} and the saw at ${showAngle(reading)}`

const crosscut = ({ blank }: Draft, { saw }: Shop, show: Show): Warning[] => {
  const through = `The longest cut goes through ${show(blank.longestCut)} of wood`
  const wayOut =
    'Make the star smaller, choose another tip angle, or cut these with a track saw or a hand saw.'
  if (saw.crosscut === undefined) {
    return blank.longestCut <= USUAL_REACH
      ? []
      : [
          {
            code: 'crosscut',
            text: `${through}; few miter saws reach ${show(USUAL_REACH)}. ${wayOut} Name your saw's reach as crosscut.`,
          },
        ]
  }
  return blank.longestCut <= saw.crosscut + SHOP
    ? []
    : [{ code: 'crosscut', text: `${through}; the saw reaches ${show(saw.crosscut)}. ${wayOut}` }]
}

const boards = ({ star, order, blank, boardUse }: Draft, shop: Shop, show: Show): Warning[] => {
  if (shop.boards.length === 0) return []
  if (!boardUse) return [{ code: 'board-too-narrow', text: noBoardText({ star, order, blank }, shop, show) }]
  return []
}

/** Is it the width, the thickness or the length that no board has? */
export const noBoardText = (
  { star, order, blank }: Pick<Draft, 'star' | 'order' | 'blank'>,
  shop: Shop,
  show: Show,
): string => {
  const wide = shop.boards.filter((board) => isWideEnough(board, star.armStrip))
  const widest = mm(Math.max(...shop.boards.map(({ width }) => width)))
  if (wide.length === 0) {
    const glue = star.armStrip > USUAL_REACH ? 'Glue boards up to that width' : 'Buy a wider one'
    const largest = show(mm((star.across * widest) / star.armStrip))
    return `No board is ${show(star.armStrip)} wide, as the arms need; the widest is ${show(widest)}. ${glue}, or size the star with board-width: out of the widest board it comes ${largest} across.`
  }
  if (order.thickness !== undefined && ofThickness(wide, order.thickness).length === 0) {
    return `The boards that are wide enough for the arms (${show(star.armStrip)}) are thinner than ${show(order.thickness)}.`
  }
  return `No board has sound wood long enough for one arm: it takes ${show(mm(blank.firstTrim + blank.pitch))} of length.`
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

/** The hand holds the arm's side of the joint cut, at the tip or at the far valley, whichever is further away. */
const besideBlade = ({ star, jointCut }: Pick<Draft, 'star' | 'jointCut'>): Mm =>
  mm(
    Math.max(
      star.tipEdge * maths.cos(toRadians(jointCut.miter)),
      star.jointEdge * maths.sin(toRadians(star.centreAngle)),
    ),
  )

/** Is too little of an arm left beside the blade to clamp it? */
export const tooSmallForSaw = (plan: Pick<Draft, 'star' | 'jointCut'>): boolean => besideBlade(plan) < TINY

/** `distance` as the shop's own rule has it: 4 in are a little more than 100 mm. */
const shortArm = (plan: Draft, show: Show, distance: Mm): Warning[] => {
  const { star } = plan
  const beside = besideBlade(plan)
  // A rhombus arm is done with the first cut, and there the hand holds the board.
  if (blankIsArm(star) && beside >= TINY) return []
  if (beside >= distance + HAND_WIDTH) return []
  const left = beside > distance ? `only ${show(mm(beside - distance))}` : 'nothing'
  const text =
    beside < TINY
      ? `The arm is only ${show(beside)} long beside the blade: too small for a miter saw. Use a fine hand saw and a miter box.`
      : `At the joint cuts ${show(beside)} of wood lies beside the blade, and hands stay ${HAND_DISTANCE_TEXT} away, which leaves ${left} to hold. Clamp the piece or use a jig with a hold-down.`
  return [{ code: 'short-arm', text }]
}

/** A star that fits a hand or a barn is rarer than a unit mixed up. */
const unusualSize = ({ star }: Draft, { units }: LengthStyle, show: Show): Warning[] =>
  star.across >= SMALLEST_USUAL && star.across <= LARGEST_USUAL
    ? []
    : [
        {
          code: 'unusual-size',
          text: `The star comes out ${show(star.across)} across. If that is not meant, look at the units: bare numbers are read as ${units}.`,
        },
      ]

const fragileTip = ({ star }: Draft): Warning[] =>
  star.tipAngle < FRAGILE_TIP
    ? [
        {
          code: 'fragile-tip',
          text: `Tips of ${showAngle(star.tipAngle)} break easily. Choose straight grain, and blunt or back them.`,
        },
      ]
    : []

const marks = ({ firstCut, jointCut, star }: Draft, shop: Shop, show: Show): Warning[] => {
  const closure = degrees(firstCut.closureAtMark + jointCut.closureAtMark)
  const gap = closureGap(star.jointEdge, closure)
  return gap > shop.acceptedGap
    ? [
        {
          code: 'marks-leave-gap',
          text: `With both cuts on the nearest marks the last joint gapes ${show(gap)} at the ${closure > 0 ? 'valley' : 'centre'}. Set the angles between the marks, or take a tip angle that falls on them.`,
        },
      ]
    : []
}

/** A setting beside a detent: the table clicks into it, and the ring does not close. */
const nearDetents = ({ firstCut, jointCut, star }: Draft, { saw }: Shop, show: Show): Warning[] => {
  const cuts = blankIsArm(star)
    ? [{ whose: "first cut's", cut: firstCut, closureOf: closureOfRhombus }]
    : [
        { whose: "first cut's", cut: firstCut, closureOf: closureOfFirstCut },
        { whose: "joint cuts'", cut: jointCut, closureOf: closureOfJointCut },
      ]
  return cuts.flatMap(({ whose, cut: { reading }, closureOf }) => {
    const [nearest] = saw.detents
      .filter((detent) => detent <= saw.limit + SAME_ANGLE)
      .map((detent) => ({ detent, off: degrees(Math.abs(detent - reading)) }))
      .sort((a, b) => a.off - b.off)
    if (!nearest || nearest.off < SAME_ANGLE || nearest.off > DETENT_PULL) return []
    const { detent, off } = nearest
    const gap = closureGap(star.jointEdge, closureOf(star.points, reading, detent))
    return [
      {
        code: 'near-detent' as const,
        text: `The ${whose} ${showAngle(reading)} is ${showAngle(off)} beside the detent at ${showAngle(detent)}: hold the table until it is locked, or it clicks in and opens the last joint by ${show(gap)}.`,
      },
    ]
  })
}
