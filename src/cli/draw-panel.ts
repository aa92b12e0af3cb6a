import { type NumberedPanels, numberedPanels, panelDrawing } from '../compose/panel-drawing.js'
import { panelPages } from '../compose/panel-sheet.js'
import { panelText, stepText } from '../compose/panel-words.js'
import type { FileContent } from '../make-files.js'
import type { Order } from '../order/order.js'
import { done, type Outcome, problemsOf, refused, showGiven } from '../order/problem.js'
import type { PanelPlan } from '../panels/panel-plan.js'
import { panelSteps } from '../panels/plan-panels.js'
import { planOrder } from '../plan/plan.js'
import { drive } from './drive.js'
import { fileKind } from './file-kind.js'
import { writeDrawing } from './files.js'
import { noBacking } from './no-backing.js'
import type { Typed } from './order-flags.js'
import { secondsOf } from './seconds.js'
import { EXIT, progress, say, tellProblems } from './terminal.js'

/** `starwright draw panel`: one panel for the cutter as SVG or DXF, or how all are laid out as PDF. */
export const drawPanel = async (typed: Typed, order: Order): Promise<number> => {
  const file = String(typed.to)
  const plan = planOrder(order)
  const seconds = secondsOf(typed.seconds, Infinity, 'to the last step')
  const kind = fileKind(file, KINDS)
  const needs = needed(order)
  const number = wholePanel(typed.panel)
  if (!plan.ok || !seconds.ok || !kind.ok || !needs.ok || !number.ok)
    return tellProblems([plan, seconds, kind, needs, number].flatMap(problemsOf))
  const until = performance.now() + seconds.value * 1000
  const found = await drive(panelSteps(plan.value), stepText, progress(typed.quiet === true), { until })
  const panel = wantedPanel(number.value, found)
  if (!panel.ok) return tellProblems(panel.problems)
  const content = await contentOf(kind.value, found, panel.value)
  const written = await writeDrawing(file, content, typed.replace === true)
  if (!written.ok) return tellProblems(written.problems)
  if (typed.quiet !== true) {
    const what = kind.value === '.pdf' ? 'All panels' : panel.value.title
    say(`${panelText(found)}\n${what}: ${file}\n`)
  }
  return EXIT.done
}

const KINDS = ['.svg', '.dxf', '.pdf'] as const
type Kind = (typeof KINDS)[number]

const needed = ({ shop, stars }: Order): Outcome<true> => {
  if (shop.panels.length === 0) {
    return refused([
      {
        place: 'shop.panels',
        given: 'no panel',
        advice:
          'Say what you buy: panels: [{ length: 2440 mm, width: 1220 mm, thickness: 4 mm }] in the order.',
      },
    ])
  }
  return stars.some(({ backing }) => backing) ? done(true) : noBacking('order')
}

/** The first panel unless another is asked for. */
const wholePanel = (given: unknown): Outcome<number> =>
  given === undefined || (typeof given === 'string' && /^[1-9]\d{0,8}$/.test(given))
    ? done(Number(given ?? 1))
    : refused([
        {
          place: '--panel',
          given: showGiven(given),
          advice: 'Allowed: 1, 2 and so on, up to the last panel.',
        },
      ])

/** The layout of the panel with that number; panels cut alike have one. */
const wantedPanel = (number: number, found: PanelPlan): Outcome<NumberedPanels> => {
  const all = numberedPanels(found)
  const count = all.at(-1)?.last
  if (count === undefined) {
    return refused([
      {
        place: 'shop.panels',
        given: found.unplaced.map(({ order }) => order.name).join(', '),
        advice: 'No panel holds the backing. Give one that is large enough inside its edge, and as thick.',
      },
    ])
  }
  const panel = all.find(({ first, last }) => first <= number && number <= last)
  return panel
    ? done(panel)
    : refused([
        {
          place: '--panel',
          given: showGiven(String(number)),
          advice: count === 1 ? 'Allowed: 1, for there is one panel.' : `Allowed: 1 to ${count}.`,
        },
      ])
}

const contentOf = async (kind: Kind, found: PanelPlan, panel: NumberedPanels): Promise<FileContent> => {
  if (kind === '.pdf') {
    const { panelBook } = await import('../paper/card-book.js')
    const { pdfChunks } = await import('../write/pdf.js')
    return () => pdfChunks(panelBook(panelPages(found), found.plan.order))
  }
  const drawing = panelDrawing(panel, found.plan)
  return kind === '.svg'
    ? (await import('../write/svg.js')).writeSvg(drawing)
    : (await import('../write/dxf.js')).writeDxf(drawing, found.plan.order.shop.cutter.dxf)
}
