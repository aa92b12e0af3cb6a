import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { afterAll, expect, it } from 'vitest'
import { makeOrder } from '../../src/make.js'
import { bytesOf } from '../prints.js'
import { SCRIPTS_ORDER } from './scripts-order.js'

const folder = mkdtempSync(join(tmpdir(), 'starwright-browser-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const example = (name: string): string =>
  readFileSync(new URL(`../../shared/examples/${name}`, import.meta.url), 'utf8')

const CHROMIUM = [
  '--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking',
  '--disable-component-update --disable-sync --virtual-time-budget=3000000 --dump-dom',
].flatMap((line) => line.split(' '))

/** Runs in the page: makes the order with the library and leaves the checksums as its text. */
const PAGE_SCRIPT = `
import { makeOrder } from './src/index.js'
const hex = (sum) => [...new Uint8Array(sum)].map((byte) => byte.toString(16).padStart(2, '0')).join('')
const made = makeOrder({ text: ORDER })
const rows = []
for (const { path, content } of made.value.files) {
  const parts = []
  for await (const part of typeof content === 'string' ? [new TextEncoder().encode(content)] : content()) parts.push(part)
  const bytes = await new Blob(parts).arrayBuffer()
  rows.push(hex(await crypto.subtle.digest('SHA-256', bytes)) + '  ' + path)
}
document.body.textContent = rows.join('\\n')
`

it.each([
  { name: 'winter-fair', order: example('winter-fair.yaml') },
  { name: 'lantern-walk', order: example('lantern-walk.yaml') },
  { name: 'many scripts', order: SCRIPTS_ORDER },
])('$name: Chromium makes the same bytes of every file', async ({ name, order }) => {
  const { outputFiles } = await build({
    stdin: { contents: PAGE_SCRIPT, resolveDir: fileURLToPath(new URL('../..', import.meta.url)) },
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'esm',
    target: 'es2022',
    loader: { '.svg': 'text', '.ttf': 'binary' },
    // The solver is loaded only when boards are searched for, which making files never does.
    external: ['highs'],
    define: { ORDER: JSON.stringify(order), 'import.meta.url': '"file:///"' },
    logLevel: 'warning',
  })
  const script = outputFiles[0]?.text.replaceAll('</script', '<\\/script') ?? ''
  const page = join(folder, `${name}.html`)
  writeFileSync(
    page,
    `<!doctype html><meta charset="utf-8"><body>waiting</body><script type="module">${script}</script>`,
  )
  const profile = join(folder, 'profile')
  const dom = execFileSync(
    '/usr/bin/chromium',
    [...CHROMIUM, `--user-data-dir=${profile}`, `file://${page}`],
    {
      encoding: 'utf8',
      // The page's script comes back with it, an embedded font included.
      maxBuffer: 2 ** 28,
      stdio: ['ignore', 'pipe', 'ignore'],
    },
  )
  const inBrowser = [...dom.matchAll(/[0-9a-f]{64} {2}[a-z0-9./-]+/g)].map(([row]) => row).sort()

  const made = makeOrder({ text: order })
  const inNode = await Promise.all(
    (made.ok ? made.value.files : []).map(
      async ({ path, content }) =>
        `${createHash('sha256')
          .update(await bytesOf(content))
          .digest('hex')}  ${path}`,
    ),
  )
  expect(inNode.length).toBeGreaterThan(15)
  expect(inBrowser).toEqual(inNode.sort())
})
