import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { starwright } from '../cli/starwright.js'
import { EXAMPLE, laid, orderOf, saved, type } from './opened.js'
import { pages } from './pages.js'

/* What the page tells is held against the command line, which has its own proofs. */

const { folder, using } = pages()
const ORDER = join(folder, 'order.yaml')
writeFileSync(ORDER, EXAMPLE)

/** Boards of which neither first-fit nor a brief search proves the cheapest. Invented. */
const UNPROVED = `title: Lakeside fair
shop:
  saw: { limit: 60, kerf: 2.4 }
  boards:
    - { width: 95, thickness: 19, length: 1800, price: 7.2 }
    - { width: 140, thickness: 19, length: 2400, price: 9.4 }
    - { width: 120, thickness: 19, length: 1650, price: 4, count: 3 }
stars:
  - { name: Jetty, points: 5, quantity: 5, tip-angle: 45, board-width: 88 }
  - { name: Bell tower, points: 6, quantity: 4, tip-angle: 50, board-width: 70 }
  - { name: Net loft, points: 8, quantity: 2, tip-angle: 40, board-width: 60 }
  - { name: Ferry house, points: 5, quantity: 3, tip-angle: 36, board-width: 110 }
`

const plain = (text: string): string => text.replaceAll(/\s+/g, ' ')

const told = (...args: readonly string[]): string => plain(starwright(args).out)

/** What is measured, as the command line takes it. */
const GAPES = ['--star', 'Boathouse', '--gap', '2.8mm', '--opens-at', 'valley']

describe('the dry fit', () => {
  const measure = async (page: Page): Promise<void> => {
    await page.getByLabel('Where the last joint gapes').selectOption('valley')
    await type(page, 'How wide it gapes', '2.8 mm')
    await page.getByRole('heading', { name: 'Do this, in this order' }).waitFor()
  }

  it('tells what the command line tells, in the same steps, and draws it', () =>
    using(async (page) => {
      await measure(page)
      const out = told('dryfit', ORDER, ...GAPES)
      const part = page.locator('section[aria-labelledby="fit-heading"]')
      const steps = await part.locator('ol li').allTextContents()
      expect(steps.length).toBeGreaterThan(3)
      for (const step of steps) expect(out).toContain(plain(step))
      const words = await part.locator('dl.words dd').allTextContents()
      expect(words.length).toBeGreaterThan(4)
      const without = (text: string): string => text.replace(/ \(--[a-z-]+\)/g, '')
      for (const text of words) expect(without(out)).toContain(plain(text))
      await part.getByRole('img', { name: /dry fit, the gap drawn larger/ }).waitFor()
      const file = await saved(page, () => part.getByRole('button', { name: 'Save SVG' }).click())
      const drawn = join(folder, 'fit.svg')
      starwright(['dryfit', ORDER, ...GAPES, '--to', drawn, '--replace'])
      expect(Buffer.compare(file.bytes, readFileSync(drawn))).toBe(0)
      const pdf = await saved(page, () => part.getByRole('button', { name: 'Save PDF' }).click())
      const printed = join(folder, 'fit.pdf')
      starwright(['dryfit', ORDER, ...GAPES, '--to', printed, '--replace'])
      expect(pdf.name).toBe('boathouse-dry-fit.pdf')
      expect(Buffer.compare(pdf.bytes, readFileSync(printed))).toBe(0)
    }))

  it('takes several arms in one field, and what a recut takes off', () =>
    using(async (page) => {
      await type(page, 'Tip angle of an arm', '45.2; 45.0 +- 0.1; 45.3')
      await type(page, 'A recut takes off at least', '1 mm')
      await measure(page)
      const arms = ['45.2', '45.0 +- 0.1', '45.3'].map((arm) => `--measured-tip=${arm}`)
      const out = told('dryfit', ORDER, ...GAPES, ...arms, '--clean-up', '1mm')
      const steps = await page.locator('section[aria-labelledby="fit-heading"] ol li').allTextContents()
      expect(steps.length).toBeGreaterThan(3)
      for (const step of steps) expect(out).toContain(plain(step))
    }))

  it('belongs to the star that was measured, also when another is looked at', () =>
    using(async (page) => {
      await measure(page)
      await page.getByRole('button', { name: 'Chapel', exact: true }).click()
      await expect.poll(() => page.getByLabel('How wide it gapes').inputValue()).toBe('')
      expect(await page.getByRole('heading', { name: 'Do this, in this order' }).count()).toBe(0)
      await type(page, 'How wide it gapes', '0')
      await page.reload()
      await page.waitForSelector('.star')
      await expect.poll(() => page.getByLabel('How wide it gapes').inputValue()).toBe('0')
      await page.getByRole('button', { name: 'Boathouse', exact: true }).click()
      await expect.poll(() => page.getByLabel('How wide it gapes').inputValue()).toBe('2.8 mm')
    }))

  it('tells a mistake at its field in the words of the command line', () =>
    using(async (page) => {
      await type(page, 'How wide it gapes', '2.8 miles')
      const field = page.getByLabel('How wide it gapes')
      await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true')
      const problem = await page.locator('#fit-gap-problem span').allTextContents()
      const { code, err } = starwright(['dryfit', ORDER, '--star', 'Boathouse', '--gap', '2.8 miles'])
      expect(code).toBe(2)
      for (const text of problem) expect(err).toContain(text.replace(/^Given/, 'given'))
      expect(problem.length).toBeGreaterThan(0)
    }))

  it('is kept over a reload, and the saw as it cuts goes into the order', () =>
    using(async (page) => {
      await measure(page)
      await page.reload()
      await page.getByRole('heading', { name: 'Do this, in this order' }).waitFor()
      expect(await page.getByLabel('How wide it gapes').inputValue()).toBe('2.8 mm')
      const steps = page.locator('section[aria-labelledby="fit-heading"] ol li')
      const before = await steps.allTextContents()
      await page.getByRole('button', { name: 'Plan with this saw as it cuts' }).click()
      await expect.poll(() => orderOf(page)).toContain('bias:')
      const learned = join(folder, 'learned.yaml')
      writeFileSync(learned, EXAMPLE)
      starwright(['dryfit', learned, ...GAPES, '--save'])
      const wanted = told('plan', learned, '--star', 'Boathouse').match(/read [\d.]+° to cut [\d.]+°/)?.[0]
      expect(wanted).toBeDefined()
      await expect
        .poll(() => page.locator('section[aria-labelledby="saw-heading"]').textContent())
        .toContain(wanted)
      // The star on the bench is still the one that was cut at the earlier reading.
      await expect.poll(async () => (await steps.allTextContents())[2]).toBe(before[2])
    }))
})

const cells = async (page: Page, section: string): Promise<readonly (readonly string[])[]> => {
  const rows = await page.locator(`section[aria-labelledby="${section}"] tbody tr`).all()
  return Promise.all(rows.map((row) => row.locator('th, td').allTextContents()))
}

describe('what is worked out beside the page', () => {
  it('is the seasons as the command line has them', () =>
    using(async (page) => {
      await laid(page)
      const out = told('season', ORDER, '--star', 'Boathouse')
      const columns = page.locator('section[aria-labelledby="season-heading"] thead tr > *')
      const seasons = (await columns.allTextContents()).slice(1)
      expect(seasons).toEqual(['workshop', 'winter', 'summer'])
      const rows = await cells(page, 'season-heading')
      expect(rows).toHaveLength(6)
      // The page turns the command line's rows, so that a phone shows every column.
      for (const [index, season] of seasons.entries()) {
        const told = [season, ...rows.map((row) => row[index + 1])].filter((cell) => cell !== '')
        expect(out).toContain(plain(told.join(' ')))
      }
      const air = await page
        .locator('section[aria-labelledby="season-heading"] input:not(details *)')
        .evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value))
      // The Boathouse hangs on a wall of its own, out of doors.
      expect(air).toEqual(['50', '16', '85', '-4', '65', '18'])
      const words = await page.locator('section[aria-labelledby="season-heading"] dd').allTextContents()
      expect(words.length).toBeGreaterThan(1)
      for (const text of words) expect(out).toContain(plain(text))
      const advice = await page.locator('section[aria-labelledby="season-heading"] ul li').allTextContents()
      expect(advice.length).toBeGreaterThan(1)
      for (const text of advice) expect(out).toContain(plain(text))
    }))

  it('is the chance that the last joint closes', () =>
    using(async (page) => {
      await laid(page)
      const out = told('risk', ORDER, '--star', 'Boathouse')
      const rows = await cells(page, 'chance-heading')
      expect(rows).toHaveLength(2)
      for (const row of rows) expect(out).toContain(plain(row.join(' ')))
      const part = page.locator('section[aria-labelledby="chance-heading"]')
      for (const ending of ['pdf', 'svg', 'dxf']) {
        const file = join(folder, `gaps.${ending}`)
        told('risk', ORDER, '--star', 'Boathouse', '--replace', '--to', file)
        const button = part.getByRole('button', { name: new RegExp(`^Save ${ending} of`, 'i') })
        const { bytes } = await saved(page, () => button.click())
        expect(Buffer.compare(bytes, readFileSync(file)), file).toBe(0)
      }
      await type(page, 'A gap that is still accepted', '2 mm')
      await expect.poll(async () => (await cells(page, 'chance-heading'))[0]).not.toEqual(rows[0])
    }))

  it('is that chance with the saw on its nearest marks, also after a reload', () =>
    using(async (page) => {
      await laid(page)
      await type(page, 'Scale reads to, degrees', '0.4')
      const asked = ['risk', ORDER, '--star', 'Boathouse', '--reads-to', '0.4']
      const [onMarks, asTold] = [told(...asked, '--set', 'marks'), told(...asked)]
      const all = (await cells(page, 'chance-heading')).length - 1
      const batch = async (): Promise<string> => ((await cells(page, 'chance-heading'))[all] ?? []).join(' ')
      await expect.poll(async () => asTold.includes(await batch())).toBe(true)
      await page.getByLabel('How the saw is set').selectOption('on the nearest marks')
      await expect.poll(async () => onMarks.includes(await batch())).toBe(true)
      expect(asTold).not.toContain(await batch())
      const file = join(folder, 'on-marks.svg')
      told(...asked, '--set', 'marks', '--to', file)
      const part = page.locator('section[aria-labelledby="chance-heading"]')
      const { bytes } = await saved(page, () => part.getByRole('button', { name: /^Save SVG of/ }).click())
      expect(Buffer.compare(bytes, readFileSync(file))).toBe(0)
      await page.reload()
      await laid(page)
      expect(await page.getByLabel('How the saw is set').inputValue()).toBe('marks')
      expect(onMarks).toContain(await batch())
    }))

  it('is which jigs are left out, and why', () =>
    using(async (page) => {
      await laid(page)
      await page
        .getByText('Arm cradle, "Bakery window": Not needed. The blank of "Bakery window" is already the arm')
        .waitFor()
    }))

  it('is the boards to take, drawn', () =>
    using(async (page) => {
      await laid(page)
      const out = told('stock', ORDER)
      const part = page.locator('section[aria-labelledby="wood-heading"]')
      const words =
        (await part.getByRole('group', { name: 'Boards to take' }).locator('p').first().textContent()) ?? ''
      expect(out).toContain(plain(words).split('. ')[0])
      await part.getByRole('img', { name: 'Cutting list: every board with its marks' }).waitFor()
    }))

  it('are those of the command line also where no proof is found, with what may be saved', () =>
    using(async (page) => {
      const file = join(folder, 'dear.yaml')
      writeFileSync(file, UNPROVED)
      const out = join(folder, 'dear')
      const { out: words } = starwright(['make', file, '--out', out])
      await page.getByLabel('Open an order').setInputFiles(file)
      await page.getByRole('heading', { level: 1, name: 'Lakeside fair' }).waitFor()
      await laid(page)
      const boards = page.getByRole('group', { name: 'Boards to take' })
      const open = plain((await boards.locator('p').first().textContent()) ?? '')
      expect(open).toMatch(/at most [\d.]+ % can be saved by `starwright stock`/)
      expect(plain(words)).toContain(open.slice(open.indexOf('The best')).replace(/\.$/, ''))
      for (const ending of ['txt', 'svg', 'pdf']) {
        const { name, bytes } = await saved(page, () =>
          boards.getByRole('button', { name: new RegExp(`^Save ${ending} of`, 'i') }).click(),
        )
        expect(Buffer.compare(bytes, readFileSync(join(out, name))), name).toBe(0)
      }
    }))

  it('is the backings on panels: what to buy, every plate, and the files of the command line', () =>
    using(async (page) => {
      await laid(page)
      const part = page.getByRole('group', { name: 'Backings on panels' })
      const drawn = ['svg', 'dxf', 'pdf'].map((ending) => {
        const file = join(folder, `panel.${ending}`)
        return { file, out: told('draw', 'panel', ORDER, '--replace', '--to', file) }
      })
      const out = drawn[0]?.out ?? ''
      const words = await part.locator('.told').allTextContents()
      expect(words).toHaveLength(2)
      expect(words[0]).toMatch(/^Boathouse, Bakery window, Chapel: 1 panel of 1500.0 mm × 1500.0 mm/)
      expect(out).toContain(plain(words[0]?.replace(/^[^:]+: /, '').replace(/\.$/, '') ?? ''))
      expect(out).toContain(words[1]?.slice(1).replace(/\.$/, ''))
      const holds = await part.locator('figcaption').first().textContent()
      const listed = /Panel 1 (.*?) (?:Winter fair)/.exec(out)?.[1] ?? 'nothing'
      expect(plain(holds ?? '')).toContain(listed)
      await part.getByRole('img', { name: /panel 1 of 1: .*6 × Boathouse/ }).waitFor()
      // Six stars, four polygons, a disc, each with its openings to hang it by.
      expect(await part.locator('svg #CUT-OUTSIDE path, svg g[id*="CUT-OUTSIDE"] path').count()).toBe(11)
      for (const { file } of drawn) {
        const button = part.getByRole('button', {
          name: new RegExp(`^Save ${file.split('.').at(-1)} of`, 'i'),
        })
        const { bytes } = await saved(page, () => button.click())
        expect(Buffer.compare(bytes, readFileSync(file)), file).toBe(0)
      }
    }))

  it('follows the species, on the star too', () =>
    using(async (page) => {
      await laid(page)
      const fill = (): Promise<string | null> => page.locator('.star .half').first().getAttribute('fill')
      const larch = await fill()
      const species = page.locator('[id="at-shop-wood-species"]')
      await species.selectOption('black walnut')
      await expect.poll(fill).not.toBe(larch)
      await expect
        .poll(() => page.locator('section[aria-labelledby="season-heading"]').textContent())
        .toContain('black walnut, flat-sawn')
      await species.selectOption('')
      await expect.poll(() => orderOf(page)).not.toContain('species')
    }))
})
