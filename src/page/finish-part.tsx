import { workingOrder } from '../compose/card-words.js'
import { BENCH_CAUTION } from '../compose/cautions.js'
import { DEFAULTS } from '../order/defaults.js'
import type { StarPlan } from '../plan/plan.js'
import { useBench } from './bench.js'
import { type FieldWords, MoreFields } from './more-fields.js'
import { Part } from './part.js'

const SUCH = 'such as 30 min, 24 h or 3 days'

/** What is left empty is told as what to look up on the label. */
const LABELS: readonly FieldWords[] = [
  { place: ['shop', 'glue', 'clamp'], label: 'Glue: clamped for', hint: SUCH },
  { place: ['shop', 'glue', 'cures'], label: 'Glue: worked on after' },
  { place: ['shop', 'stain', 'coverage'], label: 'Stain: one coat covers', hint: 'empty: no stain' },
  { place: ['shop', 'stain', 'dries'], label: 'Stain: coated after' },
  {
    place: ['shop', 'finish', 'coverage'],
    label: 'Finish: one coat covers',
    hint: 'such as 12 m²/l or 400 ft²/gal',
  },
  { place: ['shop', 'finish', 'coats'], label: 'Finish: coats', hint: `empty: ${DEFAULTS.coats}` },
  { place: ['shop', 'finish', 'dries'], label: 'Finish: from coat to coat' },
  { place: ['shop', 'finish', 'cures'], label: 'Finish: hung after' },
]

/** From the cut arms to the wall. */
export const FinishPart = ({ star }: { readonly star: StarPlan }) => {
  const { plan } = useBench()
  return (
    <Part name="finish">
      <MoreFields name="What the labels of glue, stain and finish say" fields={LABELS} />
      <ol>
        {workingOrder(star, plan.order).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ol>
      <p class="caution">{BENCH_CAUTION}</p>
    </Part>
  )
}
