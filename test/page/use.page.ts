import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { starwright } from '../cli/starwright.js'
import { archiveAsMade } from './as-made.js'
import { EXAMPLE, laid, PAGE, saved, type } from './opened.js'
import { pages } from './pages.js'

const { folder, using } = pages()

const summary = async (page: Page): Promise<string> =>
  (await page.locator('section .live').first().textContent()) ?? ''

/** Pulls a grip by so many pixels. */
const pull = async (page: Page, name: string, right: number, down: number): Promise<void> => {
  const box = await page.getByRole('slider', { name }).boundingBox()
  if (!box) throw new Error('no grip')
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x + right / 2, y + down / 2)
  await page.mouse.move(x + right, y + down)
  await page.mouse.up()
}

describe('the star', () => {
  it('grows by pulling its tip; one undo brings it back', () =>
    using(async (page) => {
      const before = await summary(page)
      expect(before).toContain('273.1 mm across')
      await pull(page, 'Size of the star, centre to tip', 0, -60)
      expect(
        Number(await page.getByLabel('Board width it takes', { exact: true }).inputValue()),
      ).toBeGreaterThan(80)
      await expect.poll(() => summary(page)).not.toBe(before)
      await page.getByRole('button', { name: 'Undo' }).click()
      await expect.poll(() => summary(page)).toBe(before)
      expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true)
      await page.getByRole('button', { name: 'Redo' }).click()
      await expect.poll(() => summary(page)).not.toBe(before)
    }))

  it('is pulled by a finger, and the page stays where it is', () =>
    using(
      async (page) => {
        const grip = page.getByRole('slider', { name: 'Size of the star, centre to tip' })
        await grip.scrollIntoViewIfNeeded()
        const box = await grip.boundingBox()
        if (!box) throw new Error('no grip')
        const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
        const scrolled = await page.evaluate(() => window.scrollY)
        const finger = await page.context().newCDPSession(page)
        const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', up: number) =>
          finger.send('Input.dispatchTouchEvent', {
            type,
            touchPoints: type === 'touchEnd' ? [] : [{ x, y: y - up }],
          })
        await touch('touchStart', 0)
        const widths: number[] = []
        for (let up = 4; up <= 40; up += 4) {
          await touch('touchMove', up)
          await page.waitForTimeout(30)
          widths.push(Number(/([\d.]+) mm across/.exec(await summary(page))?.[1]))
        }
        await touch('touchEnd', 40)
        // All of the way, not only until the browser takes the finger for scrolling.
        for (const [index, width] of widths.entries())
          expect(width).toBeGreaterThan(widths[index - 1] ?? 273.1)
        expect(await page.evaluate(() => window.scrollY)).toBe(scrolled)
      },
      { viewport: { width: 360, height: 720 }, hasTouch: true, isMobile: true },
    ))

  it('grows fatter by pulling its valley outwards, in steps of the saw', () =>
    using(async (page) => {
      await pull(page, 'Tip angle, slimmer or fatter', 30, -42)
      const tip = Number(await page.getByLabel('Tip angle, degrees').inputValue())
      expect(tip).toBeGreaterThan(50)
      expect(tip % 0.5).toBe(0)
      await expect.poll(() => summary(page)).toContain(`tip ${tip}°`)
    }))

  it('is moved by keys alone', () =>
    using(async (page) => {
      const size = page.getByRole('slider', { name: 'Size of the star' })
      await size.focus()
      await size.press('ArrowUp')
      await expect.poll(() => size.getAttribute('aria-valuetext')).toBe('145.7 mm')
      await expect
        .poll(() => page.getByLabel('Board width it takes', { exact: true }).inputValue())
        .toBe('71')
      await size.press('PageDown')
      await expect
        .poll(() => page.getByLabel('Board width it takes', { exact: true }).inputValue())
        .toBe('61')
      const tip = page.getByRole('slider', { name: 'Tip angle' })
      await tip.focus()
      await tip.press('ArrowRight')
      await expect.poll(() => tip.getAttribute('aria-valuetext')).toBe('45.5°')
    }))

  it('takes fractions as people write them, and shows every number anew in other units', () =>
    using(async (page) => {
      await page.getByLabel('Lengths in').selectOption('in')
      // Bare millimetres stay what they were: the star has not changed.
      await expect
        .poll(() => page.getByLabel('Board width it takes', { exact: true }).inputValue())
        .toBe('70 mm')
      await expect.poll(() => summary(page)).toContain('10 3/4 in across')
      await type(page, 'Board width it takes', '3-1/2')
      await expect.poll(() => summary(page)).toContain('boards 3 1/2 in wide')
      await page.getByLabel('Lengths in').selectOption('mm')
      await expect
        .poll(() => page.getByLabel('Board width it takes', { exact: true }).inputValue())
        .toBe('3-1/2 in')
      await expect.poll(() => summary(page)).toContain('boards 88.9 mm wide')
    }))
})

describe('mistakes', () => {
  // The words are the command line's: both come from one reader.
  it.each([
    ['Points', '2'],
    ['Points', 'seven'],
    ['How many', '0'],
    ['Board width it takes', '-3'],
    ['Board width it takes', '3 1/0'],
    ['Thickness of the arms', '<script>alert(1)</script>'],
    ['Chamfer', 'NaN'],
    ['Saw stops at, degrees', '1e9'],
    ['Kerf', '99999999'],
    ['Scale reads to, degrees', '0'],
    ['Longest crosscut', '[1, 2]'],
    ['Backing stays inside by', '{ a: b }'],
    ['Roll, its width', '../../x'],
    ['Print check, across', '120'],
    ['Name', 'Boat星'],
  ])('%s %s is told at the field in the words of the command line; nothing is lost', (label, text) =>
    using(async (page) => {
      const before = await summary(page)
      const field = page.getByLabel(label, { exact: true }).first()
      await type(page, label, text)
      await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true')
      const told = await page
        .locator(`[id="${await field.getAttribute('id')}-problem"] span`)
        .allTextContents()
      const order = new URLSearchParams(new URL(page.url()).hash.slice(1)).get('order') ?? ''
      const file = join(folder, 'mistake.yaml')
      writeFileSync(file, order)
      const { code, err } = starwright(['plan', file])
      expect(code).toBe(2)
      expect(told.length).toBeGreaterThan(0)
      for (const text of told) expect(err).toContain(text.replace(/^Given/, 'given'))
      await expect.poll(() => summary(page)).toBe(before)
      expect(await page.getByRole('status').first().textContent()).toContain('Mend this first')
      await page.getByRole('button', { name: 'Undo' }).click()
      await expect.poll(() => field.getAttribute('aria-invalid')).toBe('false')
    }),
  )
})

describe('the order', () => {
  it('outlives a reload, from the address', () =>
    using(async (page) => {
      await type(page, 'Board width it takes', '64')
      await page.getByLabel('Wall or door behind it').fill('900 × 2000')
      await page.getByLabel('Wall or door behind it').press('Enter')
      await expect.poll(() => page.url()).toContain('wall=')
      const before = await summary(page)
      await page.reload()
      await page.waitForSelector('.star')
      await expect.poll(() => summary(page)).toBe(before)
      await expect.poll(() => page.getByLabel('Wall or door behind it').inputValue()).toBe('900 × 2000')
    }))

  it('is saved as the YAML it was, comments too, and opened again', () =>
    using(async (page) => {
      await type(page, 'Board width it takes', '64')
      await expect.poll(() => summary(page)).toContain('boards 64.0 mm wide')
      const order = await saved(page, () => page.getByRole('button', { name: 'Save the order' }).click())
      expect(order.name).toBe('order.yaml')
      expect(order.bytes.toString()).toBe(EXAMPLE.replace('board-width: 70', 'board-width: 64'))
      await page.getByLabel('Open an order').setInputFiles({
        name: 'lantern.yaml',
        mimeType: 'text/yaml',
        buffer: Buffer.from(
          'title: Lantern\nunits: in\nstars: [{ points: 6, tip-angle: 50, radius: 5 1/2 }]\n',
        ),
      })
      await page.getByRole('heading', { level: 1, name: 'Lantern' }).waitFor()
      await expect.poll(() => summary(page)).toContain('arms 5 1/2 in long')
      await page.getByLabel('Open an order').setInputFiles({
        name: 'broken.yaml',
        mimeType: 'text/yaml',
        buffer: Buffer.from('stars: [{'),
      })
      await page.getByRole('alert').waitFor()
      expect(await page.getByRole('alert').textContent()).toContain('Not opened, nothing changed.')
      await expect.poll(() => summary(page)).toContain('arms 5 1/2 in long')
    }))

  it('holds several stars', () =>
    using(async (page) => {
      await page.getByRole('button', { name: 'Chapel', exact: true }).click()
      await expect.poll(() => page.getByLabel('Points', { exact: true }).inputValue()).toBe('8')
      await page.getByRole('button', { name: 'Add a star' }).click()
      await expect.poll(() => page.getByLabel('Name', { exact: true }).first().inputValue()).toBe('Star 4')
      await page.getByRole('button', { name: 'Take Star 4 away' }).click()
      await expect.poll(() => page.getByLabel('Name', { exact: true }).first().inputValue()).toBe('Chapel')
    }))
})

it('a roll typed takes the place of sheets in one step, and emptied gives them back', () =>
  using(async (page) => {
    await type(page, 'Roll, its width', '610')
    await expect.poll(() => page.getByLabel('Sheets', { exact: true }).count()).toBe(0)
    expect(await page.getByLabel('Roll, its width').getAttribute('aria-invalid')).toBe('false')
    await type(page, 'Roll, its width', '')
    await expect.poll(() => page.getByLabel('Sheets', { exact: true }).count()).toBe(1)
    await page.getByRole('button', { name: 'Undo' }).click()
    await page.getByRole('button', { name: 'Undo' }).click()
    await expect.poll(() => page.getByLabel('Sheets', { exact: true }).inputValue()).toBe('A4')
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true)
  }))

it('a star is added to an order that has none', () =>
  using(async (page) => {
    for (const stars of ['stars: []', 'stars:', '', 'stars: { a: 1 }']) {
      await page.goto(`${PAGE.href}#${new URLSearchParams({ order: `title: Empty\n${stars}\n` })}`)
      await page.reload()
      await page.getByRole('button', { name: 'Add a star' }).click()
      await page.waitForSelector('[aria-labelledby="finish-heading"]')
      expect(await page.getByRole('navigation', { name: 'Stars of the order' }).textContent()).toMatch(
        /^Star \d+Add a star/,
      )
    }
  }))

describe('the files', () => {
  it('are byte for byte those of the command line, one by one and in the archive', () =>
    using(async (page) => {
      const out = join(folder, 'made')
      const made = await archiveAsMade(page, EXAMPLE, out)
      const buttons = page.getByRole('button', {
        name: /^Save (?!everything|the order|.* of how the gaps spread)/,
      })
      const names = new Map(made.map((path) => [path.split('/').at(-1), path]))
      let files = 0
      for (const button of await buttons.all()) {
        // Chromium asks whether a page may save more when ten files come within a moment.
        await page.waitForTimeout(250)
        const file = await saved(page, () => button.click())
        const path = names.get(file.name)
        expect(Buffer.compare(file.bytes, readFileSync(join(out, path ?? ''))), file.name).toBe(0)
        files++
      }
      expect(files).toBe(made.length)
    }))

  it('are those of the order that is shown, also when a change is taken back while it is laid out', () =>
    using(async (page) => {
      const order = join(folder, 'shown.yaml')
      writeFileSync(order, EXAMPLE)
      const out = join(folder, 'shown')
      expect(starwright(['make', order, '--out', out, '--quiet']).code).toBe(0)
      await laid(page)
      const button = page.getByRole('button', { name: 'Save cut-plan.txt' })
      await type(page, 'Kerf', '2.9')
      await page.locator('.doing button').waitFor()
      // In one go: taken back, and a file wanted before the work on the other order can end.
      const { bytes } = await saved(page, async () => {
        await page.getByRole('button', { name: 'Undo' }).click()
        await button.click()
      })
      expect(Buffer.compare(bytes, readFileSync(join(out, 'cut-plan.txt')))).toBe(0)
      await laid(page)
      // The order was laid before: nothing has to be worked out again.
      await page.waitForTimeout(600)
      expect(await page.locator('.doing').textContent()).toContain('to print in all')
      await type(page, 'Kerf', '2.9')
      await page.locator('.doing button').waitFor()
      await page.getByRole('button', { name: 'Undo' }).click()
      await laid(page)
      await page.waitForTimeout(600)
      expect(await page.locator('.doing button').count()).toBe(0)
    }))

  it('are laid out beside the page, and the work can be stopped and taken up', () =>
    using(async (page) => {
      await laid(page)
      await page.getByRole('button', { name: 'Chapel', exact: true }).click()
      await type(page, 'Centre to tip', '1800')
      await page.getByRole('button', { name: 'Stop', exact: true }).click()
      expect(await page.locator('button.first').isDisabled()).toBe(true)
      await type(page, 'Centre to tip', '220')
      await laid(page)
    }))
})
