import { describe, expect, it } from 'vitest'
import { jigCards } from '../../src/compose/jig-card.js'
import { drawJigs } from '../../src/compose/jigs.js'
import { panelPages } from '../../src/compose/panel-sheet.js'
import { shopCard } from '../../src/compose/shop-card.js'
import { labelBox, shapeExtents } from '../../src/drawing/bounds.js'
import { furnitureWith } from '../../src/furniture/furniture-set.js'
import { makeOrder } from '../../src/make.js'
import { showProblem } from '../../src/order/problem.js'
import { planPanels } from '../../src/panels/plan-panels.js'
import { cardBook, panelBook } from '../../src/paper/card-book.js'
import { printCheck } from '../../src/paper/print-check.js'
import { planOf } from '../orders.js'
import { bytesOf, FURNITURE } from '../prints.js'
import { readPdf } from '../read-back/read-pdf.js'

/* Sheets: ISO 216 (A4: 210 x 297 mm); ASME Y14.1 (size A, 8.5 x 11 in). */
const A4 = [210, 297]
const LETTER = [215.9, 279.4]
const WIDE_TITLE = 'W'.repeat(60)
const LONG_CREATOR = 'Ålesundsgården og Émiles verksted ÄÖÜ W'

const cardsOf = async (text: string) => {
  const made = makeOrder({ text })
  if (!made.ok) throw new Error(made.problems.map(showProblem).join('\n'))
  const file = made.value.files.find(({ path }) => path === 'shop-card.pdf')
  if (!file) throw new Error('there is no shop card')
  return readPdf(Uint8Array.from(await bytesOf(file.content)))
}

const STAR = 'stars: [{ name: Pier, points: 5, tip-angle: 45, across: 300 mm, thickness: 19 mm }]'
const PLATED = STAR.replace(' }]', ', backing: { shape: star, inset: 12 mm } }]')

describe('cards are printed on the A4 or Letter that the shop has', () => {
  it.each([
    ['mm', 'size: A3', A4],
    ['mm', 'size: Letter', LETTER],
    ['in', 'size: A4', A4],
    ['in', 'size: Tabloid', LETTER],
    ['in', 'size: ANSI-D', LETTER],
    ['mm', 'roll: 610 mm', A4],
    ['in', 'roll: 610 mm', LETTER],
    ['mm', 'size: single', A4],
    ['in', 'size: single', LETTER],
  ])('%s, %s', async (units, paper, sheet) => {
    const pages = await cardsOf(`units: ${units}\n${STAR}\nshop: { paper: { ${paper} } }`)
    expect(pages.length).toBeGreaterThan(0)
    for (const { across, along } of pages)
      expect([across, along].map((side) => Number(side.toFixed(1)))).toEqual(sheet)
  })

  it('the print check is of the paper of the patterns, and names it', () => {
    const titleOf = (units: string, paper: string): string => {
      const made = makeOrder({ text: `units: ${units}\n${STAR}\nshop: { paper: { ${paper} } }` })
      const furniture = furnitureWith({}, 'mm')
      if (!made.ok || !furniture.ok) throw new Error('the order is right')
      const [page] = printCheck(made.value.plan.order, furniture.value).pages
      const { artwork } = page?.furniture() ?? { artwork: [] }
      const texts = artwork.flatMap(({ artwork: { marks } }) => marks)
      return texts.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])).join(' ')
    }
    expect(titleOf('mm', 'size: A3')).toContain('Print check, A3')
    expect(titleOf('in', 'size: Legal')).toContain('Print check, Legal')
    expect(titleOf('in', 'size: single')).toContain('Print check, Letter')
    expect(titleOf('mm', 'roll: 610 mm')).toContain('Print check, roll of 610.0 mm')
  })
})

describe.each([
  ['A4', 'size: A4'],
  ['Letter', 'size: Letter'],
  ['A4 that prints 3 % small', 'size: A4, printed: { across: 145.6, along: 145.6 }'],
  ['Letter that prints 3 % small', 'size: Letter, printed: { across: 145.6, along: 145.6 }'],
  ['Letter that prints 3 % large', 'size: Letter, printed: { across: 154.4, along: 154.4 }'],
])('the footer on %s', (_, paper) => {
  it.each([
    ['short', 'title: Fair'],
    ['as long as an order allows', `title: ${WIDE_TITLE}\ndate: 2026-11-28\ncreator: ${LONG_CREATOR}`],
    ['with marks over its letters', `title: ${'Ấ'.repeat(60)}\ncreator: ${'Ṻ'.repeat(40)}`],
  ])('stays between the margins and under the card, %s', (_what, head) => {
    const plan = planOf(
      `${head}\n${PLATED}\nshop: { panels: [{ length: 600 mm, width: 600 mm }], paper: { ${paper} } }`,
    )
    const { order, stars } = plan
    const books = [
      cardBook(
        stars.map((star) => shopCard(star, order)),
        order,
      ),
      cardBook(
        stars.flatMap((star) => jigCards(drawJigs(star, order, stars), star, order)),
        order,
      ),
      panelBook(panelPages(planPanels(plan)), order),
    ]
    for (const { pages } of books) expect(pages.length).toBeGreaterThan(0)
    const pages = books.flatMap((book) => book.pages)
    for (const { sheet, views, furniture } of pages) {
      const [card] = views
      if (!card) throw new Error('a page shows its card')
      const boxes = card.shapes.map((shape) => shapeExtents([shape]))
      const left = Math.min(...boxes.map(({ min }) => min.x)) + card.shift.x
      const right = Math.max(...boxes.map(({ max }) => max.x)) + card.shift.x
      const bottom = Math.min(...boxes.map(({ min }) => min.y)) + card.shift.y
      expect(left).toBeGreaterThan(9.9)
      expect(right).toBeLessThan(sheet.across - 9.9)
      const footer = furniture().shapes.filter((shape) => shape.kind === 'label')
      expect(footer.map(({ text }) => text).join(' ')).toMatch(/ · (?:card|page) \d of \d/)
      const corners = footer.flatMap((line) => labelBox(line))
      expect(Math.min(...corners.map(({ x }) => x))).toBeGreaterThan(9.9)
      expect(Math.max(...corners.map(({ x }) => x))).toBeLessThan(sheet.across - 9.9)
      expect(Math.min(...corners.map(({ y }) => y))).toBeGreaterThan(9.9)
      expect(Math.max(...corners.map(({ y }) => y))).toBeLessThan(bottom)
    }
  })
})

describe('a card is corrected for the printer that its own paper was checked on', () => {
  const wordsFor = (paper: string): string => {
    const { order, stars } = planOf(
      `${STAR}\nshop: { paper: { ${paper}, printed: { across: 149, along: 149.5 } } }`,
    )
    const { pages } = cardBook(
      stars.map((star) => shopCard(star, order)),
      order,
    )
    return pages
      .flatMap(({ furniture }) => furniture().shapes)
      .map((shape) => (shape.kind === 'label' ? shape.text : ''))
      .join(' ')
  }

  it.each(['size: A4', 'size: Letter', 'size: single'])('%s', (paper) => {
    expect(wordsFor(paper)).toContain('Corrected for a printer')
  })

  it.each(['size: A3', 'size: Legal', 'roll: 610 mm'])('not %s, which another machine may print', (paper) => {
    expect(wordsFor(paper)).not.toContain('Corrected for')
  })
})

it("a roll's print check names its rulers by the roll's own ways", () => {
  const { order } = planOf(`${STAR}\nshop: { paper: { roll: 610 mm } }`)
  const [page] = printCheck(order, FURNITURE).pages
  const labels = page?.views.flatMap(({ shapes }) =>
    shapes.flatMap((shape) => (shape.kind === 'label' ? [shape] : [])),
  )
  const named = (words: string) => labels?.find(({ text }) => text === words)
  // On the page the roll's width is level.
  expect(page?.sheet.across).toBeCloseTo(610, 6)
  expect(named("across: over the roll's width")?.turn ?? 0).toBe(0)
  expect(named('along: as the roll runs')?.turn).toBeCloseTo(Math.PI / 2, 9)
})
