/** A search that tells every step and, given back `true`, ends with the best so far. */
export type Steps<Step, Result> = Generator<Step, Result, boolean | undefined>

/** All steps at once. */
export const lastOf = <Step, Result>(
  steps: Steps<Step, Result>,
  told: (step: Step) => void = () => {},
): Result => {
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
    told(step.value)
  }
}

/** The same steps told otherwise. */
export function* toldAs<Step, Told, Result>(
  steps: Steps<Step, Result>,
  tell: (step: Step) => Told,
  stopped = false,
): Steps<Told, Result> {
  let next = steps.next()
  while (!next.done) {
    const stop = yield tell(next.value)
    next = steps.next(stop === true || stopped)
  }
  return next.value
}

/** The same steps told otherwise, broken off when `true` is given back; the last of them is what was found by then. */
export function* untilStopped<Step, Told>(
  steps: Iterable<Step>,
  tell: (step: Step) => Told,
): Steps<Told, { readonly last: Step | undefined; readonly stopped: boolean }> {
  let last: Step | undefined
  for (const step of steps) {
    last = step
    if ((yield tell(step)) === true) return { last, stopped: true }
  }
  return { last, stopped: false }
}
