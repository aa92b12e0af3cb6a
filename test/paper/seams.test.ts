import { describe, expect, it } from 'vitest'
import { labelBox } from '../../src/drawing/bounds.js'
import type { Path, Shape } from '../../src/drawing/model.js'
import { outlineSides } from '../../src/drawing/sides.js'
import { extentsOf } from '../../src/geometry/outline.js'
import { type Point, point } from '../../src/geometry/point.js'
import { NOTES_PAGE, type Page } from '../../src/paper/page.js'
import { FURNITURE, printOf } from '../prints.js'
import { inside, shown, spotsOn } from './shown.js'

const PAPERS = [
  '{ size: A4 }',
  '{ size: Letter, margin: 6, overlap: 15 }',
  '{ size: A3, overlap: 8 }',
  '{ size: A4, margin: 25, overlap: 5 }',
  '{ roll: 610 }',
  '{ roll: 610, longest: 400 }',
]
const SIZES = ['across: 90', 'across: 250', 'across: 400', 'radius: 600']

/** Half of the widest pen (ISO 128-2: 0.5 mm). */
const HALF_A_PEN = 0.25

const figurePages = (star: string, paper: string, name?: 'backing'): readonly Page[] =>
  printOf(star, paper, name).pages.filter((page) => page.name !== NOTES_PAGE)

const shapesOn = (pages: readonly Page[]): readonly Shape[] => pages[0]?.views[0]?.shapes ?? []

const expectWhole = (pages: readonly Page[]): void => {
  const windows = pages.map(shown)
  const lost = shapesOn(pages)
    .flatMap(spotsOn)
    .filter((spot) => !windows.some((window) => inside(spot, window, HALF_A_PEN)))
  expect(lost).toEqual([])
}

describe.each(PAPERS)('on paper %s', (paper) => {
  it.each(SIZES)('a star mat with %s is shown whole, and neighbours share the overlap', (size) => {
    const pages = figurePages(`points: 5, tip-angle: 45, ${size}`, paper)
    expectWhole(pages)
    const windows = pages.map(shown)
    const overlap = Number(/overlap: (\d+)/.exec(paper)?.[1] ?? 10)
    for (const a of windows) {
      for (const b of windows) {
        const across = Math.min(a.max.x, b.max.x) - Math.max(a.min.x, b.min.x)
        const up = Math.min(a.max.y, b.max.y) - Math.max(a.min.y, b.min.y)
        if (a === b || across <= 1e-9 || up <= 1e-9) continue
        expect(Math.min(across, up)).toBeCloseTo(overlap, 9)
      }
    }
  })

  it('puts register marks of neighbours on the same points of the drawing', () => {
    const pages = figurePages('points: 7, tip-angle: 60, radius: 400', paper)
    const marks = pages.map((page) => ({ page, at: registerMarks(page) }))
    for (const { page, at } of marks) {
      for (const mark of at) {
        const sharing = marks.filter(({ page: other }) => other !== page && inside(mark, shown(other)))
        expect(sharing.length).toBeGreaterThan(0)
        expect(sharing.some(({ at: theirs }) => theirs.some((their) => near(mark, their)))).toBe(true)
      }
    }
    if (pages.length > 1) expect(marks.every(({ at }) => at.length >= 2)).toBe(true)
  })

  it('keeps everything printed around the drawing inside the printer margin', () => {
    const margin = Number(/margin: (\d+)/.exec(paper)?.[1] ?? 10)
    for (const page of figurePages('points: 7, tip-angle: 60, radius: 400', paper)) {
      const { shapes, artwork } = page.furniture()
      const box = extentsOf(shapes.filter((shape): shape is Path => shape.kind === 'path'))
      const corners = [
        ...(box ? [box.min, box.max] : []),
        ...shapes.flatMap((shape) => (shape.kind === 'label' ? labelBox(shape) : [])),
        // What of a mark leaves its window is cut off there.
        ...artwork.flatMap(({ artwork: { across, height }, at, window }) =>
          window ? [window.min, window.max] : [at, point(at.x + across, at.y + height)],
        ),
      ]
      const sheet = { min: point(0, 0), max: point(page.sheet.across, page.sheet.along) }
      expect(corners.filter((corner) => !inside(corner, sheet, margin - 1e-9))).toEqual([])
    }
  })

  it('names the neighbour on both sides of every seam: the page on the right or below is trimmed', () => {
    const pages = figurePages('points: 7, tip-angle: 60, radius: 400', paper)
    const told = pages.flatMap((page) =>
      wordsOf(page).flatMap((text) => {
        const trims = /^trim this edge, lay it on (\w+)$/.exec(text)?.[1]
        const covered = /^(\w+) is laid on here$/.exec(text)?.[1]
        return trims ? [`${page.name} on ${trims}`] : covered ? [`${covered} on ${page.name}`] : []
      }),
    )
    const wanted = pages.flatMap((later) =>
      pages
        .filter((earlier) => isBeside(earlier, later))
        .map((earlier) => `${later.name} on ${earlier.name}`),
    )
    expect(told.sort()).toEqual([...wanted, ...wanted].sort())
  })

  it('keeps every line of the notes on one page, off the strips that neighbours share', () => {
    const { pages, drawing } = printOf('points: 7, tip-angle: 60, radius: 400', paper)
    const figure = new Set(drawing.figure.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : [])))
    const own = pages.filter(({ name }) => name === NOTES_PAGE)
    const notes = (own.length > 0 ? shapesOn(own) : shapesOn(pages)).filter(
      (shape) => shape.kind === 'label' && !figure.has(shape.text),
    )
    expect(notes.length).toBeGreaterThan(5)
    const windows = (own.length > 0 ? own : pages).map(shown)
    for (const note of notes) {
      const touched = windows.filter((window) => spotsOn(note).some((spot) => inside(spot, window)))
      expect(touched).toHaveLength(1)
      expect(spotsOn(note).every((spot) => touched[0] && inside(spot, touched[0]))).toBe(true)
    }
  })
})

/** Middles of the register marks on a page, in the drawing's coordinates. */
const registerMarks = (page: Page): Point[] => {
  const { across, height } = FURNITURE.registerMark
  const shift = page.views[0]?.shift ?? point(0, 0)
  return page
    .furniture()
    .artwork.filter(({ window }) => window !== undefined)
    .map(({ at }) => point(at.x + across / 2 - shift.x, at.y + height / 2 - shift.y))
}

const near = (a: Point, b: Point): boolean => Math.hypot(a.x - b.x, a.y - b.y) < 1e-9

const wordsOf = (page: Page): string[] =>
  page.furniture().shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : []))

/** Does the later page join the earlier one at its left or its upper edge? */
const isBeside = (earlier: Page, later: Page): boolean => {
  const [a, b] = [shown(earlier), shown(later)]
  const level = Math.abs(a.min.y - b.min.y) < 1e-6
  const upright = Math.abs(a.min.x - b.min.x) < 1e-6
  const right = level && b.min.x > a.min.x + 1e-6 && b.min.x < a.max.x
  const below = upright && b.min.y < a.min.y - 1e-6 && b.max.y > a.min.y
  return right || below
}

it.each([250, 600, 1000])('a disc behind a star of %s mm radius is shown whole, its line too', (radius) => {
  const star = `points: 12, tip-angle: 130, radius: ${radius}, backing: { shape: disc, inset: 5 }`
  expectWhole(figurePages(star, '{ size: A4 }', 'backing'))
})

it('notes without room beside their figure stand on a page of their own, and nothing stands twice', () => {
  const { pages } = printOf('points: 8, tip-angle: 50, radius: 220', '{ size: A4 }', 'arm-pattern')
  const [figure, notes, ...more] = pages
  expect([figure?.name, notes?.name, more]).toEqual(['1A', NOTES_PAGE, []])
  const [drawn, words] = [figure, notes].map((page) => shapesOn(page ? [page] : []))
  expect(drawn?.filter((shape) => words?.includes(shape))).toEqual([])
  expect(words?.every(({ kind }) => kind === 'label')).toBe(true)
  expect(words?.length).toBeGreaterThan(3)
})

/** Common practice, no published source: two cut edges and tape cannot be followed along a line. */
it.each([
  ['regular: 6/2, across: 300', '{ size: A4 }'],
  ['regular: 6/2, across: 12 in', '{ size: Letter }'],
  ['points: 6, tip-angle: 60, across: 350', '{ size: Letter }'],
  ['points: 8, tip-angle: 45, across: 400', '{ size: A4 }'],
  ['points: 4, tip-angle: 40, across: 380', '{ size: A4 }'],
  ['points: 12, tip-angle: 30, across: 500', '{ size: A4 }'],
])('no seam of the mat of %s on %s runs along a line of an arm', (star, paper) => {
  const pages = figurePages(star, paper)
  const windows = pages.map(shown)
  expect(windows.length).toBeGreaterThan(1)
  const sides = shapesOn(pages).flatMap((shape) =>
    shape.kind === 'path' && shape.layer === 'PATTERN' ? outlineSides(shape) : [],
  )
  // The left and the upper edge of a page are those that are trimmed where a neighbour joins.
  const along = windows.flatMap((window) => [
    ...(windows.some(
      ({ min, max }) =>
        min.x < window.min.x - 1 && max.x > window.min.x && overlap(window, { min, max }, 'y'),
    )
      ? sides.filter(
          ([a, b]) => besideLine(a.x, b.x, window.min.x) && shared(a.y, b.y, window.min.y, window.max.y) > 20,
        )
      : []),
    ...(windows.some(
      ({ min, max }) =>
        max.y > window.max.y + 1 && min.y < window.max.y && overlap(window, { min, max }, 'x'),
    )
      ? sides.filter(
          ([a, b]) => besideLine(a.y, b.y, window.max.y) && shared(a.x, b.x, window.min.x, window.max.x) > 20,
        )
      : []),
  ])
  expect(along).toEqual([])
})

const besideLine = (from: number, to: number, line: number): boolean =>
  Math.max(Math.abs(from - line), Math.abs(to - line)) < 1.9

const shared = (from: number, to: number, least: number, most: number): number =>
  Math.min(Math.max(from, to), most) - Math.max(Math.min(from, to), least)

const overlap = (a: ReturnType<typeof shown>, b: ReturnType<typeof shown>, way: 'x' | 'y'): boolean =>
  Math.min(a.max[way], b.max[way]) - Math.max(a.min[way], b.min[way]) > 20
