import { setImmediate } from 'node:timers/promises'
import type { Progress } from './terminal.js'

/** When a search is ended before its last step. */
export interface Ending {
  /** Milliseconds on the clock of `performance.now`; never when absent. */
  readonly until?: number
}

/**
 * Runs work step by step and lets the terminal through between steps. Ctrl-C, or the end of the time, asks the work to
 * go on with the best so far, and says so at once; Ctrl-C again ends the program as usual.
 */
export const drive = async <Step, Result>(
  steps: Generator<Step, Result, boolean | undefined>,
  tell: (step: Step) => string,
  shown: Progress,
  { until = Infinity }: Ending = {},
): Promise<Result> => {
  let stop = false
  const interrupted = (): void => {
    stop = true
    shown.show('stopping')
    process.removeListener('SIGINT', interrupted)
  }
  process.on('SIGINT', interrupted)
  try {
    let next = steps.next()
    while (!next.done) {
      shown.show(tell(next.value))
      await setImmediate()
      next = steps.next(stop || performance.now() > until)
    }
    return next.value
  } finally {
    shown.clear()
    process.removeListener('SIGINT', interrupted)
  }
}
