import { useLayoutEffect, useState } from 'preact/hooks'
import { harmless, type Problem, showProblem } from '../order/problem.js'
import { fieldOf } from './field-of.js'
import { markLine } from './order-text.js'
import { placeOf, toldAtField } from './problem-place.js'

const ID = 'problems'

export const showProblems = (): void => {
  const list = document.getElementById(ID)
  list?.focus({ preventScroll: true })
  list?.scrollIntoView()
}

/** Everything that must be mended before the numbers below hold again, each with a way to its field. */
export const Problems = ({
  problems,
  names,
  shown,
  drawn,
  onShow,
}: {
  readonly problems: readonly Problem[]
  /** Of the stars as the order is written. */
  readonly names: readonly string[]
  /** The star that is shown, counted from 0. */
  readonly shown: number
  /** A star is drawn below, as the order was before. */
  readonly drawn: boolean
  readonly onShow: (starIndex: number) => void
}) => (
  <div id={ID} role="status" aria-live="polite" class="problems" tabIndex={-1}>
    {problems.length > 0 && (
      <>
        <p>
          <strong>Mend this first.</strong>{' '}
          {drawn && 'What is drawn and told below is the order as it was before.'}
        </p>
        <ul>
          {problems.map((problem) => (
            <li key={showProblem(problem)}>
              {drawn ? (
                <ProblemWithWay problem={problem} names={names} shown={shown} onShow={onShow} />
              ) : (
                <ProblemWithLine problem={problem} />
              )}
            </li>
          ))}
        </ul>
      </>
    )}
  </div>
)

/** Told as on the command line, with a way to its line of the text that is shown. */
const ProblemWithLine = ({ problem }: { readonly problem: Problem }) => {
  const { place, line, given, advice } = problem
  if (line === undefined) return <>{showProblem(problem)}</>
  return (
    <>
      <button type="button" class="way" onClick={() => markLine(line)}>
        {harmless(place)}, line {line}
      </button>
      {showProblem({ place: '', given, advice })}
    </>
  )
}

/** A mistake with no field of its own is told by its key. Lines are those of a file, which the page does not show. */
const ProblemWithWay = ({
  problem: { line: _, ...problem },
  names,
  shown,
  onShow,
}: {
  readonly problem: Problem
  readonly names: readonly string[]
  readonly shown: number
  readonly onShow: (starIndex: number) => void
}) => {
  const [label, setLabel] = useState<string>()
  const written = placeOf(problem)
  const ofStar = Number(/^stars\[(\d+)\]/.exec(written)?.[1] ?? shown)
  // A star has the same fields as the one that is shown.
  const place = written.replace(/^stars\[\d+\]/, `stars[${shown}]`)
  // Looked up at every change: what lies below the star is there after the first painting, other fields come and go.
  useLayoutEffect(() => setLabel(fieldOf(place)?.label))
  if (label === undefined) return <>{showProblem(problem)}</>
  const name = ofStar === shown ? '' : `${names[ofStar] ?? `Star ${ofStar + 1}`}, `
  const go = (): void => {
    if (ofStar !== shown) onShow(ofStar)
    // The fields are those of the other star one painting later.
    requestAnimationFrame(() => fieldOf(written)?.focus())
  }
  return (
    <>
      <button type="button" class="way" onClick={go}>
        {name}
        {label}
      </button>
      {`: ${harmless(toldAtField(problem))}`}
    </>
  )
}
