import type { Furniture } from '../furniture/furniture-set.js'
import type { Order } from '../order/order.js'
import type { Bookmark, Page, PrintedBook, PrintedDrawing } from './page.js'
import { shareSheets, type TitledPage } from './share-sheets.js'

/** A star's drawings on their pages. */
export interface PrintedStar {
  readonly name: string
  readonly drawings: readonly PrintedDrawing[]
}

/** One drawing as a file of its own. */
export const drawingBook = ({ drawing, pages }: PrintedDrawing): PrintedBook => ({
  title: drawing.title,
  pages,
  bookmarks: [],
})

/** All drawings of an order in one file, in the order of work; small ones share sheets. */
export const patternBook = (
  stars: readonly PrintedStar[],
  order: Order,
  furniture: Furniture,
): PrintedBook => {
  const drawings = stars.flatMap((star) => star.drawings)
  const titled = drawings.flatMap(({ drawing, pages, loose }) =>
    pages.map((page): TitledPage => ({ title: drawing.title, page, whole: loose.includes(page) })),
  )
  const { pages, whereTo } = shareSheets(titled, order, furniture)
  let first = 0
  const bookmarks = stars.map(({ name, drawings }): Bookmark => {
    const children = drawings.map(({ drawing, pages }): Bookmark => {
      const bookmark = { title: drawing.kind.replaceAll('-', ' '), page: whereTo[first] ?? 0, children: [] }
      first += pages.length
      return bookmark
    })
    return { title: name, page: children[0]?.page ?? 0, children }
  })
  return { title: order.title, pages: numbered(drawings, pages, whereTo), bookmarks }
}

/** A drawing that shares a sheet has fewer sheets of its own than in its own file: its title blocks say so. */
const numbered = (
  drawings: readonly PrintedDrawing[],
  pages: readonly Page[],
  whereTo: readonly number[],
): Page[] => {
  const made = [...pages]
  let first = 0
  for (const { pages: alone } of drawings) {
    const places = whereTo.slice(first, first + alone.length)
    first += alone.length
    const own = places.filter((place, index) => pages[place] === alone[index])
    const others = [...new Set(places)].flatMap((place) =>
      own.includes(place) ? [] : (pages[place]?.name ?? []),
    )
    if (others.length === 0) continue
    for (const place of own) {
      const page = pages[place]
      if (page) made[place] = page.among?.(own.length, others) ?? page
    }
  }
  return made
}
