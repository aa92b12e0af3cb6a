import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { laid, openBrowser, openPage, PAGE, saved, stopped, type, unfold } from './opened.js'

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

const template = new URL('../../templates/caution.svg', import.meta.url)

let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

interface Violation {
  readonly id: string
  readonly nodes: readonly { readonly html: string }[]
}

/** WCAG 2.2 A and AA, as axe-core checks them. */
const violationsOn = async (page: Page): Promise<string[]> => {
  // A part out of sight has the size that it had in sight; what it holds now is laid out as where one scrolls to it.
  await page.locator('.part').evaluateAll((parts) => {
    for (const part of parts) (part as HTMLElement).style.contentVisibility = 'visible'
  })
  // The page lets no script in from outside, so the checker is put in by the browser's own door.
  await page.evaluate(AXE)
  const violations = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run: (options: object) => Promise<{ violations: Violation[] }> }
    }
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']
    return (await axe.run({ runOnly: { type: 'tag', values: tags } })).violations
  })
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)
}

it.each([
  { width: 360, height: 740, colorScheme: 'light' as const },
  { width: 360, height: 740, colorScheme: 'dark' as const },
  { width: 800, height: 900, colorScheme: 'light' as const },
  { width: 1280, height: 900, colorScheme: 'dark' as const },
])('no barrier at $width px, $colorScheme', async ({ width, height, colorScheme }) => {
  const { page } = await openPage(browser, { viewport: { width, height }, colorScheme })
  await laid(page)
  await unfold(page)
  await type(page, 'Wall or door behind it', '6000 × 2500 × 4200')
  await page.getByLabel('Where the last joint gapes').selectOption('valley')
  await type(page, 'How wide it gapes', '2.8 mm')
  await page.getByRole('button', { name: 'Look for stars' }).click()
  await page
    .getByRole('button', { name: /^Compare/ })
    .nth(1)
    .click()
  await page
    .getByRole('button', { name: /^Compare/ })
    .nth(2)
    .click()
  await page.getByRole('heading', { name: 'Two compared' }).waitFor()
  const piece = (name: string) => ({ name, mimeType: 'image/svg+xml', buffer: readFileSync(template) })
  await page.getByLabel('Your own sheet furniture').setInputFiles(piece('caution.svg'))
  await page.getByRole('button', { name: 'Take caution.svg away' }).waitFor()
  await page.getByLabel('Your own sheet furniture').setInputFiles(piece('unknown.svg'))
  await page.getByRole('alert').waitFor()
  const sound = await violationsOn(page)
  // Figures of the order before, marked as such, and the work stopped.
  await type(page, 'Kerf', '2.9')
  await stopped(page)
  await page.locator('.before-note').first().waitFor()
  await type(page, 'Points', '2')
  await type(page, 'Wall or door behind it', 'high')
  expect([...sound, ...(await violationsOn(page))]).toEqual([])
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
  await page.context().close()
})

it('moves nothing by itself, whoever asks for less motion', async () => {
  const { page } = await openPage(browser, { reducedMotion: 'reduce' })
  await laid(page)
  const moving = await page.evaluate(
    () =>
      [...document.querySelectorAll('*')].filter((each) => {
        const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(each)
        return animationName !== 'none' || transitionDuration !== '0s' || scrollBehavior === 'smooth'
      }).length,
  )
  expect(moving).toBe(0)
  await page.context().close()
})

it.each(['light', 'dark'] as const)(
  'prints dark on white from a %s screen, without fields',
  async (colorScheme) => {
    const { page } = await openPage(browser, { colorScheme })
    await laid(page)
    await page.emulateMedia({ media: 'print', colorScheme })
    const printed = await page.evaluate(() => ({
      ink: getComputedStyle(document.body).color,
      fields: [...document.querySelectorAll('input, select, button')].filter((each) => each.checkVisibility())
        .length,
      steps: document.querySelectorAll('ol.steps li').length,
    }))
    expect(printed).toEqual({ ink: 'rgb(29, 31, 33)', fields: 0, steps: 3 })
    await page.context().close()
  },
)

it('fits one file of less than 1.5 MB, in signs of one byte, which a browser keeps and reads as such', () => {
  const page = readFileSync(PAGE)
  expect(page.length).toBeLessThan(1_500_000)
  expect(page.every((byte) => byte < 128)).toBe(true)
})

/** What the browser reads as the page's own script, before any part is unpacked. */
const running = (): string => {
  const script = readFileSync(PAGE, 'utf8').match(/<script>(.*?)<\/script>/s)?.[1]
  expect(script).toContain('Starwright')
  return script ?? ''
}

const wantedParts = (page: Page): Promise<string[]> =>
  page.evaluate(() => (globalThis as unknown as { wantedParts: string[] }).wantedParts)

it('unpacks the code for PDF, from the same file, when a PDF is wanted', async () => {
  const { page } = await openPage(browser, { watchParts: true })
  await laid(page)
  expect(await wantedParts(page)).not.toContain('pdfkit.browser.js')
  await saved(page, () => page.getByRole('button', { name: 'Save print-check.pdf' }).click())
  expect(await wantedParts(page)).toContain('pdfkit.browser.js')
  expect(await wantedParts(page)).not.toContain('DejaVuSans.ttf')
  expect(running()).not.toContain('PDFDocument')
  await page.context().close()
})

it('unpacks the code that lays backings on panels when there are backings and panels', async () => {
  const order = `panels: [{ length: 600, width: 400, thickness: 4 }]`
  const hash = `#${new URLSearchParams({ order: `shop: { ${order} }\nstars: [{ points: 5, tip-angle: 45, board-width: 70 }]\n` })}`
  const { page } = await openPage(browser, { watchParts: true, hash })
  await laid(page)
  expect(await wantedParts(page)).not.toContain('plan-panels.js')
  await page.getByLabel('Backing', { exact: true }).selectOption('star')
  await page.getByText(/of that becomes plates/).waitFor()
  expect(await wantedParts(page)).toContain('plan-panels.js')
  expect(await wantedParts(page)).not.toContain('pdfkit.browser.js')
  // A word of the library that finds no-fit polygons.
  expect(running()).not.toContain('Clipper')
  await page.context().close()
})
