import { gapHistogram } from '../compose/gap-histogram.js'
import { type DrawingKind, drawingContent } from '../drawing-content.js'
import { batchRisk } from '../fit/batch-risk.js'
import { furnitureWith } from '../furniture/furniture-set.js'
import type { FileContent } from '../make-files.js'
import { done, type Outcome, problemsOf, refused } from '../order/problem.js'
import { jobOf } from './job.js'
import type { Given } from './work.js'

/** As many stars as the command line simulates, from the same seed. */
export const SIMULATED = { set: 'told', simulated: 200_000, seed: 1 } as const

/** How the gaps of a star spread, as `starwright risk ORDER --star NAME --to FILE` draws it. */
export const gapsFile = async (
  { text, furniture: own }: Given,
  name: string,
  kind: DrawingKind,
): Promise<Outcome<{ readonly path: string; readonly content: FileContent }>> => {
  const { plan, problems } = jobOf(text)
  const star = plan?.stars.find(({ order }) => order.name === name)
  if (!plan || !star) return refused(problems)
  const furniture = furnitureWith(own, plan.order.lengths.units)
  if (!furniture.ok) return refused(problemsOf(furniture))
  const drawing = gapHistogram(batchRisk(star, plan.order.shop, SIMULATED), plan.order)
  const content = await drawingContent(kind, drawing, plan.order, furniture.value)
  return content.ok ? done({ path: `${star.order.fileName}-gaps${kind}`, content: content.value }) : content
}
