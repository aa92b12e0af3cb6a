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
import { layFigure } from './lay-figure.js'
import { type Layout, printedPlaces } from './layout.js'
import { notesPage } from './notes-page.js'
import { NOTES_PAGE, type PrintedDrawing } from './page.js'
import { pageName } from './page-name.js'
import { pageOf } from './page-of.js'

/** More sheets than anyone will tape together. */
const MOST_PAGES = 400

/** Lays a drawing on the order's paper at 1:1, on the fewest pages. */
export const layOnPaper = (drawing: Drawing, order: Order, furniture: Furniture): Outcome<PrintedDrawing> => {
  const { paper } = order.shop
  // A grid of so many sheets is not searched: the fewest would still be too many.
  const plain = plainCount(shapeExtents(drawing.figure), paper)
  if (plain > 4 * MOST_PAGES) return refused([tooManyPages(plain, drawing, order)])
  const { figure, notesApart } = layFigure(drawing, paper)
  const places = printedPlaces(figure.layout)
  const problem = pageProblem(figure.layout, places.length, drawing, order)
  if (problem) return refused([problem])
  const sheets = places.length + (notesApart ? 1 : 0)
  const title = (sheet: string) => ({
    title: drawing.title,
    documentType: drawing.kind.replaceAll('-', ' '),
    sheet,
    sheets,
  })
  return done({
    drawing,
    pages: [
      ...places.map((place) =>
        pageOf(figure, place, title(pageName(place.row, place.column)), order, furniture),
      ),
      ...(notesApart ? [notesPage(notesApart, title(NOTES_PAGE), order, furniture)] : []),
    ],
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
