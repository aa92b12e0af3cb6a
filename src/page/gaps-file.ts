import { gapHistogram } from '../compose/gap-histogram.js'
import { type DrawingKind, drawingContent } from '../drawing-content.js'
import { batchRisk } from '../fit/batch-risk.js'
import type { SawSet } from '../fit/closure-law.js'
import { type FileContent, furnishedPlan } from '../make-files.js'
import { done, type Outcome, refused } from '../order/problem.js'
import { noSuchStar } from '../order/star-name.js'
import type { Given } from './work.js'

/** As many stars as the command line simulates, from the same seed. */
export const SIMULATED = { simulated: 200_000, seed: 1 } as const

/** How the gaps of a star spread, as `starwright risk ORDER --star NAME --set SET --to FILE` draws it. */
export const gapsFile = async (
  { text, furniture: own }: Given,
  name: string,
  set: SawSet,
  kind: DrawingKind,
): Promise<Outcome<{ readonly path: string; readonly content: FileContent }>> => {
  const furnished = furnishedPlan({ text }, own)
  if (!furnished.ok) return furnished
  const { plan, furniture } = furnished.value
  const star = plan.stars.find(({ order }) => order.name === name)
  if (!star)
    return refused([
      noSuchStar(
        name,
        plan.order.stars.map((each) => each.name),
      ),
    ])
  const drawing = gapHistogram(batchRisk(star, plan.order.shop, { ...SIMULATED, set }), plan.order)
  const content = await drawingContent(kind, drawing, plan.order, furniture)
  return content.ok ? done({ path: `${star.order.fileName}-gaps${kind}`, content: content.value }) : content
}
