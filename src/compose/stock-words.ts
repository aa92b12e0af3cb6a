import type { Board } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { BlankKind } from '../stock/blank-kinds.js'
import type { CutBoard, CutStrip, LaidBlank } from '../stock/cut-board.js'
import type { StockPlan } from '../stock/stock.js'
import type { Mm } from '../units/brand.js'
import { mm, toInches } from '../units/convert.js'
import { fixed, type LengthStyle, showLength, showSetting, trimmed } from '../units/show.js'
import { SAME_ANGLE, SHOP } from '../units/tolerance.js'
import { METAL_CAUTION } from './cautions.js'
import { settingText } from './cut-steps.js'
import { planedTo, thickText } from './thickness-words.js'

/** `3 boards, 24.80`, or `3 boards, 0.642 m²` where none has a price. */
export const takenText = ({ boards, cost, priced, plan }: StockPlan): string => {
  const count = boards.reduce((sum, { times }) => sum + times, 0)
  const wood = boards.reduce((sum, { board, times }) => sum + times * board.width * board.length, 0)
  const sum = priced ? `price ${fixed(cost, 2)}` : areaText(wood, plan.order.lengths)
  return `${count} ${count === 1 ? 'board' : 'boards'}, ${sum}`
}

/** How the boards are drawn and marked. */
export const drawnText =
  "The boards are drawn as they lie at the saw, seen from where you stand: fence above, first end on the right, where the stop is. Every distance runs from the first end along the fence's edge, and every slant leans away from that end. Hook the tape there once; turn the board half round to mark it, then the end is on your left."

/** On which side of its mark the blade stands. */
export const slotText = 'The blade stands behind the mark (further from the end), at a trim before it.'

/** How good it is: proved, or how far from the bound it can be at most. */
export const verdictText = ({ proved, priced, cost, bound, brief }: StockPlan): string => {
  if (proved) return `No choice of these boards ${priced ? 'costs' : 'takes'} less.`
  const less = priced ? `costs less than ${fixed(bound, 2)}` : `takes less than ${fixed(bound, 3)} m²`
  const off = cost === 0 ? 0 : (100 * (cost - bound)) / cost
  return brief
    ? `The best of a brief search. No choice of these boards ${less}, so at most ${fixed(off, 1)} % can be saved by \`starwright stock\`, which searches longer.`
    : `The best found in the time. No choice of these boards ${less}, so at most ${fixed(off, 1)} % can be saved by searching longer (--seconds).`
}

/** `board 2 of the order, 95.0 mm × 3000.0 mm × 19.0 mm`; `"shed door", ...` where it has a name. */
export const boardText = (
  { board, number }: Pick<CutBoard, 'board' | 'number'>,
  lengths: LengthStyle,
): string =>
  `${board.name === undefined ? `board ${number} of the order` : `"${board.name}"`}, ${boardSize(board, lengths)}`

/** Its thickness last, where it is known. */
export const boardSize = ({ width, length, thickness }: Board, lengths: LengthStyle): string =>
  [width, length, ...(thickness === undefined ? [] : [thickness])]
    .map((each) => showLength(each, lengths))
    .join(' × ')

/** How many boards of each entry of the order are taken, whichever way they are cut. */
export const boardsTaken = (boards: readonly CutBoard[]): Pick<CutBoard, 'board' | 'number' | 'times'>[] =>
  [...new Set(boards.map(({ board }) => board))].map((board) => {
    const alike = boards.filter((each) => each.board === board)
    const times = alike.reduce((sum, each) => sum + each.times, 0)
    return { board, number: alike[0]?.number ?? 0, times }
  })

/** Kinds that do not need all of a strip's width stay on it as it is. */
export const narrowerText = ({ blanks, width }: CutStrip): string | undefined => {
  const letters = [...new Set(blanks.map(({ kind }) => kind))]
    .filter(({ plan }) => plan.star.armStrip < width - SHOP)
    .map(({ letter }) => letter)
  return letters.length === 0
    ? undefined
    : `${letters.join(', ')} ${letters.length === 1 ? 'is' : 'are'} narrower than the strip: leave the strip as it is, lay the tip edge on its edge at the fence, and the joint cuts take off the rest.`
}

/** Kinds that are thinner than the board. Short pieces are thrown by a planer: common practice, no published source. */
export const planedText = (board: Board, { blanks }: CutStrip, lengths: LengthStyle): string | undefined => {
  const told = [...new Set(blanks.map(({ kind }) => kind))].flatMap(({ letter, plan }) => {
    const planed = planedTo(board, plan, lengths)
    return planed === undefined ? [] : [`${letter} is ${planed}`]
  })
  return told.length === 0
    ? undefined
    : `${told.join(', ')}: plane the wood while it is long, before its first crosscut.`
}

/** `Jetty: 30 arms, 70.0 mm wide, 19.0 mm thick, 99.0 mm along the edge, saw ...`. */
export const blankText = (kind: BlankKind, lengths: LengthStyle): string => {
  const { star, blank, thickness } = kind.plan
  return `${kindNames(kind)}: ${kind.count} arms, ${showLength(star.armStrip, lengths)} wide${thickText(thickness, lengths)}, ${showLength(blank.side, lengths)} along the edge, ${crosscutText(kind)}`
}

export const kindNames = ({ stars }: BlankKind): string => stars.map(({ order }) => order.name).join(', ')

/** What to set for the crosscuts of a kind, and how they lie. */
export const crosscutText = ({ plan, exact }: BlankKind): string => {
  const { firstCut, star } = plan
  const square = isSquare(plan) ? ', square' : ''
  const over = star.tipAngle > 90 ? ', tip at the end of each blank' : ''
  return `saw ${settingText(firstCut)}${square}${over}${exact ? ', the blank is the arm: cut it by a stop, not by marks' : ''}`
}

/** A tip angle of 90°: its blanks are cut off square. */
export const isSquare = ({ firstCut }: StarPlan): boolean => Math.abs(firstCut.miter) < SAME_ANGLE

/** Blanks of one kind, one behind the other. */
export interface BlankRun {
  readonly kind: BlankKind
  readonly blanks: readonly LaidBlank[]
}

export const blankRuns = ({ blanks }: CutStrip): BlankRun[] => {
  const runs: { kind: BlankKind; blanks: LaidBlank[] }[] = []
  for (const blank of blanks) {
    const last = runs.at(-1)
    if (last && last.kind === blank.kind && !blank.trimmed) last.blanks.push(blank)
    else runs.push({ kind: blank.kind, blanks: [blank] })
  }
  return runs
}

/** A mark to set by the tape: without its unit, and in inches with what the fraction leaves out. */
export const markText = (at: Mm, lengths: LengthStyle): string =>
  showSetting(at, lengths).replace(/ (?:mm|in)\b/, '')

export const offcutText = ({ offcut }: CutStrip, lengths: LengthStyle): string => {
  if (offcut.length < SHOP) return 'nothing is left'
  const more = offcut.holds
    .map(({ kind, count }) => `${count} more ${kind.letter} (${kindNames(kind)})`)
    .join(', or ')
  return `${showLength(offcut.length, lengths)}${more === '' ? '' : `, long enough for ${more}`}`
}

/** mm² in m², or in square feet for an order in inches. */
export const areaText = (area: number, { units }: LengthStyle): string => {
  const foot = toInches(toInches(mm(area)) as Mm) / 144
  return units === 'mm' ? `${fixed(area / 1e6, 3)} m²` : `${fixed(foot, 2)} ft²`
}

export const percentText = (part: number): string => `${trimmed(part * 100, 0)} %`

/** What to do before boards with defects are sawn; nothing where none is taken. */
export const metalLines = (boards: readonly CutBoard[]): string[] =>
  boards.some(({ board }) => board.defects.length > 0) ? [METAL_CAUTION] : []
