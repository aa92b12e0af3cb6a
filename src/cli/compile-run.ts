import { writeFileSync } from 'node:fs'
import { COMPILED, loadRun } from './load-run.js'

/*
 * Part of the build: keeps what Node's engine compiles when the commands run that a maker waits for. Only what has run
 * is compiled.
 */
const EXAMPLE = 'shared/examples/winter-fair.yaml'

const COMMAND_LINES: readonly (readonly string[])[] = [
  ['plan', EXAMPLE],
  ['season', EXAMPLE],
  ['dryfit', EXAMPLE, '--star', 'Boathouse', '--gap', '2mm', '--opens-at', 'centre'],
]

const compile = async (): Promise<void> => {
  const { run, script } = loadRun()
  for (const words of COMMAND_LINES) {
    if ((await run(words)) !== 0) throw new Error(`starwright ${words.join(' ')} fails`)
  }
  writeFileSync(COMPILED, script.createCachedData())
}

process.stdout.write = () => true
compile()
