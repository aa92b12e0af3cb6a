import { seasonCard } from '../compose/season-card.js'
import { seasonJson } from '../compose/season-json.js'
import { parseOrder } from '../order/parse.js'
import { planOrder } from '../plan/plan.js'
import { planSeason } from '../season/season-plan.js'
import type { Typed } from './order-flags.js'
import { orderInput } from './order-input.js'
import { EXIT, say, tellProblems } from './terminal.js'

/** `starwright season`: how the wood moves between workshop and wall, for people or as JSON. */
export const season = async (typed: Typed): Promise<number> => {
  const input = await orderInput(typed)
  const order = input.ok ? parseOrder(input.value) : input
  const planned = order.ok ? planOrder(order.value) : order
  if (!planned.ok) return tellProblems(planned.problems)
  const seasons = planSeason(planned.value)
  if (typed.json === true) process.stdout.write(seasonJson(seasons))
  else say(seasonCard(seasons))
  return EXIT.done
}
