import { useLayoutEffect, useState } from 'preact/hooks'
import { type Problem, showProblem } from '../order/problem.js'
import { useBench } from './bench.js'
import { fieldOf } from './field-of.js'

/** Everything that must be mended before the numbers below hold again, each with a way to its field. */
export const Problems = ({ onShow }: { readonly onShow: (starIndex: number) => void }) => {
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
              <li key={showProblem(problem)}>
                <OneProblem problem={problem} onShow={onShow} />
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  )
}

/** A mistake with no field of its own is told by its key. Lines are those of a file, which the page does not show. */
const OneProblem = ({
  problem: { line: _, ...problem },
  onShow,
}: {
  readonly problem: Problem
  readonly onShow: (starIndex: number) => void
}) => {
  const { starIndex, plan } = useBench()
  const [label, setLabel] = useState<string>()
  const ofStar = Number(/^stars\[(\d+)\]/.exec(problem.place)?.[1] ?? starIndex)
  // A star has the same fields as the one that is shown.
  const place = problem.place.replace(/^stars\[\d+\]/, `stars[${starIndex}]`)
  // Looked up at every change: what lies below the star is there after the first painting, other fields come and go.
  useLayoutEffect(() => setLabel(fieldOf(place)?.label))
  const told = showProblem({ ...problem, place: '' })
  if (label === undefined) return <>{showProblem(problem)}</>
  const name = ofStar === starIndex ? '' : `${plan.stars[ofStar]?.order.name ?? `Star ${ofStar + 1}`}, `
  const go = (): void => {
    if (ofStar !== starIndex) onShow(ofStar)
    // The fields are those of the other star one painting later.
    requestAnimationFrame(() => fieldOf(problem.place)?.focus())
  }
  return (
    <>
      <button type="button" class="way" onClick={go}>
        {name}
        {label}
      </button>
      {told}
    </>
  )
}
