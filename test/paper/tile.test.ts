import { describe, expect, it } from 'vitest'
import { armPattern } from '../../src/compose/arm-pattern.js'
import { starMat } from '../../src/compose/star-mat.js'
import { shapeExtents } from '../../src/drawing/bounds.js'
import type { Path } from '../../src/drawing/model.js'
import { circle, extentsOf } from '../../src/geometry/outline.js'
import { type Point, point } from '../../src/geometry/point.js'
import { showProblem } from '../../src/order/problem.js'
import { pageName } from '../../src/paper/grid.js'
import type { Page } from '../../src/paper/page.js'
import { layOnPaper } from '../../src/paper/tile.js'
import { oneStar } from '../orders.js'

const lay = (star: string, paper: string) => {
  const plan = oneStar(star, `shop: { paper: ${paper} }`)
  const [first] = plan.stars
  if (!first) throw new Error('a plan has its star')
  return layOnPaper(starMat(first, plan.order), plan.order)
}

const pagesOf = (star: string, paper: string): readonly Page[] => {
  const print = lay(star, paper)
  if (!print.ok) throw new Error(print.problems.map(showProblem).join('\n'))
  return print.value.pages
}

/** The part of the drawing a page shows, in the drawing's coordinates. */
const shown = ({ window, shift }: Page) => ({
  min: point(window.min.x - shift.x, window.min.y - shift.y),
  max: point(window.max.x - shift.x, window.max.y - shift.y),
})

const SIZES = ['across: 90', 'across: 250', 'across: 400', 'radius: 600']
const PAPERS = [
  '{ size: A4 }',
  '{ size: Letter, margin: 6, overlap: 15 }',
  '{ size: A3, overlap: 8 }',
  '{ roll: 610 }',
]

describe.each(PAPERS)('on paper %s', (paper) => {
  it.each(SIZES)('a star mat with %s is shown whole, and neighbours share the overlap', (size) => {
    const star = `points: 5, tip-angle: 45, ${size}`
    const print = lay(star, paper)
    if (!print.ok) throw new Error('it fits')
    const pages = print.value.pages.filter(({ name }) => name !== 'Words')
    const all = shapeExtents(pages.flatMap(({ shapes }) => shapes))
    const windows = pages.map(shown)
    // Every spot of a fine raster over the drawing lies in some window.
    for (let i = 0; i <= 60; i++) {
      for (let j = 0; j <= 60; j++) {
        const spot = point(
          all.min.x + ((all.max.x - all.min.x) * i) / 60,
          all.min.y + ((all.max.y - all.min.y) * j) / 60,
        )
        expect(windows.some(({ min, max }) => inside(spot, min, max))).toBe(true)
      }
    }
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
    const pages = pagesOf('points: 7, tip-angle: 60, radius: 400', paper).filter(
      ({ name }) => name !== 'Words',
    )
    const marks = pages.map((page) => ({ page, at: registerMarks(page) }))
    for (const { page, at } of marks) {
      for (const mark of at) {
        const others = marks.filter(
          (other) => other.page !== page && inside(mark, shown(other.page).min, shown(other.page).max),
        )
        expect(others.length).toBeGreaterThan(0)
        expect(others.some(({ at: theirs }) => theirs.some((their) => near(mark, their)))).toBe(true)
      }
    }
    if (pages.length > 1) expect(marks.every(({ at }) => at.length >= 2)).toBe(true)
  })

  it('keeps every mark of a page inside the printer margin', () => {
    const margin = Number(/margin: (\d+)/.exec(paper)?.[1] ?? 10)
    for (const page of pagesOf('points: 7, tip-angle: 60, radius: 400', paper)) {
      const box = extentsOf(page.furniture.filter((shape): shape is Path => shape.kind === 'path'))
      expect(box?.min.x).toBeGreaterThanOrEqual(margin - 1e-9)
      expect(box?.min.y).toBeGreaterThanOrEqual(margin - 1e-9)
      expect(box?.max.x).toBeLessThanOrEqual(page.across - margin + 1e-9)
      expect(box?.max.y).toBeLessThanOrEqual(page.along - margin + 1e-9)
    }
  })
})

/** Centres of the rings among the furniture, in the drawing's coordinates. */
const registerMarks = (page: Page): Point[] =>
  page.furniture.flatMap((shape) => {
    const [a, b] = shape.kind === 'path' && shape.closed && shape.vertices.length === 2 ? shape.vertices : []
    return a && b ? [point((a.x + b.x) / 2 - page.shift.x, (a.y + b.y) / 2 - page.shift.y)] : []
  })

const inside = (p: Point, min: Point, max: Point): boolean =>
  p.x >= min.x - 1e-9 && p.x <= max.x + 1e-9 && p.y >= min.y - 1e-9 && p.y <= max.y + 1e-9

const near = (a: Point, b: Point): boolean => Math.hypot(a.x - b.x, a.y - b.y) < 1e-9

describe('pages', () => {
  it('are named by row number and column letter, without I and O (ISO 5457)', () => {
    expect([
      pageName(0, 0),
      pageName(1, 1),
      pageName(11, 8),
      pageName(0, 13),
      pageName(0, 24),
      pageName(2, 48),
    ]).toEqual(['1A', '2B', '12J', '1P', '1AA', '3BA'])
  })

  it('name their neighbours', () => {
    const pages = pagesOf('points: 5, tip-angle: 45, across: 273', '{ size: A4 }')
    const joins = pages.map(({ name, furniture }) => [
      name,
      furniture
        .flatMap((shape) => (shape.kind === 'label' && shape.text.startsWith('Joins') ? [shape.text] : []))
        .join(),
    ])
    expect(Object.fromEntries(joins)).toEqual({
      '1A': 'Joins 1B right, 2A below',
      '1B': 'Joins 1A left, 2B below',
      '2A': 'Joins 2B right, 1A above',
      '2B': 'Joins 2A left, 1B above',
    })
  })

  it('carry the words on a sheet of their own when no seam then runs through the drawing', () => {
    const plan = oneStar('points: 8, tip-angle: 50, radius: 220', 'shop: { paper: { size: A4 } }')
    const print = plan.stars[0] && layOnPaper(armPattern(plan.stars[0], plan.order), plan.order)
    const [figure, words, ...more] = print?.ok ? print.value.pages : []
    expect([figure?.name, words?.name, more]).toEqual(['1A', 'Words', []])
    const shownTwice = figure?.shapes.filter((shape) => words?.shapes.includes(shape))
    expect(shownTwice).toEqual([])
    expect(words?.shapes.every(({ kind }) => kind === 'label')).toBe(true)
    expect(words?.shapes.length).toBeGreaterThan(3)
  })

  it('lie upright or on their side, whichever takes fewer', () => {
    const upright = pagesOf('points: 24, tip-angle: 100, across: 150', '{ size: A4 }')
    expect(upright).toHaveLength(1)
    const wide = pagesOf('points: 5, tip-angle: 45, across: 235', '{ size: A3 }')
    expect(wide).toHaveLength(1)
  })

  it('a roll takes one page as long as the drawing', () => {
    const [page, ...more] = pagesOf('points: 5, tip-angle: 45, across: 400', '{ roll: 610 }')
    expect(more).toEqual([])
    expect(page?.across).toBe(610)
  })

  it('a page longer than PDF allows is refused (ISO 32000-1, Annex C.2: 14 400 units, 5080 mm)', () => {
    const print = lay('points: 5, tip-angle: 45, across: 6000', '{ roll: 1000 }')
    expect(print.ok ? [] : print.problems.map(showProblem)).toEqual([
      'shop.paper.roll: given Star: star mat. It would be 5806.8 mm long; a PDF page can be 5080.0 mm (ISO 32000). Make the star smaller.',
    ])
  })

  it('more sheets than anyone tapes are refused', () => {
    const print = lay('points: 5, tip-angle: 45, across: 5000', '{ size: A4 }')
    expect(print.ok ? [] : print.problems.map(showProblem)).toEqual([
      'shop.paper.size: given Star: star mat. It would take 560 sheets; allowed: up to 400. Use larger paper or a roll.',
    ])
  })
})

it('a full circle is two arcs, as the register marks are drawn', () => {
  expect(circle(point(0, 0), 2).vertices).toHaveLength(2)
})
