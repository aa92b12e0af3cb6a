import { signedArea } from '../geometry/outline.js'
import type { FilledPanel, PanelPlan } from '../panels/panel-plan.js'
import type { StarPlan } from '../plan/plan.js'
import type { BlankKind } from './blank-kinds.js'
import type { CutBoard } from './cut-board.js'

/** What one star of a kind costs and takes. Money is in the order's own currency. */
export interface StarCost {
  readonly plan: StarPlan
  /** Its share of the boards' faces, offcuts included, in mm². */
  readonly wood: number
  /** Its share of the boards; undefined when no board has a price. */
  readonly boards?: number
  /** Its share of a panel; undefined without a backing, or when no priced panel holds it. */
  readonly panel?: number
  readonly hardware?: number
  /** Sum of what is known. */
  readonly total: number
}

/**
 * The boards shared out among the stars. On each board the blanks pay by the area they take, so that its offcut is
 * paid by those that left it; equal blanks then pay the same, whichever board they came from.
 */
export const starCosts = (
  stars: readonly StarPlan[],
  kinds: readonly BlankKind[],
  boards: readonly CutBoard[],
  panels: PanelPlan,
  priced: boolean,
): StarCost[] =>
  stars.map((plan) => {
    const kind = kinds.find((each) => each.stars.includes(plan))
    const shares = boards.map((board) => board.times * shareOf(kind, board))
    const perArm = (amount: (board: CutBoard) => number): number =>
      shares.reduce((sum, share, index) => sum + share * amount(boards[index] as CutBoard), 0) /
      (kind?.count ?? 1)
    const points = plan.star.points
    const wood = points * perArm(({ board }) => board.width * board.length)
    const money = priced ? points * perArm(({ board }) => board.price ?? 0) : undefined
    const panel = panelShare(plan, panels)
    const { hardware } = plan.order
    return {
      plan,
      wood,
      ...(money === undefined ? {} : { boards: money }),
      ...(panel === undefined ? {} : { panel }),
      ...(hardware === undefined ? {} : { hardware }),
      total: (money ?? 0) + (panel ?? 0) + (hardware ?? 0),
    }
  })

/** What part of a board the blanks of a kind took, of all that was taken. */
const shareOf = (kind: BlankKind | undefined, { strips }: CutBoard): number => {
  const blanks = strips.flatMap((strip) => strip.blanks)
  const area = (laid: typeof blanks): number =>
    laid.reduce((sum, each) => sum + each.kind.plan.blank.pitch * each.kind.plan.star.armStrip, 0)
  return area(blanks.filter((each) => each.kind === kind)) / area(blanks)
}

/** On each panel the plates pay by the area they take, so that what is left is paid by those that left it. */
const panelShare = (star: StarPlan, { panels }: PanelPlan): number | undefined => {
  const own = panels.filter(({ plates }) => plates.some((laid) => laid.star === star))
  if (own.length === 0 || own.some(({ panel }) => panel.price === undefined)) return undefined
  const area = (laid: FilledPanel['plates']): number =>
    laid.reduce((sum, { star: { backing } }) => sum + signedArea(backing.outline), 0)
  const paid = own.reduce(
    (sum, { panel, plates, times }) =>
      sum + (times * (panel.price ?? 0) * area(plates.filter((laid) => laid.star === star))) / area(plates),
    0,
  )
  return paid / star.order.quantity
}
