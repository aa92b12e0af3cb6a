import { blankIsArm } from '../geometry/kite.js'
import type { Order } from '../order/order.js'
import { closureGap } from '../plan/closure.js'
import type { Plan, StarPlan } from '../plan/plan.js'
import { tooSmallForSaw, type WarningCode } from '../plan/warnings.js'
import type { StockPlan } from '../stock/stock.js'
import type { Mm } from '../units/brand.js'
import { degrees, mm } from '../units/convert.js'
import { fixed, type LengthStyle, showAngle, showLength, showMovement, showSetting } from '../units/show.js'
import { SAME_ANGLE, SHOP } from '../units/tolerance.js'
import { backingText, fixingText, hangingText } from './backing-words.js'
import { boardsToBuy } from './boards-to-buy.js'
import { coatText, glueText, weightText } from './body-words.js'
import { SAW_CAUTION } from './cautions.js'
import { biasText, cutSteps, leftOpenText, readingNotes, settingText } from './cut-steps.js'
import { boardSize } from './stock-words.js'
import { columns, listing, row, WIDTH } from './text-rows.js'
import { planedTo, thicknessesAssumed, thickText } from './thickness-words.js'
import { wrapColumns } from './wrap-columns.js'

/**
 * The cut plan as a card to read at the bench: plain text, one block a star.
 *
 * @param stock the boards for all stars, where they have been chosen
 */
export const cutPlan = ({ order, stars }: Plan, stock?: StockPlan): string =>
  [
    order.title,
    '='.repeat(order.title.length),
    ...readingNotes(order).flatMap((text) => wrapColumns(text, WIDTH, 0)),
    '',
    ...stars.flatMap((plan) => [...starCard(plan, order), '']),
    ...boardsToBuy(order, stock),
    ...listing('Changed by flags', order.overridden),
    ...listing('Taken for granted, as the order does not say', assumptions(order, stars)),
    ...wrapColumns(`Safety: ${SAW_CAUTION}`, WIDTH, 0),
    '',
  ].join('\n')

/** That the blade reaches across is taken for granted only where it is likely; else a warning says so. */
const assumptions = (order: Order, stars: readonly StarPlan[]): string[] => {
  const { assumed, shop, jigs } = order
  const doubtful = stars.some(({ warnings }) => warnings.some(({ code }) => code === 'crosscut'))
  const wedges = (
    [
      ['first-cut-wedge', stars.some(({ firstCut }) => firstCut.wedge)],
      ['joint-cut-wedge', stars.some(({ star, jointCut }) => jointCut.wedge && !blankIsArm(star))],
    ] as const
  ).filter(([name, needed]) => needed && !jigs.names.includes(name))
  return [
    ...assumed,
    ...thicknessesAssumed(order, stars),
    ...(shop.saw.crosscut === undefined && !doubtful
      ? ['the blade reaches across the board (crosscut)']
      : []),
    ...wedges.map(([name]) => `the wedge is at hand; ${name} under jigs draws one`),
  ]
}

/** `Boathouse: 6 stars, 5 points, 30 arms`. */
export const starTitle = ({ order: { name, quantity }, star, arms }: StarPlan): string =>
  `${name}: ${quantity} ${quantity === 1 ? 'star' : 'stars'}, ${star.points} points, ${arms} arms`

const starCard = (plan: StarPlan, order: Order): string[] => {
  const { star } = plan
  const title = starTitle(plan)
  return [
    title,
    '-'.repeat(title.length),
    ...(plan.order.note === undefined ? [] : row('Note', plan.order.note)),
    ...row(
      'Angles',
      `tip ${showAngle(star.tipAngle)}, sides ${showAngle(star.sideAngle)}, centre ${showAngle(star.centreAngle)}`,
    ),
    ...sizeRows(plan, order),
    ...boardRows(plan, order),
    ...backingRows(plan, order),
    ...bodyRows(plan, order),
    ...sawRows(plan, order),
    ...warningLines(plan, (code) => code !== 'short-arm'),
  ]
}

/** What must be known before the first cut stands before it; the rest at the end. */
const warningLines = ({ warnings }: StarPlan, wanted: (code: WarningCode) => boolean): string[] =>
  warnings.filter(({ code }) => wanted(code)).flatMap(({ text }) => wrapColumns(`  ! ${text}`, WIDTH, 4))

const sizeRows = ({ star, kite, thickness, order: { chamfer } }: StarPlan, { lengths }: Order): string[] => {
  const show = (length: Mm) => showLength(length, lengths)
  return [
    ...row(
      'Star',
      `${show(star.across)} across, ${show(star.height)} high with one tip up; centre to tip ${show(star.radius)}, centre to valley ${show(star.valleyRadius)}`,
    ),
    ...row('Outline', valleyLineText({ star }, show)),
    ...row(
      'Arm',
      `tip edge ${show(star.tipEdge)}, joint edge ${show(star.jointEdge)}, valley to valley ${show(kite.width)}${thickText(thickness, lengths)}${chamfer === undefined ? '' : `, chamfer ${show(chamfer)} after all cuts`}`,
    ),
  ]
}

const valleyLineText = ({ star }: Pick<StarPlan, 'star'>, show: (length: Mm) => string): string => {
  const { apart, dip } = star.valleyLine
  const straight = `between tips 1 and ${1 + apart}`
  if (Math.abs(dip) < SHOP) return `runs straight from tip to tip, as ${straight}`
  const side = dip > 0 ? 'outside' : 'inside'
  return `valleys lie ${show(mm(Math.abs(dip)))} ${side} the straight line ${straight}`
}

const boardRows = (plan: StarPlan, { lengths, shop }: Order): string[] => {
  const { star, blank, boardUse } = plan
  const show = (length: Mm) => showLength(length, lengths)
  const length =
    plan.order.quantity === 1 ? '' : `, ${show(plan.boardForQuantity)} for all ${plan.order.quantity}`
  return [
    ...row(
      'Board',
      `${showSetting(star.armStrip, lengths)} wide; ${show(plan.boardPerStar)} of it for one star${length}; ${fixed(plan.yield * 100, 0)} % of that becomes star`,
    ),
    ...row(
      'Blank',
      `${showSetting(blank.side, lengths)} along the edge; ${showSetting(blank.pitch, lengths)} of board each, the blade's slot included; ${show(blank.firstTrim)} lost once a board to the slant${shop.endAllowance > 0 ? ' and the bad end' : ''}`,
    ),
    ...(boardUse ? row('One board', boardUseText(boardUse, plan, lengths)) : []),
  ]
}

const boardUseText = (
  { board, blanksPerBoard, rippedOff }: NonNullable<StarPlan['boardUse']>,
  plan: StarPlan,
  lengths: LengthStyle,
): string => {
  const planed = planedTo(board, plan, lengths)
  const price = board.price === undefined ? '' : `, price ${fixed(board.price, 2)}`
  const rip = rippedOff < SHOP ? '' : `, ripped to width (${showLength(rippedOff, lengths)} comes off)`
  return `of ${boardSize(board, lengths)}${price}, gives ${blanksPerBoard} ${blanksPerBoard === 1 ? 'arm' : 'arms'}${rip}${planed === undefined ? '' : `, ${planed}`}`
}

const backingRows = (plan: StarPlan, { lengths }: Order): string[] =>
  (
    [
      ['Backing', backingText(plan, lengths)],
      ['Hanging', hangingText(plan, lengths)],
      ['Fixing', fixingText(plan, lengths)],
    ] as const
  ).flatMap(([heading, text]) => (text === undefined ? [] : row(heading, text)))

/** What is to be glued, coated and hung, as far as it is known. */
const bodyRows = (plan: StarPlan, order: Order): string[] =>
  (
    [
      ['Glue', glueText(plan, order)],
      ['Coat', coatText(plan, order)],
      ['Weight', weightText(plan, order)],
    ] as const
  ).flatMap(([heading, text]) => (text === undefined ? [] : row(heading, text)))

const sawRows = (plan: StarPlan, order: Order): string[] => {
  const { star, firstCut, jointCut } = plan
  const steps = cutSteps(plan, order).flatMap(({ name, text }) => row(name, text))
  if (tooSmallForSaw(plan)) return ['', ...warningLines(plan, (code) => code === 'short-arm'), ...steps]
  const table = [
    ['', 'cut', 'set the saw to', 'nearest mark', 'the mark leaves open'],
    ['1', 'first cut', settingText(firstCut), showAngle(firstCut.mark), leftOpenText(firstCut, plan, order)],
    ...(blankIsArm(star)
      ? []
      : [
          [
            '2, 3',
            'joint cuts',
            settingText(jointCut),
            showAngle(jointCut.mark),
            leftOpenText(jointCut, plan, order),
          ],
        ]),
  ]
  return [
    '',
    ...columns(table, [4, 10, 0, 12, 0]),
    '',
    ...biasRows(plan, order),
    ...warningLines(plan, (code) => code === 'short-arm'),
    ...steps,
    ...row(
      'Accuracy',
      `a tenth of a degree in every ${blankIsArm(star) ? 'cut' : 'joint cut'} is ${showMovement(plan.gapPerTenth, order.lengths)} at the last joint`,
    ),
    ...pairRows(plan, order),
  ]
}

/** The joint cuts' bias, or of a rhombus arm the first cut's. */
const biasRows = ({ star, firstCut, jointCut }: StarPlan, order: Order): string[] => {
  const text = biasText(blankIsArm(star) ? firstCut : jointCut, order)
  return text === undefined ? [] : row('Bias', text)
}

/** Stars close by whose settings fall on marks and leave less open; only when this star's own do not. */
const pairRows = ({ markPairs, firstCut, jointCut, star }: StarPlan, { lengths }: Order): string[] => {
  const own = Math.abs(firstCut.closureAtMark + jointCut.closureAtMark)
  const better = markPairs.filter(({ closure }) => Math.abs(closure) < own - SAME_ANGLE)
  if (better.length === 0) return []
  const texts = better.map(({ tipAngle, first, joint, closure }) => {
    const left = closure === 0 ? '' : ` (leaves ${showLength(closureGap(star.jointEdge, closure), lengths)})`
    return `tip ${showAngle(tipAngle)} with ${showAngle(degrees(Math.abs(first)))} and ${showAngle(joint)}${left}`
  })
  return row('On marks', `nearby stars that can be set on marks: ${texts.join('; ')}`)
}
