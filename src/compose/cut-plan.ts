import { blankIsArm } from '../geometry/kite.js'
import type { Order } from '../order/order.js'
import { closureGap } from '../plan/closure.js'
import type { MarkPair } from '../plan/mark-pairs.js'
import type { Plan, PlannedCut, StarPlan } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { degrees, mm } from '../units/convert.js'
import { fixed, showAngle, showLength, showSetting } from '../units/show.js'
import { SAME_ANGLE, SHOP } from '../units/tolerance.js'
import { SAW_CAUTION } from './cautions.js'
import { wrapColumns } from './wrap-columns.js'

/** Columns of the card: what a terminal and a printed page both carry. */
const WIDTH = 84
const HEADING = 11

/** The cut plan as a card to read at the bench: plain text, one block a star. */
export const cutPlan = ({ order, stars }: Plan): string =>
  [
    order.title,
    '='.repeat(order.title.length),
    'Miter angles are read from a square crosscut.',
    '',
    ...stars.flatMap((plan) => [...starCard(plan, order), '']),
    ...listing('Changed by flags', order.overridden),
    ...listing('Taken for granted, as the order does not say', order.assumed),
    ...wrapColumns(`Safety: ${SAW_CAUTION}`, WIDTH, 0),
    '',
  ].join('\n')

const listing = (heading: string, lines: readonly string[]): string[] =>
  lines.length === 0
    ? []
    : [`${heading}:`, ...lines.flatMap((text) => wrapColumns(`- ${text}`, WIDTH, 2)), '']

const starCard = (plan: StarPlan, order: Order): string[] => {
  const { star } = plan
  const count = `${plan.order.quantity} ${plan.order.quantity === 1 ? 'star' : 'stars'}`
  const title = `${plan.order.name}: ${count}, ${star.points} points, ${plan.arms} arms`
  return [
    title,
    '-'.repeat(title.length),
    ...row(
      'Angles',
      `tip ${showAngle(star.tipAngle)}, sides ${showAngle(star.sideAngle)}, centre ${showAngle(star.centreAngle)}`,
    ),
    ...sizeRows(plan, order),
    ...boardRows(plan, order),
    ...backingRows(plan, order),
    ...sawRows(plan, order),
    ...plan.warnings.flatMap(({ text }) => wrapColumns(`  ! ${text}`, WIDTH, 4)),
  ]
}

const row = (heading: string, text: string): string[] =>
  wrapColumns(`  ${heading.padEnd(HEADING)}${text}`, WIDTH, HEADING + 2)

const sizeRows = ({ star, kite, order: { chamfer } }: StarPlan, { lengths }: Order): string[] => {
  const show = (length: Mm) => showLength(length, lengths)
  return [
    ...row(
      'Star',
      `${show(star.across)} across, ${show(star.height)} high with one tip up; centre to tip ${show(star.radius)}, centre to valley ${show(star.valleyRadius)}`,
    ),
    ...row('Outline', valleyLineText({ star }, show)),
    ...row(
      'Arm',
      `tip edge ${show(star.tipEdge)}, joint edge ${show(star.jointEdge)}, valley to valley ${show(kite.width)}${chamfer === undefined ? '' : `, chamfer ${show(chamfer)}`}`,
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
  const { star, blank, boardUse, arms } = plan
  const show = (length: Mm) => showLength(length, lengths)
  const length =
    plan.order.quantity === 1 ? '' : `, ${show(plan.boardForQuantity)} for all ${plan.order.quantity}`
  return [
    ...row(
      'Board',
      `${show(star.armStrip)} wide; ${show(plan.boardPerStar)} of it for one star${length}; ${fixed(plan.yield * 100, 0)} % of that becomes star`,
    ),
    ...row(
      'Blank',
      `${showSetting(blank.side, lengths)} along the edge from cut to cut; ${showSetting(blank.pitch, lengths)} of board each with the blade's ${show(shop.saw.kerf)}; ${show(blank.firstTrim)} lost once a board to the slant`,
    ),
    ...(boardUse ? row('Buy', boardUseText(boardUse, arms, show)) : []),
  ]
}

const boardUseText = (
  { board, blanksPerBoard, boardsNeeded, rippedOff }: NonNullable<StarPlan['boardUse']>,
  arms: number,
  show: (length: Mm) => string,
): string => {
  const price = board.price === undefined ? '' : `, ${fixed(board.price * boardsNeeded, 2)} in all`
  const boards = boardsNeeded === 1 ? '1 board' : `${boardsNeeded} boards`
  const rip = rippedOff < SHOP ? '' : `, ripped to width (${show(rippedOff)} comes off)`
  return `${arms} arms: ${boards} of ${show(board.width)} × ${show(board.length)}, ${blanksPerBoard} arms a board${price}${rip}`
}

const backingRows = ({ backing, star }: StarPlan, { lengths }: Order): string[] => {
  const show = (length: Mm) => showLength(length, lengths)
  return backing
    ? row(
        'Backing',
        `${backing.shape}, ${show(backing.inset)} inside the star: ${show(backing.across)} × ${show(backing.height)}; covers ${show(backing.covers)} of each ${show(star.jointEdge)} joint`,
      )
    : []
}

const sawRows = (plan: StarPlan, order: Order): string[] => {
  const { firstCut, jointCut, star, stop } = plan
  const table = [
    ['', 'cut', 'set the saw to', 'nearest mark', 'the mark leaves open'],
    ['1', 'first cut', exactText(firstCut), showAngle(firstCut.mark), leftText(firstCut, plan, order)],
    ['2, 3', 'joint cuts', exactText(jointCut), showAngle(jointCut.mark), leftText(jointCut, plan, order)],
  ]
  const widths = [4, 10, 0, 12, 0].map((least, column) =>
    Math.max(least, ...table.map((cells) => (cells[column] ?? '').length)),
  )
  return [
    '',
    ...table.map((cells) =>
      `    ${cells.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ')}`.trimEnd(),
    ),
    '',
    ...row(
      'Stop',
      `${showSetting(stop, order.lengths)} from the tip to the blade, along the fence, for cuts 2 and 3; turn the piece over between them`,
    ),
    ...(blankIsArm(star)
      ? row(
          'Rhombus',
          `the blank is already the arm: with the board exactly ${showLength(star.armStrip, order.lengths)} wide there are no cuts 2 and 3`,
        )
      : []),
    ...row(
      'Accuracy',
      `a tenth of a degree in every joint cut is ${showLength(plan.gapPerTenth, order.lengths)} at the last joint`,
    ),
    ...pairRows(plan.markPairs, star.tipAngle, order, plan),
  ]
}

const exactText = ({ reading, wedge, miter }: PlannedCut): string => {
  const saw = wedge ? `${showAngle(reading)} + wedge ${showAngle(wedge.angle)}` : showAngle(reading)
  return miter < 0 ? `${saw}, other way` : saw
}

const leftText = ({ closureAtMark }: PlannedCut, { star }: StarPlan, { lengths }: Order): string => {
  if (closureAtMark === 0) return 'nothing'
  const gap = showLength(closureGap(star.jointEdge, closureAtMark), lengths)
  return `${showAngle(degrees(Math.abs(closureAtMark)))}: ${gap} open at the ${closureAtMark > 0 ? 'valley' : 'centre'}`
}

/** Stars close by whose settings can be set without guessing between marks; only when this star's own cannot. */
const pairRows = (
  pairs: readonly MarkPair[],
  tipAngle: number,
  { lengths }: Order,
  { firstCut, jointCut, star }: StarPlan,
): string[] => {
  if (Math.abs(firstCut.closureAtMark) + Math.abs(jointCut.closureAtMark) < SAME_ANGLE || pairs.length === 0)
    return []
  const texts = pairs
    .filter((pair) => Math.abs(pair.tipAngle - tipAngle) > SAME_ANGLE || pair.closure !== 0)
    .map(({ tipAngle: tip, first, joint, closure }) => {
      const left =
        closure === 0 ? '' : `, leaving ${showLength(closureGap(star.jointEdge, closure), lengths)}`
      return `tip ${showAngle(tip)} with ${showAngle(degrees(Math.abs(first)))} and ${showAngle(joint)}${left}`
    })
  const closes = pairs[0]?.closure === 0 ? 'that close' : 'that come nearest'
  return row('On marks', `settings ${closes}: ${texts.join('; ')}`)
}
