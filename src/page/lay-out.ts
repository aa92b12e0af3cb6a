import { cuttingSheet } from '../compose/cutting-sheet.js'
import { gapHistogram } from '../compose/gap-histogram.js'
import { numberedPanels } from '../compose/panel-drawing.js'
import { filledText, panelNotes } from '../compose/panel-words.js'
import { chanceRows, riskWords } from '../compose/risk-report.js'
import { seasonRows } from '../compose/season-card.js'
import { acceptedText, layoutText, stepText, stressText, woodText } from '../compose/season-words.js'
import { takenText, verdictText } from '../compose/stock-words.js'
import type { Drawing } from '../drawing/model.js'
import { batchRisk } from '../fit/batch-risk.js'
import { closureLaw, type SawSet } from '../fit/closure-law.js'
import type { MadeOrder } from '../make-files.js'
import type { Order } from '../order/order.js'
import { showProblem } from '../order/problem.js'
import { takesPanels } from '../panels/panel-plan.js'
import type { Plan, StarPlan } from '../plan/plan.js'
import { type AdvisedStar, planSeason } from '../season/season-plan.js'
import type { Degrees } from '../units/brand.js'
import { writeSvg } from '../write/svg.js'
import { SIMULATED } from './gaps-file.js'
import { gridMap, isMapped } from './grid-map.js'
import type { Laid, LaidBoards, LaidChances, LaidPanels, LaidStar, Table } from './work.js'

/** Without its notes, which the page says beside it. */
const figureOf = (drawing: Drawing): string => writeSvg({ ...drawing, shapes: drawing.figure })

/** Everything about a made order that the page shows besides its plan. */
export const laidOrder = (made: MadeOrder): Laid => {
  const { plan, drawings, book, stock } = made
  const paths = made.files.map(({ path }) => path)
  const filesOf = (stem: string): string[] => paths.filter((path) => path.startsWith(`${stem}.`))
  const boards = plan.order.shop.boards.length === 0 ? undefined : laidBoards(stock, filesOf('cutting-list'))
  const panels = takesPanels(plan) ? laidPanels(made, filesOf) : undefined
  const laid = drawings.map(({ star, drawing, print, path }) => ({
    star,
    title: drawing.title,
    sheets: print.pages.length,
    notesOnly: print.pages.filter((page) => !isMapped(page)).length,
    map: gridMap(print),
    files: filesOf(path),
  }))
  const shown = new Set(
    [...laid, ...(panels?.drawings ?? []), panels, boards].flatMap((each) => each?.files ?? []),
  )
  return {
    drawings: laid,
    sheets: book.pages.length,
    ...(boards ? { boards } : {}),
    ...(panels ? { panels } : {}),
    stars: planSeason(plan).stars.map((star) => laidStar(star, plan)),
    leftOut: made.leftOut,
    files: paths.filter((path) => !shown.has(path)),
  }
}

const laidPanels = (
  { panels, drawnPanels }: MadeOrder,
  filesOf: (stem: string) => readonly string[],
): LaidPanels => ({
  words: panelNotes(panels).flat(),
  drawings: numberedPanels(panels).map(({ title, filled }, index) => {
    const { drawing, path } = drawnPanels[index] ?? {}
    if (!drawing || path === undefined) throw new Error('every panel is drawn')
    return { title, holds: filledText(filled), drawn: writeSvg(drawing), files: filesOf(path) }
  }),
  files: filesOf('panels'),
  stopped: panels.stopped,
})

const laidBoards = (stock: MadeOrder['stock'], files: readonly string[]): LaidBoards =>
  stock.ok
    ? {
        words: [`${takenText(stock.value)}.`, verdictText(stock.value)],
        sheet: writeSvg(cuttingSheet(stock.value)),
        files,
      }
    : { words: stock.problems.map(showProblem), files }

const laidStar = (season: AdvisedStar, { order }: Plan): LaidStar => {
  const { lengths, shop } = order
  const step = stepText(season, lengths)
  return {
    name: season.plan.order.name,
    wood: woodText(season),
    seasons: turned(seasonRows(season, order)),
    movement: [
      { heading: 'Closed', text: acceptedText(season, order) },
      ...(step === undefined ? [] : [{ heading: 'Valleys', text: step }]),
      { heading: 'Glued', text: stressText(season, lengths) },
      { heading: 'Grain', text: layoutText(season, shop.saw, lengths) },
    ],
    advice: season.advice.map(({ text }) => text),
    chances: laidChances(season.plan, order),
  }
}

/** Ways to set the saw that leave the same open differ in nothing else: they are simulated once. */
const laidChances = (star: StarPlan, order: Order): LaidStar['chances'] => {
  const byMean = new Map<Degrees, LaidChances>()
  const chances = (set: SawSet): LaidChances => {
    const { mean } = closureLaw(star, order.shop.saw, set)
    const laid = byMean.get(mean) ?? chancesOf(star, order, set)
    byMean.set(mean, laid)
    return laid
  }
  return { told: chances('told'), marks: chances('marks'), bare: chances('bare') }
}

const chancesOf = (star: StarPlan, order: Order, set: SawSet): LaidChances => {
  const risk = batchRisk(star, order.shop, { ...SIMULATED, set })
  return {
    table: chanceRows(risk),
    words: riskWords(risk, order),
    gaps: figureOf(gapHistogram(risk, order)),
  }
}

/** Rows as columns: three columns of a season's figures go on a phone, seven do not. */
const turned = (rows: Table): Table =>
  (rows[0] ?? []).map((_, column) => rows.map((cells) => cells[column] ?? ''))
