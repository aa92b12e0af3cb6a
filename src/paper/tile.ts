import { shapeExtents } from '../drawing/bounds.js'
import type { Drawing } from '../drawing/model.js'
import type { Furniture } from '../furniture/furniture-set.js'
import type { Order } from '../order/order.js'
import { done, type Outcome, type Problem, refused } from '../order/problem.js'
import { LONGEST_PAGE } from '../tables/paper.js'
import { mm } from '../units/convert.js'
import { showLength } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'
import { plainCount } from './fewest-pages.js'
import { layDrawing } from './lay-apart.js'
import { type Layout, placeName, printedPlaces } from './layout.js'
import { notesPage } from './notes-page.js'
import { NOTES_PAGE, type PrintedDrawing } from './page.js'
import { pageOf } from './page-of.js'

/** More sheets than anyone will tape together. */
const MOST_PAGES = 400

/** Lays a drawing on the order's paper at 1:1, on the fewest pages. */
export const layOnPaper = (drawing: Drawing, order: Order, furniture: Furniture): Outcome<PrintedDrawing> => {
  const { paper } = order.shop
  // A grid of so many sheets is not searched: the fewest would still be too many.
  const plain = plainCount(shapeExtents(drawing.figure), paper)
  if (plain > 4 * MOST_PAGES) return refused([tooManyPages(plain, drawing, order)])
  const { figures, notesApart } = layDrawing(drawing, paper)
  const counts = figures.map(({ layout }) => printedPlaces(layout).length)
  const count = counts.reduce((sum, each) => sum + each, 0)
  for (const { layout } of figures) {
    const problem = pageProblem(layout, count, drawing, order)
    if (problem) return refused([problem])
  }
  const title = (sheet: string) => ({
    title: drawing.title,
    documentType: drawing.kind.replaceAll('-', ' '),
    sheet,
    sheets: count + (notesApart ? 1 : 0),
  })
  const laid = figures.map((figure) =>
    printedPlaces(figure.layout).map((place) =>
      pageOf(figure, place, title(placeName(figure.layout, place)), order, furniture),
    ),
  )
  const noted = notesApart ? [notesPage(notesApart, title(NOTES_PAGE), order, furniture)] : []
  return done({
    drawing,
    pages: [...laid.flat(), ...noted],
    loose: [...laid.filter((pages) => pages.length === 1).flat(), ...noted],
  })
}

const pageProblem = (
  { sheet }: Layout,
  count: number,
  drawing: Drawing,
  order: Order,
): Problem | undefined => {
  const longest = Math.max(sheet.across * sheet.stretch.x, sheet.along * sheet.stretch.y)
  if (longest <= LONGEST_PAGE + SHOP) {
    return count > MOST_PAGES ? tooManyPages(count, drawing, order) : undefined
  }
  const { paper } = order.shop
  const wayOut =
    'roll' in paper.sheet
      ? 'Give the roll a longest piece: longest: 3000 mm.'
      : 'Print it on sheets or a roll: size: A4, or roll: 610 mm.'
  return {
    place: placeOf(order),
    given: drawing.title,
    advice: `It would be ${showLength(mm(longest), order.lengths)} long; a PDF page can be ${showLength(LONGEST_PAGE, order.lengths)} (ISO 32000). ${wayOut}`,
  }
}

const tooManyPages = (count: number, { title }: Drawing, order: Order): Problem => ({
  place: placeOf(order),
  given: title,
  advice: `It would take ${count} sheets; allowed: up to ${MOST_PAGES}. Use larger paper${'roll' in order.shop.paper.sheet ? '' : ' or a roll'}.`,
})

const placeOf = ({ shop }: Order): string =>
  'roll' in shop.paper.sheet ? 'shop.paper.roll' : 'shop.paper.size'
