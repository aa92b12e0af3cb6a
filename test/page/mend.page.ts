import { describe, expect, it } from 'vitest'
import { orderOf, PAGE, type, unfold } from './opened.js'
import { pages } from './pages.js'

const { using } = pages()

const TWO = `units: mm
shop: { saw: { limit: 45, kerf: 2.4, crosscut: 150 }, boards: [{ width: 95, thickness: 19, length: 2400 }] }
stars:
  - { name: Jetty, points: 24, tip-angle: 150, across: 300 }
  - { name: Pier, points: 5, tip-angle: 45, board-width: 70 }
`
const hash = `#${new URLSearchParams({ order: TWO })}`

describe('a mistake', () => {
  it('is told by its field, which is one press away, also where it is folded away', () =>
    using(
      async (page) => {
        await unfold(page)
        await page.locator('[id="at-shop-cutter-bed-width"]').fill('5 mm')
        await page.locator('[id="at-shop-cutter-bed-width"]').press('Tab')
        await page.locator('details').evaluateAll((all) => {
          for (const each of all) (each as HTMLDetailsElement).open = false
        })
        const problems = page.locator('.problems li')
        await expect.poll(() => problems.count()).toBe(2)
        expect(await problems.allTextContents()).toEqual([
          expect.stringMatching(/^Bed, across: Given "5 mm"\. Allowed/),
          'Bed, along: Nothing is given. This cannot be left empty.',
        ])
        await page.getByRole('button', { name: 'Bed, across' }).first().click()
        await expect
          .poll(() => page.evaluate(() => document.activeElement?.id))
          .toBe('at-shop-cutter-bed-width')
        expect(await page.locator('[id="at-shop-cutter-bed-width"]').isVisible()).toBe(true)
      },
      { hash },
    ))

  it('leads to its field also when the page is opened with it', () =>
    using(
      async (page) => {
        await page.getByRole('button', { name: 'Kerf', exact: true }).click()
        await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('at-shop-saw-kerf')
      },
      {
        hash: `${hash.replace('kerf%3A+2.4', 'kerf%3A+99')}&${new URLSearchParams({ before: TWO, 'before-stars': '0 1' })}`,
      },
    ))

  it('of a star that is not shown brings the star', () =>
    using(
      async (page) => {
        await page.getByRole('button', { name: 'Pier', exact: true }).click()
        await type(page, 'Board width it takes', '-3')
        await page.getByRole('button', { name: 'Jetty', exact: true }).click()
        await page.getByRole('button', { name: 'Pier, Board width it takes' }).click()
        await expect
          .poll(() => page.evaluate(() => document.activeElement?.id))
          .toBe('at-stars-1-board-width')
      },
      { hash: hash.replace('across%3A+300', 'board-width%3A+60') },
    ))

  it('of a board that has no width is told at its width', () =>
    using(
      async (page) => {
        const width = page.locator('[id="at-shop-boards-0-width"]')
        await width.fill('')
        await width.press('Tab')
        await expect.poll(() => width.getAttribute('aria-invalid')).toBe('true')
        expect(await page.locator('[id="at-shop-boards-0-width-problem"]').textContent()).toContain(
          'cannot be left empty',
        )
        await page.getByRole('button', { name: 'Undo' }).click()
        await expect.poll(() => width.getAttribute('aria-invalid')).toBe('false')
      },
      { hash },
    ))

  it('of two equal names is told where the name was typed', () =>
    using(
      async (page) => {
        await type(page, 'Name', 'Pier')
        const name = page.locator('[id="at-stars-0-name"]')
        await expect.poll(() => name.getAttribute('aria-invalid')).toBe('true')
        expect(await page.locator('[id="at-stars-0-name-problem"]').textContent()).toContain(
          'Two stars have this name',
        )
      },
      { hash },
    ))
})

describe('the grips', () => {
  it('are 44 pixels wide on a phone and lie apart, also of 24 points at 150 degrees', () =>
    using(
      async (page) => {
        const boxes = []
        for (const grip of await page.getByRole('slider').all()) boxes.push(await grip.boundingBox())
        const [tip, valley] = boxes
        if (!tip || !valley) throw new Error('no grips')
        for (const { width, height } of [tip, valley]) {
          expect(width).toBeGreaterThanOrEqual(43.9)
          expect(height).toBeGreaterThanOrEqual(43.9)
        }
        expect(Math.hypot(tip.x - valley.x, tip.y - valley.y)).toBeGreaterThan(tip.width)
      },
      { hash, viewport: { width: 360, height: 740 } },
    ))

  it('go to the ends of what the saw cuts with Home and End', () =>
    using(
      async (page) => {
        const tip = page.locator('[id="at-stars-0-tip-angle"]')
        await page.getByRole('slider', { name: 'Tip angle, slimmer or fatter' }).press('Home')
        const least = Number(await tip.inputValue())
        await page.getByRole('slider', { name: 'Tip angle, slimmer or fatter' }).press('End')
        expect(Number(await tip.inputValue())).toBeGreaterThan(least)
        await page.getByRole('slider', { name: 'Size of the star, centre to tip' }).press('End')
        expect(await page.locator('.star + .live + .warnings').count()).toBe(0)
        // Nothing is beyond the saw; one step more is.
        await page.getByRole('slider', { name: 'Size of the star, centre to tip' }).press('PageUp')
        await expect
          .poll(() => page.locator('section[aria-labelledby="star-heading"] .warnings').textContent())
          .toContain('the saw reaches 150.0 mm')
      },
      { hash },
    ))
})

it('what is typed and not yet left is there after a reload', () =>
  using(
    async (page) => {
      await page.locator('[id="at-stars-0-across"]').fill('310')
      await page.reload()
      await page.waitForSelector('.star')
      const across = page.locator('[id="at-stars-0-across"]')
      expect(await across.inputValue()).toBe('310')
      await across.press('Tab')
      await expect.poll(() => orderOf(page)).toContain('across: 310')
      await page.reload()
      await page.waitForSelector('.star')
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('')
    },
    { hash },
  ))

it('what is typed in a folded part is there after a reload, unfolded, and taken when it is left', () =>
  using(
    async (page) => {
      const hands = page.locator('[id="at-shop-jig-stock-hands"]')
      await unfold(page)
      await hands.fill('300')
      await page.reload()
      await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('at-shop-jig-stock-hands')
      expect(await hands.isVisible()).toBe(true)
      expect(await hands.inputValue()).toBe('300')
      await hands.press('Tab')
      await expect.poll(() => orderOf(page)).toContain('hands: 300')
    },
    { hash },
  ))

it('a new order has nothing of the old one but its shop, where that is wanted; undo brings the old one back', () =>
  using(async (page) => {
    const before = await page.locator('h1').textContent()
    await unfold(page)
    await page.getByRole('button', { name: 'For this shop a new order' }).click()
    await expect.poll(() => page.locator('h1').textContent()).toBe('Star 1')
    const inShop = await orderOf(page)
    expect(inShop).toContain('boards:')
    expect(inShop).not.toMatch(/title|space|Boathouse/)
    await unfold(page)
    await page.getByRole('button', { name: 'For another shop a new order' }).click()
    await expect.poll(() => orderOf(page)).not.toContain('shop')
    await page.reload()
    await page.waitForSelector('.star')
    expect(await page.locator('.problems li').count()).toBe(0)
    expect(await page.url()).toContain(PAGE.href)
    await page.goto(PAGE.href)
    await page.waitForSelector('.star')
    await unfold(page)
    await page.getByRole('button', { name: 'For another shop a new order' }).click()
    await page.getByRole('button', { name: 'Undo' }).click()
    await expect.poll(() => page.locator('h1').textContent()).toBe(before)
  }))
