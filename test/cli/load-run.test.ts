import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { REPOSITORY, starwright } from './starwright.js'

const folder = mkdtempSync(join(tmpdir(), 'starwright-load-'))
afterAll(() => rmSync(folder, { recursive: true }))

const WORDS = ['plan', join(REPOSITORY, 'shared/examples/winter-fair.yaml')]

/** What the built command line prints when this stands for what the build compiled, undefined for nothing. */
const printedWith = (compiled: Uint8Array | undefined, name: string): string => {
  const copy = join(folder, name)
  cpSync(join(REPOSITORY, 'dist/cli'), copy, { recursive: true })
  rmSync(join(copy, 'run.compiled'))
  if (compiled) writeFileSync(join(copy, 'run.compiled'), compiled)
  return spawnSync(process.execPath, [join(copy, 'starwright.js'), ...WORDS], { encoding: 'utf8' }).stdout
}

it('prints the same whether what was compiled is there, missing, cut short, of another Node or no such thing at all', () => {
  const { code, out } = starwright(WORDS)
  expect(code).toBe(0)
  const compiled = readFileSync(join(REPOSITORY, 'dist/cli/run.compiled'))
  expect(compiled.length).toBeGreaterThan(100_000)
  // The engine's version stands in the header.
  const foreign = Uint8Array.from(compiled, (byte, at) => (at > 3 && at < 8 ? byte ^ 0xff : byte))
  expect(printedWith(undefined, 'missing')).toBe(out)
  expect(printedWith(foreign, 'foreign')).toBe(out)
  expect(printedWith(compiled.subarray(0, 5000), 'short')).toBe(out)
  expect(printedWith(new TextEncoder().encode('nothing of the kind'), 'other')).toBe(out)
})
