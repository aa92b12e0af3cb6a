import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { unzipSync } from 'fflate'
import type { Page } from 'playwright-core'
import { expect } from 'vitest'
import { starwright } from '../cli/starwright.js'
import { laid, saved } from './opened.js'

/**
 * Has the command line make an order, and holds the archive of the page that shows it against it, byte for byte.
 *
 * @param stem of the files it writes: `stem.yaml` and the folder `stem`
 * @returns the paths that were made
 */
export const archiveAsMade = async (page: Page, text: string, stem: string): Promise<readonly string[]> => {
  writeFileSync(`${stem}.yaml`, text)
  const { code, err } = starwright(['make', `${stem}.yaml`, '--out', stem, '--quiet'])
  expect({ code, err }).toEqual({ code: 0, err: '' })
  const made = readdirSync(stem, { recursive: true, encoding: 'utf8' }).filter(
    (path) => /\.\w+$/.test(path) && path !== 'checksums.sha256',
  )
  await laid(page)
  const archive = await saved(page, () =>
    page.getByRole('button', { name: 'Save everything in one archive' }).click(),
  )
  const entries = unzipSync(archive.bytes)
  expect(Object.keys(entries).sort()).toEqual([...made, 'order.yaml'].sort())
  expect(Buffer.from(entries['order.yaml'] ?? []).toString()).toBe(text)
  const differing = made.filter(
    (path) => Buffer.compare(Buffer.from(entries[path] ?? []), readFileSync(`${stem}/${path}`)) !== 0,
  )
  expect(differing, text).toEqual([])
  return made
}
