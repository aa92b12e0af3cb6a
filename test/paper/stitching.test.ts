import { describe, expect, it } from 'vitest'
import type { DrawingName } from '../../src/compose/drawing-names.js'
import { layerOf } from '../../src/drawing/layers.js'
import { drawingBook } from '../../src/paper/pattern-book.js'
import { writePdf } from '../../src/write/pdf.js'
import { printOf } from '../prints.js'
import { type ReadPage, readPdf } from '../read-back/read-pdf.js'
import { compareTaped, type Difference } from './compare-taped.js'

/** Seams may be off by 0.1 mm (the project's own requirement). */
const SEAM = 0.1

/**
 * What is measured is 4e-4 mm at most: 32-bit readers keep three parts in ten million of a page a metre long. An error
 * a tenth of what is allowed must not hide.
 */
const MEASURED = 0.002

const STARS_ON_PAPER = [
  ['points: 3, tip-angle: 20, across: 420, backing: { shape: star, inset: 4 }', '{ size: A4 }'],
  ['points: 4, tip-angle: 50, radius: 260, backing: { shape: polygon, inset: 5 }', '{ size: Letter }'],
  ['points: 5, tip-angle: 45, across: 400, backing: { shape: star, inset: 6 }', '{ size: A4 }'],
  ['regular: 5/2, radius: 300, backing: { shape: star, inset: 5 }', '{ size: A4, margin: 25, overlap: 5 }'],
  ['regular: 6/2, across: 330, backing: { shape: polygon, inset: 6 }', '{ size: A3, overlap: 30 }'],
  ['points: 7, tip-angle: 60, radius: 330, backing: { shape: disc, inset: 5 }', '{ size: A4 }'],
  [
    'regular: 8/3, height: 500, backing: { shape: disc, inset: 6 }',
    '{ size: Letter, margin: 3, overlap: 5 }',
  ],
  ['points: 9, tip-angle: 110, radius: 160, backing: { shape: star, inset: 5 }', '{ size: A4 }'],
  ['points: 10, tip-angle: 70, across: 280, backing: { shape: polygon, inset: 8 }', '{ size: Letter }'],
  [
    'points: 11, tip-angle: 40, radius: 320, backing: { shape: star, inset: 3 }',
    '{ roll: 610, longest: 400 }',
  ],
  [
    'points: 12, tip-angle: 130, radius: 300, backing: { shape: disc, inset: 5 }',
    '{ size: Letter, margin: 6, overlap: 15 }',
  ],
  [
    'points: 13, tip-angle: 100, across: 300, backing: { shape: polygon, inset: 5 }',
    '{ size: A4, overlap: 30 }',
  ],
  ['points: 14, tip-angle: 35, radius: 230, backing: { shape: star, inset: 2 }', '{ size: A4, margin: 3 }'],
  [
    'points: 15, tip-angle: 90, across: 250, backing: { shape: disc, inset: 10 }',
    '{ size: Letter, margin: 25 }',
  ],
  ['points: 16, tip-angle: 60, radius: 350, backing: { shape: star, inset: 5 }', '{ size: A3 }'],
  ['points: 17, tip-angle: 120, across: 350, backing: { shape: polygon, inset: 5 }', '{ size: A4 }'],
  [
    'points: 18, tip-angle: 80, radius: 480, backing: { shape: star, inset: 8 }',
    '{ roll: 610, longest: 600 }',
  ],
  ['points: 19, tip-angle: 50, across: 310, backing: { shape: star, inset: 3 }', '{ size: Letter }'],
  [
    'points: 20, tip-angle: 150, radius: 200, backing: { shape: disc, inset: 4 }',
    '{ size: A4, margin: 25, overlap: 30 }',
  ],
  ['points: 21, tip-angle: 45, across: 290, backing: { shape: star, inset: 2 }', '{ size: A4 }'],
  [
    'points: 22, tip-angle: 110, radius: 190, backing: { shape: polygon, inset: 3 }',
    '{ size: Letter, overlap: 20 }',
  ],
  [
    'points: 23, tip-angle: 70, across: 400, backing: { shape: star, inset: 4 }',
    '{ size: A3, margin: 25, overlap: 5 }',
  ],
  ['points: 24, tip-angle: 90, radius: 260, backing: { shape: star, inset: 5 }', '{ size: A4, overlap: 5 }'],
] as const

/** The mat of every star; of every second one the backing too, of the others the arm pattern. */
const drawnOf = (star: string): readonly DrawingName[] =>
  STARS_ON_PAPER.findIndex(([one]) => one === star) % 2 === 0
    ? ['star-mat', 'backing']
    : ['star-mat', 'arm-pattern']

const pagesOf = async (star: string, paper: string, name: DrawingName): Promise<ReadPage[]> =>
  readPdf(await writePdf(drawingBook(printOf(star, paper, name))))

const singleOf = async (star: string, name: DrawingName): Promise<ReadPage> => {
  const [page] = await pagesOf(star, '{ size: single }', name)
  if (!page) throw new Error('a single file has its page')
  return page
}

/** Dimensions stay off paper where they would cost a page: all of them or none. */
const expectOnlyDimensionsOff = ({ absent }: Difference, single: ReadPage): void => {
  if (absent.length === 0) return
  const colour = layerOf('DIM').colour.toLowerCase()
  expect(absent).toEqual(single.strokes.filter((stroke) => stroke.colour.toLowerCase() === colour))
}

const seen: Difference[] = []

describe.each(STARS_ON_PAPER)('%s on %s', { timeout: 20_000 }, (star, paper) => {
  it.each(drawnOf(star))('%s: pages taped by their words and marks are the single page', async (name) => {
    const single = await singleOf(star, name)
    const found = compareTaped(await pagesOf(star, paper, name), single)
    seen.push(found)
    expect(found.leftOver).toBe(0)
    expectOnlyDimensionsOff(found, single)
    expect(found.marksApart).toBeLessThan(MEASURED)
    expect(found.displaced).toBeLessThan(MEASURED)
    expect(found.missing).toBeLessThan(MEASURED)
    expect(found.doubled).toBeLessThan(MEASURED)
    // The search tries every 2° (10° above 60 sheets or 2 m); whichever it took, the pages show.
    expect(Math.abs(found.turned - 2 * Math.round(found.turned / 2))).toBeLessThan(0.001)
  })
})

describe('the sweep', () => {
  it('holds single pages, long rows, fields of pages, and drawings that lie askew', () => {
    const counts = seen.map(({ pages }) => pages)
    expect(Math.min(...counts)).toBe(1)
    expect(Math.max(...counts)).toBeGreaterThan(9)
    expect(seen.filter(({ seams, pages }) => seams > pages).length).toBeGreaterThan(5)
    expect(seen.filter(({ seams, pages }) => pages > 1 && seams === pages - 1).length).toBeGreaterThan(5)
    const askew = seen.filter(({ turned }) => Math.abs(turned - 90 * Math.round(turned / 90)) > 1)
    expect(askew.length).toBeGreaterThan(5)
  })
})

describe('what is wrong with pages is found', async () => {
  const star = 'points: 5, tip-angle: 45, across: 400'
  const pages = await pagesOf(star, '{ size: A4 }', 'star-mat')
  const single = await singleOf(star, 'star-mat')

  /** The last page with its strokes of the drawing changed. */
  const changed = (change: (strokes: ReadPage['strokes']) => ReadPage['strokes']): ReadPage[] =>
    pages.map((page, index) =>
      index < pages.length - 1
        ? page
        : {
            ...page,
            strokes: [
              ...page.strokes.filter(({ clip, width }) => !clip || width < 0.2),
              ...change(page.strokes.filter(({ clip, width }) => clip && width > 0.2)),
            ],
          },
    )

  const shifted = (strokes: ReadPage['strokes'], by: number): ReadPage['strokes'] =>
    strokes.map((stroke) => ({ ...stroke, points: stroke.points.map(({ x, y }) => ({ x: x + by, y })) }))

  it('a page without its strokes', () => {
    const found = compareTaped(
      changed((strokes) => strokes.filter(({ closed }) => !closed)),
      single,
    )
    expect(found.missing).toBeGreaterThan(10)
  })

  it('a page that is displaced by twice what a seam may be off, and by half of it', () => {
    expect(
      compareTaped(
        changed((strokes) => shifted(strokes, 2 * SEAM)),
        single,
      ).leftOver,
    ).toBeGreaterThan(0)
    expect(
      compareTaped(
        changed((strokes) => shifted(strokes, SEAM / 2)),
        single,
      ).displaced,
    ).toBeCloseTo(SEAM / 2, 3)
  })

  it('strokes drawn twice', () => {
    expect(
      compareTaped(
        changed((strokes) => [...strokes, ...strokes]),
        single,
      ).doubled,
    ).toBeGreaterThan(10)
  })

  it('white margins that lie on lines, when edges that meet others at a corner are not trimmed', async () => {
    const cornered = 'points: 8, tip-angle: 50, radius: 220'
    const single = await singleOf(cornered, 'star-mat')
    const untrimmed = (await pagesOf(cornered, '{ size: A4 }', 'star-mat')).map((page) => ({
      ...page,
      lettering: page.lettering.filter(({ text }) => !text.startsWith('trim this edge too')),
    }))
    expect(compareTaped(untrimmed, single).missing).toBeGreaterThan(5)
  })
})
