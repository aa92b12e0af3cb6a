import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Script } from 'node:vm'
import type { run } from './run.js'

/** The whole command line as one script, and beside it what Node's engine made of that script when it was built. */
const SCRIPT = join(__dirname, 'run.js')
export const COMPILED = join(__dirname, 'run.compiled')

/**
 * Loads the command line, compiled already: to compile it anew takes as long as all the rest of a short run. What the
 * build compiled serves the same version of Node only; another one sees that and compiles the script itself.
 */
export const loadRun = (): { readonly run: typeof run; readonly script: Script } => {
  const script = new Script(readFileSync(SCRIPT, 'utf8'), {
    filename: SCRIPT,
    ...(existsSync(COMPILED) ? { cachedData: readFileSync(COMPILED) } : {}),
  })
  const module = { exports: {} as { run: typeof run } }
  script.runInThisContext()(require, module, SCRIPT)
  return { run: module.exports.run, script }
}
