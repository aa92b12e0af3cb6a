/*
 * What a PDF of many pages costs: memory kept while it is written and time per page, each in a process of its own, with the file
 * read piece by piece and thrown away. Run: npm run bench:pages
 */
import { spawnSync } from 'node:child_process'
import { drawingBook } from '../../src/paper/pattern-book.js'
import { pdfChunks } from '../../src/write/pdf.js'
import { printOf } from '../prints.js'

/** Widths that give about fifty and about two hundred sheets of A4. */
const WIDTHS = [1450, 3250]

const MEGABYTE = 1024 * 1024

/** What is really kept once what nobody needs has been collected. */
const kept = (): number => {
  globalThis.gc?.()
  const { heapUsed, arrayBuffers } = process.memoryUsage()
  return heapUsed + arrayBuffers
}

interface Told {
  readonly pages: number
  /** Bytes kept before the first page is written, and the most that was kept after any chunk. */
  readonly before: number
  readonly most: number
  readonly ms: number
  readonly bytes: number
}

/** Writes one file twice: once for the time, once with a look at memory after every chunk. */
const writeLong = async (across: number): Promise<Told> => {
  const print = printOf(`points: 24, tip-angle: 150, across: ${across}`, '{ size: A4 }')
  const start = performance.now()
  let bytes = 0
  for await (const chunk of pdfChunks(drawingBook(print))) bytes += chunk.length
  const ms = performance.now() - start
  const before = kept()
  let most = before
  let chunks = 0
  for await (const _ of pdfChunks(drawingBook(print))) if (chunks++ % 20 === 0) most = Math.max(most, kept())
  return { pages: print.pages.length, before, most, ms, bytes }
}

const [only] = process.argv.slice(2)
if (only !== undefined) console.log(JSON.stringify(await writeLong(Number(only))))
else {
  const told = WIDTHS.map((width): Told => {
    const words = ['--expose-gc', process.argv[1] ?? '', String(width)]
    return JSON.parse(spawnSync(process.execPath, words, { encoding: 'utf8' }).stdout)
  })
  for (const { pages, before, most, ms, bytes } of told) {
    console.log(
      `${pages} pages: ${((most - before) / MEGABYTE).toFixed(1)} MB kept while writing ${(bytes / MEGABYTE).toFixed(1)} MB, ${(ms / pages).toFixed(1)} ms a page`,
    )
  }
}
