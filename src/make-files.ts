import { cutPlan } from './compose/cut-plan.js'
import { cuttingList } from './compose/cutting-list.js'
import { cuttingPages, cuttingSheet } from './compose/cutting-sheet.js'
import { DRAWING_NAMES, type DrawingName } from './compose/drawing-names.js'
import { DRAWINGS, drawingFileName } from './compose/drawings.js'
import { jigCards } from './compose/jig-card.js'
import { drawJigs, jigTitle, type WantedJig, whyLeftOut } from './compose/jigs.js'
import { overview } from './compose/overview.js'
import { numberedPanels, panelDrawing } from './compose/panel-drawing.js'
import { panelPages } from './compose/panel-sheet.js'
import { shopCard } from './compose/shop-card.js'
import { forCutter } from './drawing/drawing.js'
import type { Drawing } from './drawing/model.js'
import type { FurnitureTexts } from './furniture/furniture-names.js'
import { type Furniture, furnitureWith } from './furniture/furniture-set.js'
import type { Steps } from './nest/run-steps.js'
import type { Order } from './order/order.js'
import { type OrderInput, parseOrder } from './order/parse.js'
import { capital, done, type Outcome, problemsOf, refused } from './order/problem.js'
import type { PanelPlan } from './panels/panel-plan.js'
import { cardBook, cuttingBook, panelBook } from './paper/card-book.js'
import type { PrintedBook, PrintedDrawing } from './paper/page.js'
import { drawingBook, patternBook } from './paper/pattern-book.js'
import { printCheck } from './paper/print-check.js'
import { layOnPaper } from './paper/tile.js'
import { type Plan, planOrder, type StarPlan } from './plan/plan.js'
import { briefStock, type StockPlan } from './stock/stock.js'
import { writeDxf } from './write/dxf.js'
import { pdfChunks } from './write/pdf.js'
import { writeSvg } from './write/svg.js'

/** A finished file: its path below the output folder, with forward slashes, and what it holds. */
export interface MadeFile {
  readonly path: string
  readonly content: FileContent
}

/** Text, or bytes that are made as they are read, for a PDF of hundreds of pages. */
export type FileContent = string | (() => AsyncIterable<Uint8Array>)

/** A drawing, its pages, and where its files go, without the ending. */
export interface DrawnFile {
  readonly star: string
  readonly drawing: Drawing
  readonly print: PrintedDrawing
  readonly path: string
}

/** A panel for the cutter, and where its files go, without the ending. */
export type DrawnPanel = Pick<DrawnFile, 'drawing' | 'path'>

/** Everything an order comes to. */
export interface MadeOrder {
  readonly plan: Plan
  /** The cut plan in words. */
  readonly planText: string
  /** The backings on panels. */
  readonly panels: PanelPlan
  readonly drawnPanels: readonly DrawnPanel[]
  readonly drawings: readonly DrawnFile[]
  /** All patterns in one file, as they are printed together. */
  readonly book: PrintedBook
  /** Jigs that the order wants and that have no drawing, star by star, and why. */
  readonly leftOut: readonly string[]
  /** The boards that a brief search finds. */
  readonly stock: Outcome<StockPlan>
  readonly files: readonly MadeFile[]
}

/** An order's plan, and the furniture of its pages; or everything that is wrong with either. */
export const furnishedPlan = (
  input: OrderInput,
  own: FurnitureTexts,
): Outcome<{ readonly plan: Plan; readonly furniture: Furniture }> => {
  const order = parseOrder(input)
  const plan = order.ok ? planOrder(order.value) : order
  const furniture = furnitureWith(own, order.ok ? order.value.lengths.units : 'mm')
  return plan.ok && furniture.ok
    ? done({ plan: plan.value, furniture: furniture.value })
    : refused([plan, furniture].flatMap(problemsOf))
}

/** Plan and panels -> drawings -> pages -> files. It tells each drawing as it is laid on paper. */
export function* fileSteps(
  plan: Plan,
  panels: PanelPlan,
  furniture: Furniture,
): Steps<string, Outcome<MadeOrder>> {
  const { order, stars: planned } = plan
  const jigs = new Map(planned.map((star) => [star, drawJigs(star, order, planned)]))
  const printed = yield* printDrawings(plan, jigs, furniture)
  if (!printed.ok) return printed

  const stars = planned.map(({ order: { name } }) => ({
    name,
    drawings: printed.value.filter(({ star }) => star === name).map(({ print }) => print),
  }))
  const chosen = briefStock(plan, panels)
  const stock = chosen.ok ? chosen.value : undefined
  const cards = planned.flatMap((star) => [
    shopCard(star, order, stock),
    ...jigCards(jigs.get(star) ?? [], star, order),
  ])
  const book = patternBook(stars, order, furniture)
  const shown = printed.value.map(({ print, ...drawn }) => ({ ...drawn, sheets: print.pages.length }))
  const planText = cutPlan(plan, stock)
  const drawnPanels = numberedPanels(panels).map((numbered) => ({
    drawing: panelDrawing(numbered, plan),
    path: `panels/${numbered.fileName}`,
  }))
  const leftOut = planned.flatMap((star) =>
    (jigs.get(star) ?? []).flatMap((wanted) =>
      whyLeftOut(wanted).map((why) => `${capital(jigTitle(wanted.name))}, "${star.order.name}": ${why}`),
    ),
  )
  const files: MadeFile[] = [
    ...printed.value.flatMap(({ drawing, print, path }): MadeFile[] => [
      { path: `${path}.svg`, content: writeSvg(forCutter(drawing)) },
      { path: `${path}.dxf`, content: writeDxf(forCutter(drawing), order.shop.cutter.dxf) },
      { path: `${path}.pdf`, content: () => pdfChunks(drawingBook(print)) },
    ]),
    { path: 'all-patterns.pdf', content: () => pdfChunks(book) },
    { path: 'shop-card.pdf', content: () => pdfChunks(cardBook(cards, order)) },
    { path: 'print-check.pdf', content: () => pdfChunks(printCheck(order, furniture)) },
    { path: 'cut-plan.txt', content: planText },
    ...(stock ? stockFiles(stock) : []),
    ...panelFiles(panels, drawnPanels),
    {
      path: 'index.html',
      content: overview(plan, shown, planText, {
        sheets: book.pages.length,
        boards: stock !== undefined,
        panels: drawnPanels,
        leftOut,
      }),
    },
  ]
  return done({
    plan,
    planText,
    panels,
    drawnPanels,
    drawings: printed.value,
    book,
    leftOut,
    stock: chosen,
    files,
  })
}

const stockFiles = (stock: StockPlan): MadeFile[] => [
  { path: 'cutting-list.txt', content: cuttingList(stock) },
  { path: 'cutting-list.svg', content: writeSvg(cuttingSheet(stock)) },
  {
    path: 'cutting-list.pdf',
    content: () => pdfChunks(cuttingBook(cuttingPages(stock), stock.plan.order)),
  },
]

/** Each panel for the cutter, and how all are laid out. */
const panelFiles = (found: PanelPlan, drawn: readonly DrawnPanel[]): MadeFile[] => {
  const { order } = found.plan
  return drawn.length === 0
    ? []
    : [
        ...drawn.flatMap(({ drawing, path }): MadeFile[] => [
          { path: `${path}.svg`, content: writeSvg(drawing) },
          { path: `${path}.dxf`, content: writeDxf(drawing, order.shop.cutter.dxf) },
        ]),
        { path: 'panels.pdf', content: () => pdfChunks(panelBook(panelPages(found), order)) },
      ]
}

/** Every drawing of every star, laid on the order's paper. */
function* printDrawings(
  { order, stars }: Plan,
  jigs: ReadonlyMap<StarPlan, readonly WantedJig[]>,
  furniture: Furniture,
): Generator<string, Outcome<DrawnFile[]>, unknown> {
  const outcomes: Outcome<DrawnFile>[] = []
  for (const star of stars)
    for (const composed of drawingsOf(star, jigs.get(star) ?? [], order, furniture)) {
      if (!composed.ok) {
        outcomes.push(composed)
        continue
      }
      yield composed.value.title
      const print = layOnPaper(composed.value, order, furniture)
      outcomes.push(print.ok ? done(drawnFile(star, composed.value, print.value)) : print)
    }
  const problems = outcomes.flatMap(problemsOf)
  return problems.length > 0
    ? refused(problems)
    : done(outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : [])))
}

const drawingsOf = (
  star: StarPlan,
  jigs: readonly WantedJig[],
  order: Order,
  furniture: Furniture,
): Outcome<Drawing>[] => [
  ...BEFORE_SAW.flatMap((name) => drawn(name, star, order, furniture)),
  // A jig nobody asked for, and that does not fit, is told of on the jig card.
  ...jigs
    .flatMap((wanted) => ('drawn' in wanted ? [wanted.drawn] : []))
    .filter((jig) => jig.ok || order.jigs.asked)
    .map((jig) => (jig.ok ? done(jig.value.drawing) : jig)),
  ...AFTER_SAW.flatMap((name) => drawn(name, star, order, furniture)),
]

/** In the order of work: the jigs serve between them. */
const BEFORE_SAW: readonly DrawingName[] = ['arm-pattern']
const AFTER_SAW = DRAWING_NAMES.filter((name) => !BEFORE_SAW.includes(name))

const drawn = (name: DrawingName, star: StarPlan, order: Order, furniture: Furniture): Outcome<Drawing>[] => {
  const drawing = DRAWINGS[name](star, order, furniture)
  return drawing ? [done(drawing)] : []
}

const drawnFile = (star: StarPlan, drawing: Drawing, print: PrintedDrawing): DrawnFile => ({
  star: star.order.name,
  drawing,
  print,
  path: `${star.order.fileName}/${drawingFileName(star, drawing)}`,
})
