import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { starwright } from '../cli/starwright.js'
import { EXAMPLE, laid, saved } from './opened.js'
import { pages } from './pages.js'

const { folder, using } = pages()

const template = (name: string): string =>
  readFileSync(fileURLToPath(new URL(`../../templates/${name}.svg`, import.meta.url)), 'utf8')

const give = (page: Page, name: string, text: string): Promise<void> =>
  page
    .getByLabel('Your own sheet furniture')
    .setInputFiles({ name, mimeType: 'image/svg+xml', buffer: Buffer.from(text) })

it('own sheet furniture goes on the pages as with the command line, and outlives a reload', () =>
  using(async (page) => {
    const own = template('register-mark').replace(
      '</svg>',
      '<path d="M2 2L6 6" fill="none" stroke="#000000" stroke-width="0.2"/></svg>',
    )
    const pieces = join(folder, 'own')
    mkdirSync(pieces)
    writeFileSync(join(pieces, 'register-mark.svg'), own)
    writeFileSync(join(folder, 'order.yaml'), EXAMPLE)
    const made = starwright([
      'make',
      join(folder, 'order.yaml'),
      '--out',
      join(folder, 'out'),
      '--furniture',
      pieces,
      '--quiet',
    ])
    expect(made.err).toBe('')
    await laid(page)
    await give(page, 'register-mark.svg', own)
    await page.getByRole('button', { name: 'Take register-mark.svg away' }).waitFor()
    await page.reload()
    await page.waitForSelector('.star')
    await laid(page)
    const { bytes } = await saved(page, () =>
      page.getByRole('button', { name: 'Save all-patterns.pdf' }).click(),
    )
    expect(Buffer.compare(bytes, readFileSync(join(folder, 'out', 'all-patterns.pdf')))).toBe(0)
    // What cannot serve changes nothing, in the words of the command line.
    writeFileSync(join(pieces, 'register-mark.svg'), own.replace('</svg>', '<image href="x.png"/></svg>'))
    const { code, err } = starwright([
      'make',
      join(folder, 'order.yaml'),
      '--out',
      join(folder, 'none'),
      '--furniture',
      pieces,
    ])
    expect(code).toBe(2)
    await give(page, 'register-mark.svg', readFileSync(join(pieces, 'register-mark.svg'), 'utf8'))
    await page.getByRole('alert').waitFor()
    const told = await page.getByRole('alert').locator('span').allTextContents()
    expect(told.length).toBeGreaterThan(0)
    for (const text of told) expect(err.replaceAll(/\s+/g, ' ')).toContain(text.replaceAll(/\s+/g, ' '))
    await give(page, 'title-blok.svg', own)
    await expect.poll(() => page.getByRole('alert').textContent()).toContain('title-block.svg')
    await page.getByRole('button', { name: 'Take register-mark.svg away' }).click()
    await expect.poll(() => page.url()).not.toContain('furniture.')
    await page.getByRole('button', { name: 'Undo' }).click()
    await expect.poll(() => page.url()).toContain('furniture.register-mark')
  }))
