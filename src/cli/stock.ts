import { cuttingList } from '../compose/cutting-list.js'
import { stepText } from '../compose/panel-words.js'
import { stockJson } from '../compose/stock-json.js'
import type { FileContent } from '../make-files.js'
import { parseOrder } from '../order/parse.js'
import { done } from '../order/problem.js'
import { noPanels, type PanelPlan } from '../panels/panel-plan.js'
import { panelSteps } from '../panels/plan-panels.js'
import { planOrder } from '../plan/plan.js'
import { planStock, type StockPlan } from '../stock/stock.js'
import { drive } from './drive.js'
import { fileKind } from './file-kind.js'
import { writeDrawing } from './files.js'
import type { Typed } from './order-flags.js'
import { orderInput } from './order-input.js'
import { secondsOf } from './seconds.js'
import { EXIT, progress, say, tellProblems } from './terminal.js'

/** `starwright stock`: the cheapest boards, where to cut them, and what a star costs. */
export const stock = async (typed: Typed): Promise<number> => {
  const now = () => performance.now()
  const input = await orderInput(typed)
  const order = input.ok ? parseOrder(input.value) : input
  const plan = order.ok ? planOrder(order.value) : order
  const seconds = secondsOf(typed.seconds, SECONDS, String(SECONDS))
  const kind = typed.to === undefined ? done(undefined) : fileKind(String(typed.to), KINDS)
  if (!plan.ok || !seconds.ok || !kind.ok) {
    return tellProblems([plan, seconds, kind].flatMap((each) => (each.ok ? [] : each.problems)))
  }
  const panelsOf = async (): Promise<PanelPlan> => {
    if (!plan.value.order.shop.panels.some(({ price }) => price !== undefined)) return noPanels(plan.value)
    return drive(panelSteps(plan.value), stepText, progress(typed.quiet === true))
  }
  const stocked = await planStock(plan.value, { until: now() + seconds.value * 1000, now }, panelsOf)
  if (!stocked.ok) return tellProblems(stocked.problems)
  if (kind.value !== undefined) {
    const content = await contentOf(stocked.value, kind.value)
    const written = await writeDrawing(String(typed.to), content, typed.replace === true)
    if (!written.ok) return tellProblems(written.problems)
  }
  if (typed.json === true) process.stdout.write(stockJson(stocked.value))
  else if (typed.quiet !== true) say(cuttingList(stocked.value))
  return EXIT.done
}

/** As long as a maker waits without wondering. */
const SECONDS = 8

const KINDS = ['.svg', '.pdf'] as const

const contentOf = async (stocked: StockPlan, kind: (typeof KINDS)[number]): Promise<FileContent> => {
  const { cuttingPages, cuttingSheet } = await import('../compose/cutting-sheet.js')
  if (kind === '.svg') return (await import('../write/svg.js')).writeSvg(cuttingSheet(stocked))
  const { cuttingBook } = await import('../paper/card-book.js')
  const { pdfChunks } = await import('../write/pdf.js')
  const book = cuttingBook(cuttingPages(stocked), stocked.plan.order)
  return () => pdfChunks(book)
}
