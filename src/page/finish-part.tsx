import { workingOrder } from '../compose/card-words.js'
import { BENCH_CAUTION } from '../compose/cautions.js'
import type { StarPlan } from '../plan/plan.js'
import { useBench } from './bench.js'

/** From the cut arms to the wall. */
export const FinishPart = ({ star }: { readonly star: StarPlan }) => {
  const { plan } = useBench()
  return (
    <section aria-labelledby="finish-heading" class="part">
      <h2 id="finish-heading">Glue, back, finish, hang</h2>
      <ol>
        {workingOrder(star, plan.order).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ol>
      <p class="caution">{BENCH_CAUTION}</p>
    </section>
  )
}
