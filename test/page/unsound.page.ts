import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { openBrowser, orderOf, PAGE, type, unfold } from './opened.js'
import { pages } from './pages.js'

/* While an order has mistakes, only what is its own is drawn and told: a saw set by another star cuts wrong arms. */

const { using } = pages()

const ONE = `units: mm
shop: { saw: { limit: 60, kerf: 2.4 } }
stars:
  - { name: Boathouse, points: 7, tip-angle: 38, board-width: 60 }
`
const hashOf = (kept: Record<string, string>): string => `#${new URLSearchParams(kept)}`

const told = async (page: Page): Promise<string> =>
  (await page.locator('section .live').first().textContent()) ?? ''

const undo = (page: Page) => page.getByRole('button', { name: 'Undo' })

describe('an order with a mistake', () => {
  it('is drawn as it was before also after a reload, and undo goes back to that', () =>
    using(
      async (page) => {
        const before = await told(page)
        await type(page, 'Kerf', '99')
        await page.locator('.problems li').first().waitFor()
        // Wherever one looks it stands there that these are old figures, and nothing is pulled unseen.
        await page.locator('#finish-heading').scrollIntoViewIfNeeded()
        const bar = page.getByRole('complementary', { name: 'Figures of the order before' })
        const box = await bar.boundingBox()
        const { height } = page.viewportSize() ?? { height: 0 }
        expect((box?.y ?? 0) + (box?.height ?? 0)).toBeCloseTo(height, 0)
        expect(await page.getByRole('slider').count()).toBe(0)
        await bar.getByRole('button').click()
        expect(await page.evaluate(() => document.activeElement?.id)).toBe('problems')
        await page.reload()
        await page.waitForSelector('[aria-labelledby="finish-heading"]')
        expect(await told(page)).toBe(before)
        expect(before).toMatch(/^Boathouse, one star/)
        expect(await page.locator('h1').textContent()).not.toContain('fair')
        await undo(page).click()
        await expect.poll(() => page.locator('.problems li').count()).toBe(0)
        expect(orderOf(page)).toBe(ONE)
        expect(page.url()).not.toContain('before=')
        expect(await bar.count()).toBe(0)
        expect(await page.getByRole('slider').count()).toBe(2)
      },
      { hash: hashOf({ order: ONE }) },
    ))

  it('from a link shows nothing but its text until it is mended there', async () => {
    const browser = await openBrowser()
    try {
      const page = await browser.newPage()
      const wrong = ONE.replace('tip-angle: 38', 'tip-angle: 380')
      await page.goto(`${PAGE.href}${hashOf({ order: wrong })}`)
      const text = page.getByLabel('Text of the order')
      expect(await text.inputValue()).toBe(wrong)
      expect(await page.locator('section').count()).toBe(1)
      expect(await page.locator('.problems li').allTextContents()).toEqual([
        expect.stringMatching(/^stars\[0\]\.tip-angle, line 4: given 380\./),
      ])
      await page.getByRole('button', { name: 'stars[0].tip-angle, line 4' }).click()
      expect(
        await text.evaluate((field: HTMLTextAreaElement) =>
          field.value.slice(field.selectionStart, field.selectionEnd),
        ),
      ).toBe('  - { name: Boathouse, points: 7, tip-angle: 380, board-width: 60 }')
      await text.fill('stars: [{')
      await page.reload()
      expect(await text.inputValue()).toBe('stars: [{')
      await text.fill('stars: [')
      await page.getByRole('button', { name: 'Look at it again' }).click()
      await expect.poll(() => page.locator('.problems li').first().textContent()).toContain('not YAML')
      await page.reload()
      expect(await text.inputValue()).toBe('stars: [')
      await text.fill(ONE)
      await page.getByRole('button', { name: 'Look at it again' }).click()
      await page.waitForSelector('[aria-labelledby="finish-heading"]')
      expect(await told(page)).toMatch(/^Boathouse/)
      expect(await text.count()).toBe(0)
    } finally {
      await browser.close()
    }
  })

  it('opened from a file shows nothing of the order before', () =>
    using(async (page) => {
      const wrong = ONE.replace('points: 7', 'points: 2')
      await page
        .getByLabel('Open an order')
        .setInputFiles({ name: 'order.yaml', mimeType: 'text/yaml', buffer: Buffer.from(wrong) })
      await page.getByLabel('Text of the order').waitFor()
      expect(await page.locator('section').count()).toBe(1)
      await undo(page).click()
      await page.waitForSelector('[aria-labelledby="finish-heading"]')
    }))

  it('has its units as they are written, in which its fields are read', () =>
    using(
      async (page) => {
        await type(page, 'Kerf', '99')
        await page.getByLabel('Lengths in').selectOption('in')
        await expect.poll(() => orderOf(page)).toContain('units: in')
        expect(await page.getByLabel('Lengths in').inputValue()).toBe('in')
        expect(orderOf(page)).toContain('board-width: 60 mm')
        expect(await told(page)).toContain(' in across')
        await type(page, 'Board width it takes', '3')
        await type(page, 'Wall or door behind it', '40 x 80')
        await page.getByLabel('Lengths in').selectOption('mm')
        await expect.poll(() => orderOf(page)).toContain('board-width: 3 in')
        expect(await page.getByLabel('Wall or door behind it').inputValue()).toBe('40 in x 80 in')
        await type(page, 'Kerf', '2.4')
        await expect.poll(() => told(page)).toContain('boards 76.2 mm wide')
      },
      { hash: hashOf({ order: ONE }) },
    ))

  it('lists the stars that are written; one that was never without mistakes is mended in the text', () =>
    using(
      async (page) => {
        await page.getByRole('button', { name: 'Add a star' }).click()
        await expect.poll(() => told(page)).toMatch(/^Star 2/)
        await type(page, 'Tip angle, degrees', '170')
        await page.reload()
        await page.waitForSelector('[aria-labelledby="finish-heading"]')
        expect(await told(page)).toMatch(/^Star 2/)
        expect(await page.getByLabel('Tip angle, degrees').inputValue()).toBe('170')
        // What goes by the star's figures would write old ones.
        expect(await page.getByLabel('Size by').isDisabled()).toBe(true)
        expect(await page.getByLabel('Shape', { exact: true }).isDisabled()).toBe(true)
        // The plan has two stars, the order three.
        await page.getByRole('button', { name: 'Add a star' }).click()
        await page.getByLabel('Text of the order').waitFor()
        await page.getByRole('button', { name: 'Boathouse', exact: true }).click()
        await expect.poll(() => told(page)).toMatch(/^Boathouse/)
        await page.getByRole('button', { name: 'Star 2', exact: true }).click()
        await expect.poll(() => told(page)).toMatch(/^Star 2/)
        await type(page, 'Tip angle, degrees', '40')
        await expect.poll(() => page.locator('.problems li').count()).toBe(0)
        await page.getByRole('button', { name: 'Boathouse', exact: true }).click()
        await page.getByRole('button', { name: 'Take Boathouse away' }).click()
        await expect.poll(() => told(page)).toMatch(/^Star 2/)
        expect(
          await page
            .getByRole('navigation', { name: 'Stars of the order' })
            .getByRole('button')
            .allTextContents(),
        ).toEqual(['Star 2', 'Star 3', 'Add a star', 'Take Star 2 away'])
      },
      { hash: hashOf({ order: ONE }) },
    ))
})

describe('what is being typed', () => {
  it('goes into no other order that is opened meanwhile', () =>
    using(
      async (page) => {
        const field = page.getByLabel('Board width it takes', { exact: true })
        await field.fill('33')
        const other = ONE.replace('Boathouse', 'Chapel').replace('60 }', '72 }')
        await page.evaluate(
          (hash) => {
            location.hash = hash
          },
          hashOf({ order: other }),
        )
        await expect.poll(() => told(page)).toMatch(/^Chapel/)
        expect(await field.inputValue()).toBe('72')
        // Of the star that was shown when it was typed, whatever is shown when it is taken.
        await field.fill('44')
        await page
          .getByRole('button', { name: 'Add a star' })
          .evaluate((button: HTMLButtonElement) => button.click())
        await expect.poll(() => orderOf(page)).toMatch(/Chapel[^\n]*board-width: 44/)
        expect(await field.inputValue()).toBe('70')
        await field.fill('45')
        await page.goto(`${PAGE.href}?other${hashOf({ order: ONE })}`)
        await page.waitForSelector('[aria-labelledby="finish-heading"]')
        expect(await field.inputValue()).toBe('60')
        expect(orderOf(page)).toBe(ONE)
      },
      { hash: hashOf({ order: ONE }) },
    ))

  it('nor what is typed in the text of an order with mistakes', () =>
    using(
      async (page) => {
        const wrong = ONE.replace('points: 7', 'points: two')
        await page
          .getByLabel('Open an order')
          .setInputFiles({ name: 'order.yaml', mimeType: 'text/yaml', buffer: Buffer.from(wrong) })
        await page.getByLabel('Text of the order').fill('typed')
        await page.evaluate(
          (hash) => {
            location.hash = hash
          },
          hashOf({ order: ONE }),
        )
        await page.waitForSelector('[aria-labelledby="finish-heading"]')
        expect(orderOf(page)).toBe(ONE)
      },
      { hash: hashOf({ order: ONE }) },
    ))

  it('may begin like an alias of YAML', () =>
    using(
      async (page) => {
        await type(page, 'A line of your own', '*oak')
        await expect.poll(() => orderOf(page)).toContain('note: "*oak"')
        await type(page, 'Board width it takes', '*r')
        await expect.poll(() => page.locator('.problems li').textContent()).toContain('Given "*r"')
      },
      { hash: hashOf({ order: ONE }) },
    ))
})

describe('what is not taken', () => {
  it('is not what a reload finds: a link cut off, no order at all', () =>
    using(
      async (page) => {
        await type(page, 'Kerf', '2.7')
        const own = page.url()
        await page.evaluate(() => {
          location.hash = '#order=a%3A%20%5Bb'
        })
        await page.getByText('Not opened, nothing changed').waitFor()
        expect(page.url()).toBe(own)
        await page.evaluate(() => {
          location.hash = ''
        })
        await expect.poll(() => page.url()).toBe(own)
        await page.reload()
        await page.waitForSelector('[aria-labelledby="finish-heading"]')
        expect(await page.getByLabel('Kerf', { exact: true }).inputValue()).toBe('2.7')
      },
      { hash: hashOf({ order: ONE }) },
    ))
})

it('values that an order shares by an alias are each its own on the page', () =>
  using(
    async (page) => {
      await page.getByRole('button', { name: 'Weir', exact: true }).click()
      expect(await page.getByLabel('Centre to tip', { exact: true }).inputValue()).toBe('200')
      await type(page, 'Centre to tip', '150')
      await page.getByRole('button', { name: 'Sluice', exact: true }).click()
      expect(await page.getByLabel('Centre to tip', { exact: true }).inputValue()).toBe('200')
      await page.getByRole('button', { name: 'Take Sluice away' }).click()
      await expect.poll(() => orderOf(page)).not.toContain('Sluice')
      expect(await page.locator('.problems li').count()).toBe(0)
    },
    {
      hash: hashOf({
        order: `# shared
stars:
  - { name: Sluice, points: 5, tip-angle: 45, radius: &r 200 } # the first
  - { name: Weir, points: 6, tip-angle: 50, radius: *r }
`,
      }),
    },
  ))

describe('a field that cannot be left empty', () => {
  const EVERY = `units: mm
shop:
  saw: { limit: 60, kerf: 2.4 }
  cutter: { kind: laser, bed: { width: 700, length: 500 } }
  paper: { printed: { across: 149.5, along: 150 } }
  boards: [{ width: 95, length: 2400 }]
  panels: [{ length: 900, width: 600 }]
stars:
  - { name: Boathouse, points: 7, tip-angle: 38, across: 400 }
`
  it('says so itself, and nothing beside it does', () =>
    using(
      async (page) => {
        await unfold(page)
        const fields = {
          Points: 'at-stars-0-points',
          'Tip angle, degrees': 'at-stars-0-tip-angle',
          'Width across': 'at-stars-0-across',
          'Bed, across': 'at-shop-cutter-bed-width',
          'Bed, along': 'at-shop-cutter-bed-length',
          'Print check, across': 'at-shop-paper-printed-across',
          'Print check, along': 'at-shop-paper-printed-along',
          'Board 1: True width': 'at-shop-boards-0-width',
          'Board 1: Length': 'at-shop-boards-0-length',
          'Panel 1: Length': 'at-shop-panels-0-length',
          'Panel 1: Width': 'at-shop-panels-0-width',
        }
        for (const [label, id] of Object.entries(fields)) {
          const field = page.locator(`[id="${id}"]`)
          await field.fill('')
          await field.press('Tab')
          await expect
            .poll(() => page.locator('.problems li').allTextContents(), { message: label })
            .toEqual([`${label}: Nothing is given. This cannot be left empty.`])
          expect(
            await page.locator('[aria-invalid="true"]').evaluateAll((all) => all.map((each) => each.id)),
          ).toEqual([id])
          await undo(page).click()
          await expect.poll(() => page.locator('.problems li').count()).toBe(0)
        }
      },
      { hash: hashOf({ order: EVERY }) },
    ))
})
