import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import type { DrawingName } from '../../src/compose/drawing-names.js'
import type { Point } from '../../src/geometry/point.js'
import { drawingBook } from '../../src/paper/pattern-book.js'
import { writePdf } from '../../src/write/pdf.js'
import { layOver } from '../paper/compare-taped.js'
import { leftOver, moveBy } from '../paper/motion.js'
import type { TapedPage } from '../paper/taped.js'
import { printOf } from '../prints.js'
import { type ReadPage, readPdf } from '../read-back/read-pdf.js'
import { type GreyImage, readPgm } from './read-pgm.js'
import { darknessOf, movedDarkness, tapedDarkness, uppermost } from './taped-image.js'
import { DOTS_PER_INCH, DOTS_PER_MM, longestBreak, profiles, strayInk } from './taped-ink.js'
import { furnitureMask, hideChain, wordMasks } from './taped-masks.js'

const folder = mkdtempSync(join(tmpdir(), 'starwright-interop-taped-'))
afterAll(() => rmSync(folder, { recursive: true }))

/** Seams may be off by 0.1 mm (the project's own requirement). */
const SEAM = 0.1

const DRAWINGS: readonly (readonly [DrawingName, string, string])[] = [
  ['star-mat', 'points: 5, tip-angle: 45, across: 400', '{ size: A4 }'],
  ['star-mat', 'points: 8, tip-angle: 60, radius: 170', '{ size: Letter, margin: 6, overlap: 15 }'],
  [
    'backing',
    'points: 12, tip-angle: 130, radius: 200, backing: { shape: disc, inset: 5 }',
    '{ size: A4, overlap: 5 }',
  ],
  ['arm-pattern', 'points: 7, tip-angle: 40, radius: 400', '{ size: A4, margin: 25 }'],
]

const fileOf = async (name: DrawingName, star: string, paper: string) => {
  const path = `${name} ${star} ${paper}.pdf`.replaceAll(/[^\w.]+/g, '-')
  const bytes = await writePdf(drawingBook(printOf(star, paper, name)))
  writeFileSync(join(folder, path), bytes)
  const pages = await readPdf(bytes)
  const render = (page: ReadPage): GreyImage => {
    const number = String(pages.indexOf(page) + 1)
    const dots = execFileSync(
      'pdftoppm',
      ['-gray', '-r', String(DOTS_PER_INCH), '-f', number, '-l', number, join(folder, path)],
      { maxBuffer: 2 ** 30 },
    )
    return readPgm(dots)
  }
  return { pages, render }
}

describe.each(DRAWINGS)('%s of %s on %s, rendered by poppler and taped', async (name, star, paper) => {
  const tiled = await fileOf(name, star, paper)
  const whole = await fileOf(name, star, '{ size: single }')
  const [single] = whole.pages
  if (!single) throw new Error('a single file has its page')
  const { taped, motion, drawn, strokes } = layOver(tiled.pages, single)
  const shown = tiled.pages.filter((page) => page.strokes.some(({ clip }) => clip))
  const rendered = shown.map(tiled.render)
  const images = rendered.map((dots) => darknessOf(dots, DOTS_PER_MM))
  const onTaped = tapedDarkness(taped.pages, images)
  const dotsOfSingle = whole.render(single)
  const onSingle = movedDarkness(darknessOf(dotsOfSingle, DOTS_PER_MM), motion)

  const onTable = drawn.map(({ points, closed }) => {
    const moved = points.map((point) => moveBy(motion, point))
    return closed ? [...moved, ...moved.slice(0, 1)] : moved
  })
  const isTiled = (index: number): boolean =>
    strokes.some(({ points }) => leftOver(motion, drawn[index]?.points ?? [], points) < SEAM)
  const figure = onTable.filter((_, index) => isTiled(index))
  const furniture = furnitureMask(taped.pages, shown)
  const { ofSingle, ofTaped } = wordMasks(taped.pages, shown, single, motion)
  for (const chain of onTable.filter((_, index) => !isTiled(index))) hideChain(ofSingle, chain, 1)
  for (const { points, clip } of single.strokes) {
    if (!clip)
      hideChain(
        ofSingle,
        points.concat(points.slice(0, 1)).map((point) => moveBy(motion, point)),
        1,
      )
  }

  const frame = drawn[0]?.clip ?? { min: { x: 0, y: 0 }, max: { x: 0, y: 0 } }
  const wholeSingle = { dots: dotsOfSingle, onTable: motion, frame, isSeen: () => true }
  const masks = [furniture, ofSingle, ofTaped]

  it('every line lies within 0.1 mm of its place and is as wide, on both sides of every seam', () => {
    const { displaced, wider, narrower, count } = profiles(figure, onTaped, onSingle, masks)
    expect(count).toBeGreaterThan(100)
    expect(displaced).toBeLessThan(SEAM)
    expect(wider).toBeLessThan(SEAM)
    expect(narrower).toBeLessThan(SEAM)
  })

  it('a page that is laid 0.2 mm amiss is found', () => {
    const amiss = taped.pages.map(
      ({ page, onTable }, index): TapedPage => ({
        page,
        onTable:
          index < taped.pages.length - 1 ? onTable : { ...onTable, x: onTable.x + 0.2, y: onTable.y + 0.2 },
      }),
    )
    const seen = tapedDarkness(amiss, images)
    expect(profiles(figure, seen, onSingle, masks).displaced).toBeGreaterThan(SEAM)
    expect(strayInk(wholeSingle, seen, [ofSingle]).length).toBeGreaterThan(0)
  })

  it('a page that is left out is found', () => {
    const fewer = tapedDarkness(taped.pages.slice(0, -1), images)
    expect(longestBreak(figure, fewer, onSingle)).toBeGreaterThan(1)
    expect(strayInk(wholeSingle, fewer, [ofSingle]).length).toBeGreaterThan(100)
  })

  it('no line breaks off for 0.1 mm, seams included', () => {
    const broken = longestBreak(figure, onTaped, onSingle)
    expect(broken).toBeLessThan(SEAM)
  })

  it('no ink farther than 0.1 mm from ink of the single page, and the other way round', () => {
    const top = uppermost(taped.pages)
    const extra = taped.pages.flatMap(({ page, onTable }, index) => {
      const dots = rendered[index]
      const isSeen = (at: Point): boolean => top(at)?.index === index
      return dots ? strayInk({ dots, onTable, frame: page.frame, isSeen }, onSingle, masks) : []
    })
    const lost = strayInk(wholeSingle, onTaped, [ofSingle])
    expect(extra.length).toBe(0)
    expect(lost.length).toBe(0)
  })
})
