import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'

export const REPOSITORY = fileURLToPath(new URL('../..', import.meta.url))

/** The built command line: `npm test` builds it first, `npm run build:cli` by hand. */
const BUILT = fileURLToPath(new URL('../../dist/cli/starwright.js', import.meta.url))

export interface Ran {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

/** Runs the built command line as a maker would, without a terminal. */
export const starwright = (
  words: readonly string[],
  given: { cwd?: string; input?: string; env?: NodeJS.ProcessEnv } = {},
): Ran => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [BUILT, ...words], {
    encoding: 'utf8',
    cwd: given.cwd ?? REPOSITORY,
    input: given.input ?? '',
    env: { ...process.env, ...given.env },
  })
  return { code: status, out: stdout, err: stderr }
}
