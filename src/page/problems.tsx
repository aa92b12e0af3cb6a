import { showProblem } from '../order/problem.js'
import { useBench } from './bench.js'

/** Everything that must be mended before the numbers below hold again. */
export const Problems = () => {
  const { job } = useBench()
  return (
    <div role="status" aria-live="polite" class="problems">
      {job.problems.length > 0 && (
        <>
          <p>
            <strong>Mend this first.</strong> What is drawn and told below is the order as it was before.
          </p>
          <ul>
            {job.problems.map((problem) => (
              <li key={showProblem(problem)}>{showProblem(problem)}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  )
}
