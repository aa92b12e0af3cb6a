import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core'

/** The built page, opened as from a memory stick. */
export const PAGE = new URL('../../dist/page/star.html', import.meta.url)

/** Debian's own, which needs no download. */
export const openBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] })

export interface Opened {
  readonly page: Page
  /** Every request that left the page, its own file and what lies in it apart. */
  readonly requests: string[]
  /** Everything the page complained of. */
  readonly complaints: string[]
}

export const openPage = async (
  browser: Browser,
  {
    hash = '',
    watchParts = false,
    ...options
  }: BrowserContextOptions & { readonly hash?: string; readonly watchParts?: boolean } = {},
): Promise<Opened> => {
  const context = await browser.newContext({ acceptDownloads: true, ...options })
  const page = await context.newPage()
  if (watchParts) await context.addInitScript(keepWantedParts)
  const requests: string[] = []
  const complaints: string[] = []
  page.on('request', (request) => {
    if (!/^(?:file|blob|data):/.test(request.url())) requests.push(request.url())
  })
  page.on('pageerror', ({ message }) => complaints.push(message))
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text())
  })
  await page.goto(`${PAGE.href}${hash}`)
  await page.waitForSelector('[aria-labelledby="finish-heading"]')
  return { page, requests, complaints }
}

/** In the page: keeps the names of the parts that its worker asks for. */
const keepWantedParts = (): void => {
  const parts: string[] = []
  const Watched = class extends Worker {
    constructor(url: string | URL) {
      super(url)
      this.addEventListener('message', ({ data }) => {
        if (typeof data === 'object' && 'part' in data) parts.push(data.part)
      })
    }
  }
  Object.assign(globalThis, { Worker: Watched, wantedParts: parts })
}

/** Waits until the order that is shown has been laid on paper. */
export const laid = async (page: Page): Promise<void> => {
  await page.getByText(/\d+ sheets to print in all/).waitFor()
  await page.waitForFunction(() => !document.querySelector<HTMLButtonElement>('button.first')?.disabled)
}

/** Stops the work, and where the search for room on panels then goes on to lay its best out, that too. */
export const stopped = async (page: Page): Promise<void> => {
  const taken = page.getByRole('button', { name: 'Lay the pages out' })
  const stop = page.getByRole('button', { name: 'Stop', exact: true })
  while ((await taken.count()) === 0) await stop.click({ timeout: 2000 }).catch(() => {})
}

/** Opens what is folded away. */
export const unfold = (page: Page): Promise<void> =>
  page.locator('details').evaluateAll((all) => {
    for (const each of all) (each as HTMLDetailsElement).open = true
  })

/** Types into a field and leaves it. */
export const type = async (page: Page, label: string, text: string): Promise<void> => {
  const field = page.getByLabel(label, { exact: true }).first()
  await field.fill(text)
  await field.press('Tab')
}

/** What a click saves. */
export const saved = async (
  page: Page,
  click: () => Promise<void>,
): Promise<{ name: string; bytes: Buffer }> => {
  const folder = mkdtempSync(join(tmpdir(), 'starwright-page-'))
  try {
    const [download] = await Promise.all([page.waitForEvent('download'), click()])
    const file = join(folder, 'saved')
    await download.saveAs(file)
    return { name: download.suggestedFilename(), bytes: readFileSync(file) }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

export const EXAMPLE = readFileSync(
  fileURLToPath(new URL('../../shared/examples/winter-fair.yaml', import.meta.url)),
  'utf8',
)

/** The order as the page's address keeps it. */
export const orderOf = (page: Page): string =>
  new URLSearchParams(new URL(page.url()).hash.slice(1)).get('order') ?? ''
