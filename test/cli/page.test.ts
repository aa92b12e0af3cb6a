import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { REPOSITORY, starwright } from './starwright.js'

const folder = mkdtempSync(join(tmpdir(), 'starwright-page-command-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const BUILT = readFileSync(join(REPOSITORY, 'dist/page/star.html'), 'utf8')

it('writes the page as it was built, and over a file only when told to', () => {
  const file = join(folder, 'star.html')
  const first = starwright(['page', '--to', file])
  expect(first).toMatchObject({ code: 0, err: '' })
  expect(first.out).toContain(`${file}: open it in a browser.`)
  expect(readFileSync(file, 'utf8')).toBe(BUILT)
  writeFileSync(file, 'something of the maker')
  const second = starwright(['page', '--to', file])
  expect(second.code).toBe(2)
  expect(second.err).toContain('--replace')
  expect(readFileSync(file, 'utf8')).toBe('something of the maker')
  expect(starwright(['page', '--to', file, '--replace', '--quiet'])).toMatchObject({ code: 0, out: '' })
  expect(readFileSync(file, 'utf8')).toBe(BUILT)
})

it('opens it with what opens files here', async () => {
  const opened = join(folder, 'opened')
  const opener = join(folder, process.platform === 'darwin' ? 'open' : 'xdg-open')
  writeFileSync(opener, `#!/bin/sh\nprintf %s "$1" > '${opened}.part' && mv '${opened}.part' '${opened}'\n`)
  chmodSync(opener, 0o755)
  const file = join(folder, 'opened.html')
  const PATH = `${folder}:${process.env.PATH}`
  expect(starwright(['page', '--to', file, '--open'], { env: { PATH } }).code).toBe(0)
  // The opener goes on by itself.
  await expect.poll(() => existsSync(opened), { timeout: 10_000 }).toBe(true)
  expect(readFileSync(opened, 'utf8')).toBe(file)
})

it('says so where nothing opens files', () => {
  const file = join(folder, 'unopened.html')
  const { code, out } = starwright(['page', '--to', file, '--open'], { env: { PATH: join(folder, 'none') } })
  expect(code).toBe(0)
  expect(out).toContain(`No program was found that opens it: open ${file} in a browser.`)
  expect(readFileSync(file, 'utf8')).toBe(BUILT)
})
