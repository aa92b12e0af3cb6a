import { gapHistogram } from '../compose/gap-histogram.js'
import { riskJson } from '../compose/risk-json.js'
import { riskReport } from '../compose/risk-report.js'
import { type BatchRisk, batchRisk } from '../fit/batch-risk.js'
import { SAW_SETS } from '../fit/closure-law.js'
import type { Order } from '../order/order.js'
import { type Outcome, problemsOf, refused, showGiven } from '../order/problem.js'
import { wholeFlag } from '../order/whole-flag.js'
import { planOrder } from '../plan/plan.js'
import { contentFor } from './content-for.js'
import { writeDrawing } from './files.js'
import { furnishedOrder } from './furnished-order.js'
import type { Typed } from './order-flags.js'
import { EXIT, say, tellProblems } from './terminal.js'

/** `starwright risk`: the chance that stars close, for people or as JSON, and its histogram as a drawing. */
export const risk = async (typed: Typed): Promise<number> => {
  const furnished = await furnishedOrder(typed)
  const planned = furnished.ok ? planOrder(furnished.value.order) : furnished
  const seed = wholeFlag(typed, 'seed', { least: 0, most: 999_999_999, otherwise: 1 })
  const simulated = wholeFlag(typed, 'simulated', { least: 1_000, most: 10_000_000, otherwise: 200_000 })
  if (!furnished.ok || !planned.ok || !seed.ok || !simulated.ok) {
    return tellProblems([planned, seed, simulated].flatMap(problemsOf))
  }
  const { order, furniture } = furnished.value
  const set = SAW_SETS.find((each) => each === typed.set) ?? 'told'
  const risks = planned.value.stars.map((plan) =>
    batchRisk(plan, order.shop, { set, seed: seed.value, simulated: simulated.value }),
  )
  if (typed.to !== undefined) {
    const one = onlyOne(risks, order)
    if (!one.ok) return tellProblems(one.problems)
    const file = String(typed.to)
    const content = await contentFor(file, gapHistogram(one.value, order), order, furniture)
    const written = content.ok ? await writeDrawing(file, content.value, typed.replace === true) : content
    if (!written.ok) return tellProblems(written.problems)
  }
  if (typed.json === true) process.stdout.write(riskJson(risks, order))
  else if (typed.quiet !== true) say(riskReport(risks, order))
  return EXIT.done
}

const onlyOne = (risks: readonly BatchRisk[], order: Order): Outcome<BatchRisk> => {
  const [risk] = risks
  if (risk && risks.length === 1) return { ok: true, value: risk }
  return refused([
    {
      place: '--star',
      given: 'nothing',
      advice: `The order has ${risks.length} stars: say whose histogram to draw, ${order.stars.map(({ name }) => showGiven(name)).join(', ')}.`,
    },
  ])
}
