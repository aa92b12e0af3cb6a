import { cuttingSheet } from '../compose/cutting-sheet.js'
import { gapHistogram } from '../compose/gap-histogram.js'
import { chanceRows, riskWords } from '../compose/risk-report.js'
import { seasonRows } from '../compose/season-card.js'
import { layoutText, stepText, stressText, woodText } from '../compose/season-words.js'
import { takenText, verdictText } from '../compose/stock-words.js'
import type { Drawing } from '../drawing/model.js'
import { batchRisk } from '../fit/batch-risk.js'
import type { MadeOrder } from '../make.js'
import { showProblem } from '../order/problem.js'
import type { Plan } from '../plan/plan.js'
import { type AdvisedStar, planSeason } from '../season/season-plan.js'
import { writeSvg } from '../write/svg.js'
import { gridMap } from './grid-map.js'
import type { Laid, LaidBoards, LaidStar } from './work.js'

/** As many stars as the command line simulates, from the same seed. */
const SIMULATED = { set: 'told', simulated: 200_000, seed: 1 } as const

/** Without its notes, which the page says beside it. */
const figureOf = (drawing: Drawing): string => writeSvg({ ...drawing, shapes: drawing.figure })

/** Everything about a made order that the page shows besides its plan. */
export const laidOrder = ({ plan, drawings, files, book, stock }: MadeOrder): Laid => {
  const ofDrawings = new Set<string>()
  const ofBoards = files.map(({ path }) => path).filter((path) => path.startsWith('cutting-list.'))
  const boards = plan.order.shop.boards.length === 0 ? undefined : laidBoards(stock, ofBoards)
  return {
    drawings: drawings.map(({ star, drawing, print, path }) => {
      const own = files.map((file) => file.path).filter((file) => file.startsWith(`${path}.`))
      for (const file of own) ofDrawings.add(file)
      return { star, title: drawing.title, sheets: print.pages.length, map: gridMap(print), files: own }
    }),
    sheets: book.pages.length,
    ...(boards ? { boards } : {}),
    stars: planSeason(plan).stars.map((star) => laidStar(star, plan)),
    files: files.map(({ path }) => path).filter((path) => !ofDrawings.has(path) && !ofBoards.includes(path)),
  }
}

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
  const risk = batchRisk(season.plan, shop, SIMULATED)
  const step = stepText(season, lengths)
  return {
    name: season.plan.order.name,
    wood: woodText(season),
    seasons: seasonRows(season, order),
    movement: [
      ...(step === undefined ? [] : [{ heading: 'Valleys', text: step }]),
      { heading: 'Glued', text: stressText(season, lengths) },
      { heading: 'Grain', text: layoutText(season, shop.saw, lengths) },
    ],
    advice: season.advice.map(({ text }) => text),
    chances: chanceRows(risk),
    risk: riskWords(risk, order),
    gaps: figureOf(gapHistogram(risk, order)),
  }
}
