import { styleText } from 'node:util'
import { type Problem, showProblem } from '../order/problem.js'

/** Done; a fault of ours; the order or the command line must be mended. */
export const EXIT = { done: 0, fault: 1, mend: 2 } as const

const mayColour = (stream: NodeJS.WriteStream): boolean =>
  stream.isTTY === true && (process.env.NO_COLOR ?? '') === '' && process.env.TERM !== 'dumb'

/** Prints text for the person at the terminal; warnings (lines that begin with !) stand out where colour is wanted. */
export const say = (text: string): void => {
  const shown = mayColour(process.stdout)
    ? text.replace(/^ +! .*(?:\n {4}\S.*)*/gm, (warning) => styleText(['yellow'], warning))
    : text
  process.stdout.write(shown)
}

/** Tells every problem, each on its own line, and that nothing was written. */
export const tellProblems = (problems: readonly Problem[]): number => {
  const lines = problems.map((problem) => `${showProblem(problem)}\n`)
  process.stderr.write(`${lines.join('')}Nothing was written.\n`)
  return EXIT.mend
}

export const usageError = (message: string): number => {
  process.stderr.write(`${message}\nFor the commands and flags: starwright --help\nNothing was written.\n`)
  return EXIT.mend
}

/** A mistake of this program, not of the person who uses it. */
export const fault = (error: unknown): number => {
  const told = error instanceof Error ? (error.stack ?? error.message) : String(error)
  process.stderr.write(
    `This is a fault in starwright, not in your order. Please report it with this text:\n${told}\n`,
  )
  return EXIT.fault
}

/** A line that is overwritten as work goes on. */
export interface Progress {
  readonly show: (doing: string) => void
  readonly clear: () => void
}

/** Silent unless standard error is a terminal. */
export const progress = (quiet: boolean): Progress => {
  const shown = !quiet && process.stderr.isTTY === true
  const clearLine = '\r\u001b[2K'
  let last = ''
  const put = (line: string): void => {
    if (shown && line !== last) process.stderr.write(`${clearLine}${line}`)
    last = line
  }
  return { show: (doing) => put(`${doing}...`), clear: () => put('') }
}
