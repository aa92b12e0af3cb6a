import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect } from 'vitest'
import { openBrowser, openPage } from './opened.js'

/** For one file of tests. */
export interface Pages {
  /** There while they run. */
  readonly folder: string
  /** A page of its own for each test: nothing leaves it, and it complains of nothing. */
  readonly using: (
    use: (page: Page) => Promise<void>,
    options?: Parameters<typeof openPage>[1],
  ) => Promise<void>
}

/** One browser for all tests of a file. */
export const pages = (): Pages => {
  const folder = mkdtempSync(join(tmpdir(), 'starwright-page-'))
  let browser: Browser
  beforeAll(async () => {
    browser = await openBrowser()
  })
  afterAll(async () => {
    await browser.close()
    rmSync(folder, { recursive: true, force: true })
  })
  const using: Pages['using'] = async (use, options = {}) => {
    const { page, requests, complaints } = await openPage(browser, options)
    await use(page)
    await page.context().close()
    expect({ requests, complaints }).toEqual({ requests: [], complaints: [] })
  }
  return { folder, using }
}
