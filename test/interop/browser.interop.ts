import { createHash } from 'node:crypto'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { chromium } from 'playwright-core'
import { afterAll, expect, it } from 'vitest'
import { makeOrder } from '../../src/make.js'
import { bytesOf } from '../prints.js'
import { SCRIPTS_ORDER } from './scripts-order.js'

const folder = mkdtempSync(join(tmpdir(), 'starwright-browser-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const example = (name: string): string =>
  readFileSync(new URL(`../../shared/examples/${name}`, import.meta.url), 'utf8')

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
document.body.textContent = ['done', ...rows].join('\\n')
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
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] })
  const opened = await browser.newPage()
  await opened.goto(`file://${page}`)
  await opened.waitForFunction("document.body.textContent.startsWith('done')", undefined, {
    timeout: 110_000,
  })
  const dom = (await opened.textContent('body')) ?? ''
  await browser.close()
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

/** What is used of the browser's own type. */
interface TextElement {
  readonly textContent: string
  readonly getAttribute: (name: string) => string | null
  readonly removeAttribute: (name: string) => void
  readonly getBBox: () => { readonly width: number }
}

/** In mm, at 96 to the inch (CSS Values and Units 4, 6.2): Chromium sets small letters to whole ones. */
const PIXEL = 25.4 / 96

it('in Chromium a label takes the room that was kept for it, also where the face is not there', async () => {
  const made = makeOrder({ text: example('winter-fair.yaml') })
  const svgs = (made.ok ? made.value.files : []).flatMap(({ path, content }) =>
    path.endsWith('.svg') && typeof content === 'string' ? [{ path, content }] : [],
  )
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] })
  const page = await browser.newPage()
  let [labels, wider] = [0, 0]
  for (const { path, content } of svgs) {
    // DejaVu Sans is wider than the face the room is kept for, by a tenth and more.
    await page.setContent(content.replaceAll(/font-family="[^"]*"/g, 'font-family="DejaVu Sans"'))
    const found = await page.locator('text').evaluateAll((all) =>
      (all as unknown as TextElement[]).map((text) => {
        const room = Number(text.getAttribute('textLength'))
        const width = text.getBBox().width
        text.removeAttribute('textLength')
        return { text: text.textContent, room, width, own: text.getBBox().width }
      }),
    )
    for (const { text, room, width, own } of found) {
      expect(room, `${path}: ${text}`).toBeGreaterThan(0)
      expect(width, `${path}: ${text}`).toBeLessThanOrEqual(room + 2 * PIXEL)
      labels += 1
      if (own > room * 1.05) wider += 1
    }
  }
  await browser.close()
  expect(labels).toBeGreaterThan(100)
  expect(wider).toBeGreaterThan(labels / 2)
})
