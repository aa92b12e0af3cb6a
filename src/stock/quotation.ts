import { outlineSize } from '../geometry/outline.js'
import type { Panel } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { BackingPlan } from '../plate/plan-backing.js'
import { SHOP } from '../units/tolerance.js'
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
  panels: readonly Panel[],
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
    const panel = plan.backing && panelShare(plan.backing, panels)
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

/** The cheapest priced panel's price over the plates it gives in rows and columns; a closer nest can only be cheaper. */
const panelShare = (backing: BackingPlan, panels: readonly Panel[]): number | undefined => {
  const { across, height } = outlineSize(backing.outline)
  const shares = panels.flatMap(({ length, width, edge, price, thickness }) => {
    const thick =
      thickness === undefined ||
      backing.thickness === undefined ||
      Math.abs(thickness - backing.thickness) <= SHOP
    const rows = (along: number, each: number): number => Math.floor((along - 2 * edge) / (each + PLATE_GAP))
    const plates = Math.max(
      rows(length, across) * rows(width, height),
      rows(length, height) * rows(width, across),
    )
    return price === undefined || !thick || plates < 1 ? [] : [price / plates]
  })
  return shares.length === 0 ? undefined : Math.min(...shares)
}

/** Room for the cutter between two plates. Common practice, no published source. */
const PLATE_GAP = 5
