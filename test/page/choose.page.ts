import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Locator, Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { starwright } from '../cli/starwright.js'
import { EXAMPLE, orderOf, saved, type } from './opened.js'
import { pages } from './pages.js'

/* What the page lists and compares is held against the command line, which has its own proofs. */

const { folder, using } = pages()
const ORDER = join(folder, 'order.yaml')
writeFileSync(ORDER, EXAMPLE)

const plain = (text: string): string => text.replaceAll(/[\u2800-\u28ff]/g, '').replaceAll(/\s+/g, ' ')

const look = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Look for stars' }).click()
  await page.locator('.choices li').first().waitFor()
  await expect.poll(() => page.getByRole('button', { name: 'Look for stars' }).isEnabled()).toBe(true)
}

/** Looks for stars and compares the second with the fourth; gives the buttons of the list. */
const compareTwo = async (page: Page): Promise<Locator> => {
  await look(page)
  const compare = page.getByRole('button', { name: /^Compare/ })
  await compare.nth(1).click()
  await compare.nth(3).click()
  await page.getByRole('heading', { name: 'Two compared' }).waitFor()
  return compare
}

/** Holds every row of the comparison against what the command line prints; gives how many there are. */
const rowsIn = async (page: Page, out: string): Promise<number> => {
  const rows = await page.locator('section[aria-labelledby="choose-heading"] tbody tr').all()
  for (const row of rows)
    expect(out).toContain(plain((await row.locator('th, td').allTextContents()).join(' ')))
  return rows.length
}

/** In the page: keeps back the answer to the comparison with this star until it is let go. */
const holdBack = (star: string) => {
  let asked = (): void => {}
  let go = (): void => {}
  const held = { asked: new Promise<void>((resolve) => (asked = resolve)), let: () => go() }
  const Held = class extends Worker {
    #isLate = false
    override postMessage(message: { wish?: { compare?: readonly string[] } }): void {
      this.#isLate = message.wish?.compare?.includes(star) ?? false
      super.postMessage(message)
    }
    override set onmessage(take: (event: MessageEvent) => void) {
      super.onmessage = (event: MessageEvent): void => {
        const isHeld = this.#isLate && event.data.answer === 'chosen'
        if (!isHeld) take(event)
        else {
          go = () => take(event)
          asked()
        }
      }
    }
  }
  Object.assign(globalThis, { Worker: Held })
  return held
}

/** A file of the part, and the same from the command line. */
const sameFile = async (page: Page, button: RegExp, flags: readonly string[], ending: string) => {
  const file = join(folder, `chosen.${ending}`)
  expect(starwright(['choose', ORDER, ...flags, '--to', file, '--replace', '--quiet']).code).toBe(0)
  const { bytes } = await saved(page, () => page.getByRole('button', { name: button }).click())
  expect(Buffer.compare(bytes, readFileSync(file)), ending).toBe(0)
  await expect.poll(() => page.getByRole('button', { name: 'Look for stars' }).isEnabled()).toBe(true)
}

describe('the stars this shop can make', () => {
  it('are those of the command line, in its order and words, with its files', () =>
    using(async (page) => {
      await type(page, 'Only with so many points', '6')
      await page.getByLabel('In which order').selectOption('wood')
      await look(page)
      const flags = ['--points', '6', '--rank', 'wood']
      const { code, out } = starwright(['choose', ORDER, ...flags])
      expect(code).toBe(0)
      const items = await page.locator('.choices li').all()
      const listed = plain(out)
      expect(items.length).toBe(listed.match(/saw \d/g)?.length)
      let from = 0
      for (const item of items)
        for (const words of await item.locator('p:not(.files)').allTextContents()) {
          const at = listed.indexOf(plain(words.replace(/^\d+\. /, '')), from)
          expect(at, words).toBeGreaterThan(-1)
          from = at
        }
      for (const ending of ['pdf', 'svg', 'dxf'])
        await sameFile(page, new RegExp(`^Save ${ending} of these stars`, 'i'), flags, ending)
    }))

  it('are compared, two of them, as by the command line', () =>
    using(async (page) => {
      const compare = await compareTwo(page)
      const out = plain(starwright(['choose', ORDER, '--compare', '2', '4']).out)
      expect(await rowsIn(page, out)).toBeGreaterThan(12)
      for (const ending of ['pdf', 'svg', 'dxf'])
        await sameFile(
          page,
          new RegExp(`^Save ${ending} of the two compared`, 'i'),
          ['--compare', '2', '4'],
          ending,
        )
      // Stars that are not in the list are named, as the command line takes them.
      await type(page, 'Compare', '5@45')
      await type(page, 'with', 'Chapel')
      await expect
        .poll(
          async () =>
            (await page.locator('section[aria-labelledby="choose-heading"] caption').textContent()) ?? '',
        )
        .toMatch(/5@45.*Chapel/)
      const named = plain(starwright(['choose', ORDER, '--compare', '5@45', 'Chapel']).out)
      expect(await rowsIn(page, named)).toBeGreaterThan(12)
      await type(page, 'with', 'Chappel')
      await page.getByRole('alert').waitFor()
      // Figures of two others would be taken for those of these.
      expect(await page.getByRole('heading', { name: 'Two compared' }).count()).toBe(0)
      const { err } = starwright(['choose', ORDER, '--compare', '5@45', 'Chappel'])
      expect(plain(err)).toContain(
        plain(((await page.getByRole('alert').textContent()) ?? 'nothing').replace(/^Given/, 'given')),
      )
      await compare.nth(0).click()
      await expect.poll(() => page.getByRole('heading', { name: 'Two compared' }).count()).toBe(0)
    }))

  it('are those that were asked for last, however late an answer before it comes', () =>
    using(async (page) => {
      await compareTwo(page)
      const late = await page.evaluateHandle(holdBack, '5@45')
      const one = page.getByLabel('Compare', { exact: true })
      const caption = page.locator('section[aria-labelledby="choose-heading"] caption')
      await type(page, 'Compare', '5@45')
      await late.evaluate((held) => held.asked)
      await type(page, 'Compare', '6@50')
      await expect.poll(() => caption.textContent()).toContain('6@50')
      await late.evaluate((held) => held.let())
      await page.waitForTimeout(300)
      expect(await one.inputValue()).toBe('6@50')
      expect(await caption.textContent()).toContain('6@50')
    }))

  it('can be taken into the order in one step, on their boards whole', () =>
    using(async (page) => {
      const before = await orderOf(page)
      await look(page)
      const item = page.locator('.choices li', { hasText: '8 points' }).first()
      const words = plain((await item.locator('p').first().textContent()) ?? '')
      await item.getByRole('button', { name: /^Make Boathouse this one/ }).click()
      await page.getByRole('group', { name: /^Star of 8 points/ }).waitFor()
      const size = /([\d.]+) × ([\d.]+) mm/.exec(words) ?? []
      const summary = page.locator('section .live').first()
      await expect.poll(() => summary.textContent()).toContain(`${size[1]} mm across, ${size[2]} mm high`)
      const file = join(folder, 'taken.yaml')
      writeFileSync(file, await orderOf(page))
      const { code, out } = starwright(['plan', file, '--star', 'Boathouse'])
      expect(code).toBe(0)
      expect(out).not.toContain('no board')
      await page.getByText('Look for stars again.').waitFor()
      await page.getByRole('button', { name: 'Undo' }).click()
      await expect.poll(() => orderOf(page).trim()).toBe(before.trim())
    }))

  it('are taken with the thickness of their board where boards differ in it', () => {
    const board = '{ width: 60, thickness: 12, length: 2400 }'
    const order = EXAMPLE.replace(/boards:.*\n/, (line) => `${line}    - ${board}\n`)
    return using(
      async (page) => {
        await look(page)
        const item = page.locator('.choices li', { hasText: '60.0 × 12.0 mm' }).first()
        await item.getByRole('button', { name: /^Make Boathouse this one/ }).click()
        await expect.poll(() => page.getByLabel('Thickness of the arms').inputValue()).toBe('12 mm')
      },
      { hash: `#${new URLSearchParams({ order })}` },
    )
  })

  it('are wished for again after a reload; what cannot be made is told', () =>
    using(async (page) => {
      await type(page, 'Only with so many points', '2')
      const field = page.getByLabel('Only with so many points')
      await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true')
      const { err } = starwright(['choose', ORDER, '--points', '2'])
      const told = (await page.locator('#choose-points-problem span').textContent()) ?? 'nothing'
      expect(plain(err)).toContain(plain(told.replace(/^Given/, 'given')))
      await type(page, 'Only with so many points', '7')
      await page.reload()
      await page.waitForSelector('.star')
      expect(await field.inputValue()).toBe('7')
      expect(await page.locator('.choices li').count()).toBe(0)
      await look(page)
      const listed = await page.locator('.choices li').allTextContents()
      await page.reload()
      await page.waitForSelector('.star')
      await expect.poll(() => page.locator('.choices li').allTextContents()).toEqual(listed)
      await type(page, 'Room for the star, across', '12 mm')
      await page.getByRole('button', { name: 'Look for stars' }).click()
      await page.getByRole('alert').waitFor()
      expect(await page.getByRole('alert').textContent()).toContain('No star can be made with these.')
    }))
})
