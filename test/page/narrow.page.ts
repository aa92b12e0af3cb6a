import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { laid, orderOf, type } from './opened.js'
import { pages } from './pages.js'

const { using } = pages()
const PHONE = { viewport: { width: 360, height: 740 } }

/** A part that is out of sight is laid out when it comes into sight. */
const shown = async (page: Page, heading: string): Promise<void> => {
  await page.locator(`[aria-labelledby="${heading}-heading"]`).scrollIntoViewIfNeeded()
  await page.waitForTimeout(200)
}

it('a phone shows every column of the seasons, and the whole of the title field', () =>
  using(async (page) => {
    await laid(page)
    await shown(page, 'season')
    const table = page.getByRole('region', { name: /how the wood moves/ })
    expect(await table.getByRole('columnheader').allTextContents()).toEqual(['workshop', 'winter', 'summer'])
    expect(await table.getByRole('rowheader').count()).toBe(6)
    expect(await table.evaluate((part) => part.scrollWidth - part.clientWidth)).toBe(0)
    const [title, order] = await Promise.all(
      ['#at-title', '#open'].map(async (field) => (await page.locator(field).boundingBox())?.width),
    )
    expect(title).toBe(order)
  }, PHONE))

it('as many sheets are told as the map shows, those for notes alone apart', () =>
  using(async (page) => {
    await laid(page)
    await shown(page, 'paper')
    const drawings = await page.locator('figure.laid').evaluateAll((figures) =>
      figures.map((figure) => ({
        told: figure.querySelector('figcaption')?.textContent ?? '',
        mapped: [...figure.querySelectorAll('text')].filter(({ textContent }) =>
          /^\d+[A-Z]$/.test(textContent),
        ).length,
      })),
    )
    expect(drawings.length).toBeGreaterThan(10)
    let notes = 0
    for (const { told, mapped } of drawings) {
      const apart = /(one|\d+) of them for notes alone/.exec(told)?.[1] ?? '0'
      const notesOnly = apart === 'one' ? 1 : Number(apart)
      expect(mapped + notesOnly, told).toBe(Number(/(\d+) sheets?/.exec(told)?.[1]))
      notes += notesOnly
    }
    expect(notes).toBeGreaterThan(0)
  }))

it('a print says which star it is, and which others there are', () =>
  using(async (page) => {
    const says = page.getByText('This print shows Chapel, star 3 of 3.')
    await page.getByRole('button', { name: 'Chapel', exact: true }).click()
    await expect.poll(() => says.count()).toBe(1)
    expect(await says.isVisible()).toBe(false)
    await page.emulateMedia({ media: 'print' })
    expect(await says.isVisible()).toBe(true)
    expect(await says.textContent()).toContain('Boathouse, Bakery window')
  }))

it('angles typed with commas between are a list of the order', () =>
  using(async (page) => {
    await type(page, 'It clicks in at, degrees', '0, 15, 22,5, 45')
    const field = page.getByLabel('It clicks in at, degrees')
    await expect.poll(() => field.inputValue()).toBe('0 15 22.5 45')
    expect(await field.getAttribute('aria-invalid')).toBe('false')
    await expect.poll(() => orderOf(page)).toContain('detents: [ 0, 15, 22.5, 45 ]')
  }))
