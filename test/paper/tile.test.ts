import { describe, expect, it } from 'vitest'
import { showProblem } from '../../src/order/problem.js'
import type { Page } from '../../src/paper/page.js'
import { pageName } from '../../src/paper/page-name.js'
import { PAPER_NAMES } from '../../src/tables/paper.js'
import { laid, printOf } from '../prints.js'

const pagesOf = (star: string, paper: string): readonly Page[] => printOf(star, paper).pages

const problemsOf = (star: string, paper: string): string[] => {
  const print = laid(star, paper)
  return print.ok ? [] : print.problems.map(showProblem)
}

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

  it('lie upright or on their side, whichever takes fewer', () => {
    expect(pagesOf('points: 24, tip-angle: 100, across: 150', '{ size: A4 }')).toHaveLength(1)
    expect(pagesOf('points: 5, tip-angle: 45, across: 235', '{ size: A3 }')).toHaveLength(1)
  })

  // ISO 216 and ASME Y14.1, in mm from memory; Legal is a size of the trade outside that standard.
  const SIZES: Readonly<Record<(typeof PAPER_NAMES)[number], readonly [number, number]>> = {
    A4: [210, 297],
    A3: [297, 420],
    A2: [420, 594],
    A1: [594, 841],
    A0: [841, 1189],
    Letter: [215.9, 279.4],
    Legal: [215.9, 355.6],
    Tabloid: [279.4, 431.8],
    'ANSI-C': [431.8, 558.8],
    'ANSI-D': [558.8, 863.6],
    'ANSI-E': [863.6, 1117.6],
  }

  it.each(PAPER_NAMES)('on %s have the sides of the standard, upright or on their side', (size) => {
    for (const { sheet } of pagesOf('points: 6, tip-angle: 50, across: 330', `{ size: ${size} }`)) {
      const sides = [sheet.across, sheet.along].sort((a, b) => a - b)
      expect(sides[0]).toBeCloseTo(SIZES[size][0], 9)
      expect(sides[1]).toBeCloseTo(SIZES[size][1], 9)
    }
  })

  it('of a roll are as wide as it, and one is as long as the drawing', () => {
    const [page, ...more] = pagesOf('points: 5, tip-angle: 45, across: 400', '{ roll: 610 }')
    expect(more).toEqual([])
    expect(page?.sheet.across).toBe(610)
  })

  it('of a roll have files as wide as the roll and no longer than its longest piece, corrected too', () => {
    const paper = '{ roll: 610, longest: 420, printed: { across: 146, along: 153 } }'
    for (const { sheet } of pagesOf('points: 5, tip-angle: 45, across: 900', paper)) {
      expect(sheet.across * sheet.stretch.x).toBeCloseTo(610, 9)
      expect(sheet.along * sheet.stretch.y).toBeLessThanOrEqual(420 + 1e-9)
    }
  })

  it.each([300, 420, 700])('of a roll with longest: %i are no longer', (longest) => {
    const pages = pagesOf('points: 5, tip-angle: 45, across: 900', `{ roll: 610, longest: ${longest} }`)
    expect(pages.length).toBeGreaterThan(1)
    for (const { sheet } of pages) expect(sheet.along).toBeLessThanOrEqual(longest + 1e-9)
  })

  it('single: one page of the drawing with its notes, whatever its size', () => {
    const { pages, drawing } = printOf('points: 5, tip-angle: 45, across: 1800', '{ size: single }')
    expect(pages).toHaveLength(1)
    expect(pages[0]?.views[0]?.shapes).toEqual(drawing.shapes)
    expect(pages[0]?.sheet.across).toBeGreaterThan(1800)
    expect(pages[0]?.sheet.across).toBeLessThan(2000)
  })
})

describe('what is refused', () => {
  // ISO 32000-1, Annex C.2: 14 400 units of 1/72 in are 5080 mm.
  it('a page longer than PDF allows', () => {
    expect(problemsOf('points: 5, tip-angle: 45, across: 5200', '{ size: single }')).toEqual([
      'shop.paper.size: given Star: star mat. It would be 5244.1 mm long; a PDF page can be 5080.0 mm (ISO 32000). Print it on sheets or a roll: size: A4, or roll: 610 mm.',
    ])
  })

  it('more sheets than anyone tapes', () => {
    expect(problemsOf('points: 24, tip-angle: 150, across: 6000', '{ size: A4 }')).toEqual([
      'shop.paper.size: given Star: star mat. It would take 460 sheets; allowed: up to 400. Use larger paper or a roll.',
    ])
  })
})
