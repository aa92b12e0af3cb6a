import { stepText } from './compose/panel-words.js'
import type { FurnitureTexts } from './furniture/furniture-names.js'
import { fileSteps, furnishedPlan, type MadeOrder } from './make-files.js'
import { lastOf, type Steps, toldAs } from './nest/run-steps.js'
import type { OrderInput } from './order/parse.js'
import type { Outcome } from './order/problem.js'
import { panelSteps } from './panels/plan-panels.js'

export interface MakeOptions {
  /** Pieces of sheet furniture in place of ours, as SVG. */
  readonly furniture?: FurnitureTexts
  readonly onProgress?: (doing: string) => void
}

/** The whole flow in one go. */
export const makeOrder = (
  input: OrderInput,
  { furniture = {}, onProgress }: MakeOptions = {},
): Outcome<MadeOrder> => lastOf(makeSteps(input, furniture), onProgress)

/**
 * The whole flow: order -> plan -> panels -> drawings -> pages -> files. Nothing is written to disk here. It tells what
 * it does at every step; `true` given back ends the search for room on panels with the best so far.
 */
export function* makeSteps(input: OrderInput, own: FurnitureTexts = {}): Steps<string, Outcome<MadeOrder>> {
  const ready = furnishedPlan(input, own)
  if (!ready.ok) return ready
  const { plan, furniture } = ready.value
  const panels = yield* toldAs(panelSteps(plan), stepText)
  return yield* fileSteps(plan, panels, furniture)
}
