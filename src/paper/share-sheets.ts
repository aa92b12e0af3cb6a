import { shapeExtents } from '../drawing/bounds.js'
import { SMALL, wrapText } from '../drawing/lettering.js'
import type { Shape } from '../drawing/model.js'
import { label } from '../drawing/shapes.js'
import type { Furniture } from '../furniture/furniture-set.js'
import { isReadWhole } from '../furniture/slots.js'
import type { Extents } from '../geometry/outline.js'
import { type Point, point, subtract } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import { mm } from '../units/convert.js'
import type { Page, View } from './page.js'
import { longestWindow, pieceOfRoll, type Sheet, windowSize } from './sheet.js'
import { strip } from './strip.js'

/** White between drawings that share a sheet. */
const GAP = 8

/** A page of a file, and the title of the drawing it shows. */
export interface TitledPage {
  readonly title: string
  readonly page: Page
  /** Does the drawing, or its notes, lie on this page alone, so that it may lie anywhere? */
  readonly whole: boolean
}

/** A drawing's place among the pages of a file, counted from 0. */
export interface Shared {
  readonly pages: readonly Page[]
  /** For each page that came in, the page it went to. */
  readonly whereTo: readonly number[]
}

/** A part of a sheet that is still bare, in the window's coordinates. */
interface Bare {
  readonly corner: Point
  readonly across: number
  readonly along: number
}

interface OpenSheet {
  readonly sheet: Sheet
  readonly bare: readonly Bare[]
  readonly placed: readonly Placed[]
}

interface Placed {
  readonly from: TitledPage
  readonly view: View
}

/**
 * Puts small drawings together on sheets, in their order: each onto the first sheet with room for it. A sheet that
 * holds one drawing stays as it was.
 */
export const shareSheets = (pages: readonly TitledPage[], order: Order, furniture: Furniture): Shared => {
  const sheets: (OpenSheet | TitledPage)[] = []
  const whereTo = pages.map((titled) => {
    const block = titled.whole ? blockOf(titled) : undefined
    for (const [index, open] of sheets.entries()) {
      if (!block || !('bare' in open) || !isAlike(open.sheet, titled.page.sheet, order)) continue
      const next = placeOn(open, titled, block)
      if (!next) continue
      sheets[index] = next
      return index
    }
    const opened = block && placeOn(emptySheet(openedSheet(titled.page.sheet, block, order)), titled, block)
    sheets.push(opened ?? titled)
    return sheets.length - 1
  })
  const shared = sheets.filter((sheet) => 'bare' in sheet && sheet.placed.length > 1)
  return {
    whereTo,
    pages: sheets.map((sheet) => {
      if (!('bare' in sheet)) return sheet.page
      const [only, ...more] = sheet.placed
      if (only && more.length === 0) return only.from.page
      return sharedPage(sheet, `S${shared.indexOf(sheet) + 1}`, shared.length, order, furniture)
    }),
  }
}

/** Everything a page shows under its own title, and how far it reaches. */
const blockOf = ({
  title,
  page,
}: TitledPage): { readonly shapes: readonly Shape[]; readonly box: Extents } => {
  const shown = page.views.flatMap((view) => view.shapes)
  const shapes = [...caption(title, shown), ...shown]
  return { shapes, box: shapeExtents(shapes) }
}

/** Narrower blocks have a title that reaches over their side. */
const CAPTION_WIDTH = 60

/** The drawing's title above what is shown of it, unless the heading of its notes says as much: the star, and what of it. */
const caption = (title: string, shown: readonly Shape[]): Shape[] => {
  const star = starIn(title)
  if (shown.some((shape) => shape.kind === 'label' && shape.text.startsWith(`${star}: `))) return []
  const { min, max } = shapeExtents(shown)
  const rows = wrapText(title, SMALL, mm(Math.max(max.x - min.x, CAPTION_WIDTH))).toReversed()
  return rows.map((text, row) =>
    label(text, point(min.x, max.y + SMALL * (CAPTION_ABOVE + row * ROW)), { height: SMALL }),
  )
}

/** What stands before the last colon of a drawing's title. */
const starIn = (title: string): string => title.slice(0, Math.max(0, title.lastIndexOf(': ')))

/** From a block to the baseline over it, and from that to the next, over the height of a capital: tails and accents. */
const CAPTION_ABOVE = 0.8
const ROW = 1.8

/** Pieces of a roll are cut to any length: what fits on one may lie there. */
const isAlike = (a: Sheet, b: Sheet, { shop: { paper } }: Order): boolean =>
  a.across === b.across && (a.along === b.along || 'roll' in paper.sheet)

/** A piece of a roll that fits its only drawing has no white for a neighbour: it is cut longer. */
const openedSheet = (
  sheet: Sheet,
  { box }: ReturnType<typeof blockOf>,
  { shop: { paper } }: Order,
): Sheet => {
  if (!('roll' in paper.sheet)) return sheet
  const { roll, longest } = paper.sheet
  const along = box.max.y - box.min.y + GAP
  const fits = along <= longestWindow(paper, roll, longest)
  return fits ? pieceOfRoll(paper, roll, Math.max(along, windowSize(sheet).along)) : sheet
}

const emptySheet = (sheet: Sheet): OpenSheet => {
  const { across, along } = windowSize(sheet)
  return { sheet, placed: [], bare: [{ corner: sheet.window.min, across, along }] }
}

/** In the bare part it fills best; what is left of that part beside and below it stays bare. */
const placeOn = (
  open: OpenSheet,
  from: TitledPage,
  { shapes, box }: ReturnType<typeof blockOf>,
): OpenSheet | undefined => {
  const across = box.max.x - box.min.x + GAP
  const along = box.max.y - box.min.y + GAP
  const spare = (bare: Bare): number => Math.min(bare.across - across, bare.along - along)
  const [best] = open.bare.filter((bare) => spare(bare) >= 0).sort((a, b) => spare(a) - spare(b))
  if (!best) return undefined
  const top = best.corner.y + best.along
  const low = point(best.corner.x + GAP / 2, top - along + GAP / 2)
  const window = {
    min: point(low.x - GAP / 2, low.y - GAP / 2),
    max: point(low.x + across - GAP / 2, top),
  }
  const left: Bare[] = [
    { corner: point(best.corner.x + across, top - along), across: best.across - across, along },
    { corner: best.corner, across: best.across, along: best.along - along },
  ]
  return {
    sheet: open.sheet,
    placed: [...open.placed, { from, view: { shapes, window, shift: subtract(low, box.min) } }],
    bare: [...open.bare.filter((bare) => bare !== best), ...left],
  }
}

const sharedPage = (
  { sheet, placed }: OpenSheet,
  name: string,
  count: number,
  order: Order,
  furniture: Furniture,
): Page => ({
  name,
  sheet,
  views: placed.map(({ view }) => view),
  furniture: () => {
    const fits = (title: string): boolean => isReadWhole(furniture.titleBlock, { title })
    const title = titleOfAll(
      placed.map(({ from }) => from.title),
      fits,
    )
    return strip(sheet, { title, documentType: 'patterns', sheet: name, sheets: count }, order, furniture)
  },
})

/**
 * `Boathouse: blank stop + angle gauge; Chapel: arm`, where what stands before the last colon is said once; or only the
 * stars, or how many drawings, for each is lettered with its own title.
 */
const titleOfAll = (titles: readonly string[], fits: (title: string) => boolean): string => {
  const byStar = new Map<string, Set<string>>()
  for (const title of titles) {
    const star = starIn(title)
    const what = title.slice(star === '' ? 0 : star.length + 2)
    byStar.set(star, (byStar.get(star) ?? new Set()).add(what))
  }
  const whole = [...byStar].map(
    ([star, whats]) => `${star === '' ? '' : `${star}: `}${[...whats].join(' + ')}`,
  )
  const count = `${titles.length} drawings`
  return [whole.join('; '), `${[...byStar.keys()].join(', ')}: ${count}`].find(fits) ?? count
}
