import type { Locator, Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { orderOf } from './opened.js'
import { pages } from './pages.js'

const { using } = pages()

const SIZE = 'Size of the star, centre to tip'
const TIP = 'Tip angle, slimmer or fatter'
const grip = (page: Page, name: string): Locator => page.getByRole('slider', { name })

const middleOf = async (of: Locator): Promise<{ x: number; y: number }> => {
  const box = await of.boundingBox()
  if (!box) throw new Error('not in sight')
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 }
}

/** Takes hold of a grip and moves it by so many pixels, in steps as a hand does; it is not let go. */
const pullOn = async (
  page: Page,
  name: string,
  right: number,
  down: number,
): Promise<{ x: number; y: number }> => {
  const from = await middleOf(grip(page, name))
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  for (let part = 1; part <= 8; part++) {
    await page.mouse.move(from.x + (right * part) / 8, from.y + (down * part) / 8)
    await page.waitForTimeout(20)
  }
  return { x: from.x + right, y: from.y + down }
}

const told = async (page: Page, name: string): Promise<{ now: number; least: number; most: number }> => {
  const [now, least, most] = await Promise.all(
    ['now', 'min', 'max'].map(async (of) => Number(await grip(page, name).getAttribute(`aria-value${of}`))),
  )
  return { now: now ?? Number.NaN, least: least ?? Number.NaN, most: most ?? Number.NaN }
}

/** The limits are told when the page has rested. */
const rested = (page: Page): Promise<void> =>
  expect.poll(async () => (await told(page, TIP)).least).toBeGreaterThan(0)

const mistakes = (page: Page): Promise<string | null> => page.getByRole('status').first().textContent()

const opened = (stars: string): { hash: string } => ({
  hash: `#${new URLSearchParams({ order: `units: mm\nshop: { saw: { limit: 45, kerf: 2.4, reads-to: 0.5, crosscut: 200 } }\nstars:\n  - ${stars}\n` })}`,
})
const BACKED = opened(
  '{ points: 5, tip-angle: 45, board-width: 70, thickness: 19, chamfer: 3, backing: { shape: star, inset: 12, thickness: 4 } }',
)

describe('a grip', () => {
  it.each([
    [SIZE, 0, 400, 'least'],
    [TIP, -300, 400, 'least'],
    [TIP, 300, -400, 'most'],
  ] as const)('%s, pulled by %i and %i, halts at the %s that the order takes', (name, right, down, end) =>
    using(async (page) => {
      await rested(page)
      await pullOn(page, name, right, down)
      await page.mouse.up()
      const { now, [end]: limit } = await told(page, name)
      // A valley is pulled as far as there is room for the finger.
      if (name === SIZE || end === 'most') expect(Math.abs(now - limit)).toBeLessThanOrEqual(1)
      else expect(now).toBeGreaterThanOrEqual(limit)
      expect(await mistakes(page)).toBe('')
    }, BACKED),
  )

  it.each([
    [SIZE, 'PageDown', 'least'],
    [TIP, 'PageDown', 'least'],
    [TIP, 'PageUp', 'most'],
  ] as const)('%s, moved by %s, halts at the %s that the order takes', (name, key, end) =>
    using(async (page) => {
      await rested(page)
      const limit = (await told(page, name))[end]
      for (let times = 0; times < 16; times++) await grip(page, name).press(key)
      await expect.poll(async () => (await told(page, name)).now).toBe(limit)
      expect(await mistakes(page)).toBe('')
    }, BACKED),
  )
})

describe('the tip', () => {
  it('halts at the largest star the saw cuts, as the valley does, and goes on when pulled further', () =>
    using(async (page) => {
      const width = () => page.getByLabel('Board width it takes', { exact: true }).inputValue()
      await grip(page, SIZE).press('End')
      // 45°: the first cut runs at 45° through the board, 141 of the 200 mm it reaches being 199.4 mm.
      await expect.poll(width).toBe('141')
      await pullOn(page, SIZE, 0, -20)
      expect(await width()).toBe('141')
      await page.mouse.up()
      await pullOn(page, SIZE, 0, -60)
      expect(Number(await width())).toBeGreaterThan(141)
      await page.mouse.up()
      await expect
        .poll(() => page.locator('#star-heading ~ .warnings').textContent())
        .toContain('the saw reaches 200.0 mm')
    }, opened('{ points: 5, tip-angle: 45, board-width: 110 }')))

  it.each([360, 1280])(
    'stays under the finger while there is room, and the star in sight beyond, at %i px',
    (width) =>
      using(
        async (page) => {
          const star = page.locator('svg.star')
          await star.scrollIntoViewIfNeeded()
          const finger = await pullOn(page, SIZE, 0, -15)
          const at = await middleOf(grip(page, SIZE))
          // To the nearest millimetre of board, which moves the tip by two.
          expect(Math.abs(at.y - finger.y)).toBeLessThan(4)
          for (let moved = 1; moved <= 10; moved++) {
            await page.mouse.move(finger.x, finger.y - 12 * moved)
            await page.waitForTimeout(20)
          }
          const [box, outline, ring] = await Promise.all(
            [star, page.locator('svg.star .outline'), grip(page, SIZE).locator('.grip-ring')].map((each) =>
              each.boundingBox(),
            ),
          )
          if (!box || !outline || !ring) throw new Error('not in sight')
          for (const inside of [outline, ring]) {
            expect(inside.x).toBeGreaterThanOrEqual(box.x)
            expect(inside.y).toBeGreaterThanOrEqual(box.y)
            expect(inside.x + inside.width).toBeLessThanOrEqual(box.x + box.width)
            expect(inside.y + inside.height).toBeLessThanOrEqual(box.y + box.height)
          }
          await page.mouse.up()
          expect(await mistakes(page)).toBe('')
          expect(orderOf(page)).toMatch(/board-width: 1\d\d/)
        },
        { viewport: { width, height: 800 } },
      ),
  )
})

it('the valley stays under the finger, of a star whose size is that of its boards too', () =>
  using(async (page) => {
    const finger = await pullOn(page, TIP, 18, -25)
    const at = await middleOf(grip(page, TIP))
    // To the nearest half degree.
    expect(Math.hypot(at.x - finger.x, at.y - finger.y)).toBeLessThan(5)
    await page.mouse.up()
  }, BACKED))
