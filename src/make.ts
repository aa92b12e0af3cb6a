import { cutPlan } from './compose/cut-plan.js'
import { DRAWING_NAMES } from './compose/drawing-names.js'
import { DRAWINGS, drawingFileName } from './compose/drawings.js'
import { overview } from './compose/overview.js'
import type { Drawing } from './drawing/model.js'
import type { Order } from './order/order.js'
import { type OrderInput, parseOrder } from './order/parse.js'
import { done, type Outcome, refused } from './order/problem.js'
import type { PrintedDrawing } from './paper/page.js'
import { layOnPaper } from './paper/tile.js'
import { type Plan, planOrder, type StarPlan } from './plan/plan.js'
import { writeDxf } from './write/dxf.js'
import { writePdf } from './write/pdf.js'
import { writeSvg } from './write/svg.js'

/** A finished file: its path below the output folder, with forward slashes, and what it holds. */
export interface MadeFile {
  readonly path: string
  readonly content: string | Uint8Array
}

/** A drawing, its pages, and where its files go, without the ending. */
export interface DrawnFile {
  readonly star: string
  readonly drawing: Drawing
  readonly print: PrintedDrawing
  readonly path: string
}

/** Everything an order comes to. */
export interface MadeOrder {
  readonly plan: Plan
  /** The cut plan as text. */
  readonly card: string
  readonly drawings: readonly DrawnFile[]
  readonly files: readonly MadeFile[]
}

/** The whole flow: order -> plan -> drawings -> pages -> files. Nothing is written to disk here. */
export const makeOrder = async (
  input: OrderInput,
  onProgress: (doing: string) => void = () => {},
): Promise<Outcome<MadeOrder>> => {
  const order = parseOrder(input)
  if (!order.ok) return order
  const plan = planOrder(order.value)
  if (!plan.ok) return plan
  const printed = printDrawings(plan.value)
  if (!printed.ok) return printed

  const files: MadeFile[] = []
  for (const { drawing, print, path } of printed.value) {
    onProgress(drawing.title)
    files.push(
      { path: `${path}.svg`, content: writeSvg(drawing) },
      { path: `${path}.dxf`, content: writeDxf(drawing, order.value.shop.cutter.dxf) },
      { path: `${path}.pdf`, content: await writePdf(print) },
    )
  }
  const shown = printed.value.map(({ print, ...drawn }) => ({ ...drawn, sheets: print.pages.length }))
  const card = cutPlan(plan.value)
  files.push({ path: 'cut-plan.txt', content: card })
  files.push({ path: 'index.html', content: overview(plan.value, shown, card) })
  return done({ plan: plan.value, card, drawings: printed.value, files })
}

/** Every drawing of every star, laid on the order's paper. */
const printDrawings = ({ order, stars }: Plan): Outcome<DrawnFile[]> => {
  const outcomes = stars.flatMap((star) =>
    drawingsOf(star, order).map((drawing): Outcome<DrawnFile> => {
      const print = layOnPaper(drawing, order)
      return print.ok ? done(drawnFile(star, drawing, print.value)) : print
    }),
  )
  const problems = outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.problems))
  return problems.length > 0
    ? refused(problems)
    : done(outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : [])))
}

const drawingsOf = (star: StarPlan, order: Order): Drawing[] =>
  DRAWING_NAMES.map((name) => DRAWINGS[name](star, order)).filter((drawing) => drawing !== undefined)

const drawnFile = (star: StarPlan, drawing: Drawing, print: PrintedDrawing): DrawnFile => ({
  star: star.order.name,
  drawing,
  print,
  path: `${star.order.fileName}/${drawingFileName(star, drawing)}`,
})
