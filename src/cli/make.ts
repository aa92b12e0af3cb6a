import { panelText } from '../compose/panel-words.js'
import { sizeText } from '../compose/size-text.js'
import { makeSteps } from '../make.js'
import type { DrawnPanel, MadeOrder } from '../make-files.js'
import { parseOrder } from '../order/parse.js'
import { problemsOf } from '../order/problem.js'
import { drive } from './drive.js'
import { writeOrder } from './files.js'
import type { Typed } from './order-flags.js'
import { orderInput } from './order-input.js'
import { ownFurniture } from './read-furniture.js'
import { secondsOf } from './seconds.js'
import { EXIT, progress, say, tellProblems } from './terminal.js'

/** `starwright make`: every file of the order. */
export const make = async (typed: Typed): Promise<number> => {
  const folder = String(typed.out)
  const quiet = typed.quiet === true
  const input = await orderInput(typed)
  const furniture = await ownFurniture(typed)
  const seconds = secondsOf(typed.seconds, Infinity, 'to the last step')
  if (!input.ok || !furniture.ok || !seconds.ok) {
    const order = input.ok ? parseOrder(input.value) : input
    return tellProblems([order, furniture, seconds].flatMap(problemsOf))
  }
  const until = performance.now() + seconds.value * 1000
  const made = await drive(makeSteps(input.value, furniture.value), (doing) => doing, progress(quiet), {
    until,
  })
  if (!made.ok) return tellProblems(made.problems)
  const written = await writeOrder(folder, { title: made.value.plan.order.title, files: made.value.files })
  if (!written.ok) return tellProblems(written.problems)
  if (!quiet)
    say(`${made.value.planText}\n${panelsTold(made.value)}${madeText(made.value, folder, written.value)}`)
  return EXIT.done
}

const panelsTold = ({ panels }: MadeOrder): string =>
  panels.uses.length === 0 ? '' : `${panelText(panels)}\n`

/** More sheets than this are no pleasure to tape. */
const MANY_SHEETS = 60

/** What was written, and the cut outlines' sizes to compare with what the cutter's own software shows. */
const madeText = (
  { plan, drawings, drawnPanels, book, files, leftOut }: MadeOrder,
  folder: string,
  removed: readonly string[],
): string => {
  const sizeRow = ({ drawing, path }: DrawnPanel): string =>
    `  ${sizeText(drawing.trueSize, plan.order.lengths)}  ${path}`
  const sizes = drawings
    .filter(({ drawing }) => drawing.shapes.some(({ layer }) => layer === 'CUT-OUTSIDE'))
    .map(sizeRow)
  const panels = drawnPanels.map((panel) => `${sizeRow(panel)} (the panel's edge, on GUIDE)`)
  const sheets = book.pages.length
  return [
    ...(sizes.length > 0
      ? [
          "Cut outlines, on the layer CUT-OUTSIDE. The cutter's software must show these sizes, or its units are wrong:",
          ...sizes,
          ...panels,
          '',
        ]
      : []),
    ...(sheets > MANY_SHEETS
      ? [`  ! ${sheets} sheets to print: think of a roll (--roll 610mm), or print the arm patterns only.`, '']
      : []),
    ...(leftOut.length > 0 ? [...leftOut, ''] : []),
    ...(removed.length > 0
      ? [`Removed ${removed.length} files of an earlier run that this order no longer has.`]
      : []),
    ...(plan.order.shop.paper.printed
      ? [
          'The pages of the patterns are corrected for your printer: on paper their frames measure what they say, both ways.',
        ]
      : []),
    `${files.length} files in ${folder}, ${sheets} sheets to print. Look at ${folder.replace(/\/$/, '')}/index.html first.`,
    '',
  ].join('\n')
}
