import { setImmediate } from 'node:timers/promises'

/** When a search is ended before its last step. */
export interface Ending {
  /** Milliseconds on the clock of `performance.now`; never when absent. */
  readonly until?: number
}

/**
 * Runs work step by step and lets the terminal through between steps. Ctrl-C, or the end of the time, asks the work to
 * go on with the best so far; Ctrl-C again ends the program as usual.
 */
export const drive = async <Step, Result>(
  steps: Generator<Step, Result, boolean | undefined>,
  show: (step: Step) => void,
  { until = Infinity }: Ending = {},
): Promise<Result> => {
  let stop = false
  const interrupted = (): void => {
    stop = true
    process.removeListener('SIGINT', interrupted)
  }
  process.on('SIGINT', interrupted)
  try {
    let next = steps.next()
    while (!next.done) {
      show(next.value)
      await setImmediate()
      next = steps.next(stop || performance.now() > until)
    }
    return next.value
  } finally {
    process.removeListener('SIGINT', interrupted)
  }
}
