import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { laid, orderOf, stopped, type } from './opened.js'
import { pages } from './pages.js'

/* Nothing that the maker did is lost, and nothing old is taken for new. */

const { using } = pages()

/** Backings whose search for room takes some seconds. Invented. */
const LONG_SEARCH = `shop:
  saw: { limit: 60, kerf: 2.4 }
  panels: [{ length: 2440, width: 1220, thickness: 4 }]
stars:
  - name: Market
    points: 8
    tip-angle: 45
    board-width: 60
    quantity: 150
    backing: { shape: disc, inset: 10 }
`

const valueAt = (page: Page, label: string): Promise<string> =>
  page.getByLabel(label, { exact: true }).first().inputValue()

/** Wall, dry fit and order, all changed. */
const work = async (page: Page): Promise<void> => {
  await type(page, 'Wall or door behind it', '900 × 2000 mm')
  await type(page, 'Kerf', '2.6')
  await page.getByLabel('Where the last joint gapes').selectOption('valley')
  await type(page, 'How wide it gapes', '2.8 +- 0.3')
  await page.getByRole('heading', { name: 'Do this, in this order' }).waitFor()
}

describe('undo', () => {
  it('goes back step by step through order, wall and dry fit, and on again', () =>
    using(async (page) => {
      const before = await orderOf(page)
      await work(page)
      const undo = page.getByRole('button', { name: 'Undo' })
      const steps = [
        ['How wide it gapes', ''],
        ['Where the last joint gapes', ''],
        ['Kerf', '2.4'],
        ['Wall or door behind it', ''],
      ] as const
      for (const [label, value] of steps) {
        await undo.click()
        await expect.poll(() => valueAt(page, label)).toBe(value)
      }
      expect(await undo.isDisabled()).toBe(true)
      expect((await orderOf(page)) || before).toBe(before)
      for (let step = 0; step < steps.length; step++) await page.getByRole('button', { name: 'Redo' }).click()
      await expect.poll(() => valueAt(page, 'How wide it gapes')).toBe('2.8 +- 0.3')
      expect(await valueAt(page, 'Kerf')).toBe('2.6')
      expect(await valueAt(page, 'Wall or door behind it')).toBe('900 × 2000 mm')
    }))

  it('takes back in one step what the dry fit taught the saw', () =>
    using(async (page) => {
      await work(page)
      const before = await orderOf(page)
      await page.getByRole('button', { name: 'Plan with this saw as it cuts' }).click()
      await expect.poll(() => valueAt(page, 'The saw was set to')).toBe('31.5')
      await expect.poll(() => orderOf(page)).toContain('bias')
      await page.getByRole('button', { name: 'Undo' }).click()
      await expect.poll(() => valueAt(page, 'The saw was set to')).toBe('')
      await expect.poll(() => orderOf(page)).toBe(before)
    }))
})

describe('a reload', () => {
  it('loses nothing, not even when it follows a change at once', () =>
    using(async (page) => {
      await page
        .getByLabel('Wall or door behind it', { exact: true })
        .evaluate(async (field: HTMLInputElement) => {
          field.value = '900 x 2000 mm'
          field.dispatchEvent(new Event('input', { bubbles: true }))
          field.dispatchEvent(new Event('change', { bubbles: true }))
          await Promise.resolve()
          location.reload()
        })
      await page.waitForURL(/wall=/)
      await page.waitForSelector('.star')
      expect(await valueAt(page, 'Wall or door behind it')).toBe('900 x 2000 mm')
    }))

  it('loses nothing: order, wall, dry fit, the star that is shown and its tone', () =>
    using(async (page) => {
      await work(page)
      await page.getByRole('button', { name: 'Chapel', exact: true }).click()
      await page.getByLabel('Wood, to look at').selectOption('black walnut')
      await expect.poll(() => page.url()).toContain('black+walnut')
      const before = await orderOf(page)
      await page.reload()
      await page.waitForSelector('.star')
      expect(await orderOf(page)).toBe(before)
      expect(await valueAt(page, 'Name')).toBe('Chapel')
      expect(await valueAt(page, 'Wood, to look at')).toBe('black walnut')
      expect(await valueAt(page, 'Kerf')).toBe('2.6')
      expect(await valueAt(page, 'Wall or door behind it')).toBe('900 × 2000 mm')
      await page.getByRole('button', { name: 'Boathouse', exact: true }).click()
      await expect.poll(() => valueAt(page, 'How wide it gapes')).toBe('2.8 +- 0.3')
    }))

  it('loses nothing while changes come thick and fast', () =>
    using(async (page) => {
      const size = page.getByRole('slider', { name: 'Size of the star' })
      await size.focus()
      for (let step = 0; step < 60; step++) await page.keyboard.press('ArrowUp')
      await expect.poll(() => valueAt(page, 'Board width it takes')).toBe('130')
      await expect.poll(() => orderOf(page)).toContain('board-width: 130')
    }))
})

describe('other units', () => {
  it('change no length that was measured or typed', () =>
    using(async (page) => {
      await type(page, 'Wall or door behind it', '900 × 2000')
      await work(page)
      await type(page, 'Wall or door behind it', '900 × 2000')
      await type(page, 'Tip angle of an arm', '45.1')
      await type(page, 'Tip edge of an arm', '98.8; 99')
      const steps = page.locator('section[aria-labelledby="fit-heading"] ol li')
      const before = await steps.allTextContents()
      await page.getByLabel('Lengths in').selectOption('in')
      await expect.poll(() => valueAt(page, 'How wide it gapes')).toBe('2.8 mm +- 0.3 mm')
      expect(await valueAt(page, 'Tip edge of an arm')).toBe('98.8 mm; 99 mm')
      expect(await valueAt(page, 'Tip angle of an arm')).toBe('45.1')
      expect(await valueAt(page, 'Wall or door behind it')).toBe('900 mm × 2000 mm')
      await expect.poll(async () => (await steps.allTextContents())[1]).toContain('in')
      await page.getByLabel('Lengths in').selectOption('mm')
      await expect.poll(() => steps.allTextContents()).toEqual(before)
    }))
})

describe('what was measured', () => {
  it('goes with a star that gets another name, and away with one that is taken away', () =>
    using(async (page) => {
      await work(page)
      await type(page, 'Name', 'Boat星')
      expect(await valueAt(page, 'How wide it gapes')).toBe('2.8 +- 0.3')
      await type(page, 'Name', 'Jetty')
      await page.getByRole('button', { name: 'Jetty', exact: true }).waitFor()
      expect(await valueAt(page, 'How wide it gapes')).toBe('2.8 +- 0.3')
      await page.getByRole('button', { name: 'Take Jetty away' }).click()
      await expect.poll(() => valueAt(page, 'Name')).toBe('Bakery window')
      await type(page, 'Name', 'Jetty')
      expect(await valueAt(page, 'How wide it gapes')).toBe('')
    }))

  it('stays behind when another order is opened, and undo brings it back', () =>
    using(async (page) => {
      await work(page)
      const other = (await orderOf(page)).replace('Winter fair by the lake', 'Another fair')
      const buffer = Buffer.from(other)
      await page
        .getByLabel('Open an order')
        .setInputFiles({ name: 'other.yaml', mimeType: 'text/yaml', buffer })
      await page.getByRole('heading', { level: 1, name: 'Another fair' }).waitFor()
      expect(await valueAt(page, 'How wide it gapes')).toBe('')
      await page.getByRole('button', { name: 'Undo' }).click()
      await expect.poll(() => valueAt(page, 'How wide it gapes')).toBe('2.8 +- 0.3')
    }))
})

describe('figures that are worked out beside', () => {
  const SECTIONS = ['chance-heading', 'wood-heading', 'season-heading', 'paper-heading']
  const notes = (page: Page): Promise<string[]> => page.locator('.before-note').allTextContents()
  const results = (page: Page) => page.locator('[role="group"][aria-busy]')

  it('are marked as those of the order before until the new ones are there', () =>
    using(async (page) => {
      await laid(page)
      expect(await notes(page)).toEqual([])
      await type(page, 'Kerf', '2.9')
      await page.locator('.before-note').first().waitFor()
      for (const section of SECTIONS) {
        const part = page.locator(`section[aria-labelledby="${section}"]`)
        const groups = await part.locator('[role="group"][aria-busy]').all()
        expect(groups.length).toBe(section === 'wood-heading' ? 2 : 1)
        for (const group of groups) {
          expect(await group.locator('.before-note').textContent()).toBe(
            'Being worked out. What stands here is of the order as it was before.',
          )
          expect(await group.getAttribute('aria-busy')).toBe('true')
          expect(await group.getAttribute('aria-label')).toContain('of the order before')
          for (const button of await group.getByRole('button', { name: /^Save/ }).all())
            expect(await button.isDisabled()).toBe(true)
        }
      }
      expect(await page.locator('.doing').textContent()).not.toContain('to print in all')
      await laid(page)
      expect(await notes(page)).toEqual([])
      for (const group of await results(page).all())
        expect(await group.getAttribute('aria-busy')).toBe('false')
    }))

  it('tell how the search for room on panels goes on, and keep its best when it is stopped there', () =>
    using(async (page) => {
      const group = page.getByRole('group', { name: 'Backings on panels' })
      const words = () => group.locator('.told').allTextContents()
      await page.getByLabel('Open an order').setInputFiles({
        name: 'long.yaml',
        mimeType: 'text/yaml',
        buffer: Buffer.from(LONG_SEARCH),
      })
      await group.getByText(/Laying out: Market: \d+ backings on a panel, step/).waitFor()
      await group.getByRole('button', { name: /^Stop working out/ }).click()
      await group.getByText(/^Stopped: the search was ended before its last step/).waitFor()
      await laid(page)
      const best = await words()
      expect(best[0]).toMatch(/[1-9]\d* panels? of 2440.0 mm × 1220.0 mm/)
      expect(await group.getByRole('img').count()).toBeGreaterThan(0)
      await group.getByRole('button', { name: 'Search to the end' }).click()
      await expect.poll(async () => (await words()).join(' '), { timeout: 60_000 }).not.toContain('Stopped:')
      expect(await group.getByRole('button', { name: 'Search to the end' }).count()).toBe(0)
    }))

  it('are marked when the work was stopped, and worked out when it is taken up', () =>
    using(async (page) => {
      await laid(page)
      await type(page, 'Kerf', '2.9')
      await stopped(page)
      await expect.poll(async () => (await notes(page))[0]).toContain('Not worked out: the work was stopped')
      expect(await results(page).first().getAttribute('aria-busy')).toBe('false')
      await page.getByRole('button', { name: 'Lay the pages out' }).click()
      await laid(page)
      expect(await notes(page)).toEqual([])
    }))

  it('stay those of the plan that is shown while the order has mistakes', () =>
    using(async (page) => {
      await laid(page)
      await type(page, 'Kerf', 'wide')
      await page.getByText('Mend this first.').waitFor()
      expect(await notes(page)).toEqual([])
      expect(await page.locator('button.first').isDisabled()).toBe(true)
    }))
})
