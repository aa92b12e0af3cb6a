import { done, type Outcome, refused } from '../order/problem.js'
import type { PanelPlan } from '../panels/panel-plan.js'
import type { Plan } from '../plan/plan.js'
import type { BlankKind } from './blank-kinds.js'
import { alikeTogether, briefCutting, type Cutting, cheapestCutting } from './cheapest.js'
import { type CutBoard, cutBoard } from './cut-board.js'
import { costOf } from './cutting-problem.js'
import { fewerSettings } from './fewer-settings.js'
import { loadSolver } from './highs.js'
import type { Deadline } from './price-boards.js'
import { type StarCost, starCosts } from './quotation.js'
import { missingProblems, type StockProblem, stockProblem } from './stock-problem.js'

/** Which boards to take and how to cut them, for all stars of an order. */
export interface StockPlan {
  readonly plan: Plan
  readonly kinds: readonly BlankKind[]
  readonly boards: readonly CutBoard[]
  /** Is it money, or wood in m² because no board has a price? */
  readonly priced: boolean
  readonly cost: number
  /** No choice of boards costs less; the same as the cost when that is proved. */
  readonly bound: number
  readonly proved: boolean
  /** Was it looked for no longer than `make` and the page do? */
  readonly brief: boolean
  readonly stars: readonly StarCost[]
  /** Wood of the stars over the wood of the boards, 0 to 1. */
  readonly yield: number
}

/** What a brief search finds, the same on every machine; it is proved to be cheapest for most orders. */
export const briefStock = (plan: Plan, panels: PanelPlan): Outcome<StockPlan> => {
  const problem = stockProblem(plan)
  return problem.ok ? finished(problem.value, briefCutting(problem.value.problem), panels, true) : problem
}

/**
 * The cheapest boards for an order: proved, or the best found in the time with the bound.
 *
 * @param panelsOf lays the backings on panels, for what each star pays of them; asked only once boards are found
 * @param deadline when to stop, in milliseconds of a clock of the caller's
 */
export const planStock = async (
  plan: Plan,
  deadline: Deadline,
  panelsOf: () => PanelPlan | Promise<PanelPlan>,
): Promise<Outcome<StockPlan>> => {
  const problem = stockProblem(plan)
  if (!problem.ok) return problem
  const cutting = await cheapestCutting(problem.value.problem, loadSolver, deadline)
  return finished(problem.value, cutting, await panelsOf(), false)
}

const finished = (
  stock: StockProblem,
  cutting: Cutting,
  panels: PanelPlan,
  brief: boolean,
): Outcome<StockPlan> => {
  const { plan, kinds, priced, complete } = stock
  const missing = kinds.map((_, blank) =>
    cutting.cuts
      .filter(({ supply }) => supply >= stock.boards.length)
      .reduce((sum, { fillings, times }) => sum + times * (fillings[0]?.[blank] ?? 0), 0),
  )
  if (missing.some((count) => count > 0)) return refused(missingProblems(missing, stock))
  const cuts = alikeTogether(fewerSettings(cutting.cuts, stock.problem))
  const boards = cuts.flatMap((cut): CutBoard[] => {
    const roomy = stock.boards[cut.supply]
    return roomy ? [cutBoard(cut, cut.supply + 1, roomy, kinds, plan.order.shop.ripKerf)] : []
  })
  const wood = boards.reduce((sum, { board, times }) => sum + times * board.width * board.length, 0)
  const stars = plan.stars.reduce((sum, { kite, arms }) => sum + kite.area * arms, 0)
  return done({
    plan,
    kinds,
    boards,
    priced,
    cost: costOf(cuts, stock.problem),
    bound: complete ? cutting.bound : 0,
    proved: cutting.proved && complete,
    brief,
    stars: starCosts(plan.stars, kinds, boards, panels, priced),
    yield: stars / wood,
  })
}
