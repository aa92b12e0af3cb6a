import { extname } from 'node:path'
import { DRAWING_NAMES, DRAWN_NAMES, type DrawnName, JIG_CARD, PANEL } from '../compose/drawing-names.js'
import { DRAWINGS } from '../compose/drawings.js'
import { jigCard, jigCards } from '../compose/jig-card.js'
import { drawJig, drawJigs } from '../compose/jigs.js'
import { sizeText } from '../compose/size-text.js'
import type { Drawing } from '../drawing/model.js'
import type { Furniture } from '../furniture/furniture-set.js'
import type { FileContent } from '../make-files.js'
import { JIG_NAMES, type Order } from '../order/order.js'
import { done, type Outcome, type Problem, refused, showGiven } from '../order/problem.js'
import { cardBook } from '../paper/card-book.js'
import { planOrder, type StarPlan } from '../plan/plan.js'
import { contentFor } from './content-for.js'
import { writeDrawing } from './files.js'
import { furnishedOrder } from './furnished-order.js'
import { noBacking } from './no-backing.js'
import type { Typed } from './order-flags.js'
import { EXIT, say, tellProblems } from './terminal.js'

/** `starwright draw`: one drawing of one star, in the format the file's ending names. */
export const draw = async (typed: Typed): Promise<number> => {
  const name = DRAWN_NAMES.find((each) => each === typed.DRAWING)
  if (!name) throw new Error('the command line has checked the drawing')
  const file = String(typed.to)
  const foreign = name === PANEL ? [] : ofPanelOnly(typed)
  if (foreign.length > 0) return tellProblems(foreign)
  const furnished = await furnishedOrder(typed)
  if (!furnished.ok) return tellProblems(furnished.problems)
  const { order, furniture } = furnished.value
  if (name === PANEL) return (await import('./draw-panel.js')).drawPanel(typed, order)
  const star = onlyStar(order)
  if (!star.ok) return tellProblems(star.problems)
  const drawn =
    name === JIG_CARD && extname(file).toLowerCase() === '.pdf'
      ? done(await cardPages(star.value, order))
      : await drawnFile(name, file, star.value, order, furniture)
  if (!drawn.ok) return tellProblems(drawn.problems)
  const written = await writeDrawing(file, drawn.value.content, typed.replace === true)
  if (!written.ok) return tellProblems(written.problems)
  if (typed.quiet !== true) say(`${drawn.value.told}: ${file}\n`)
  return EXIT.done
}

/** Flags that mean nothing for a drawing of one star. */
const ofPanelOnly = (typed: Typed): Problem[] =>
  ['panel', 'seconds']
    .filter((flag) => typed[flag] !== undefined)
    .map((flag) => ({
      place: `--${flag}`,
      given: showGiven(typed[flag]),
      advice: `It is for draw ${PANEL}. Take it out.`,
    }))

/** What goes into the file, and what is said of it. */
interface DrawnFile {
  readonly content: FileContent
  readonly told: string
}

/** The star to draw. */
const onlyStar = (order: Order): Outcome<StarPlan> => {
  const names = order.stars.map((star) => star.name)
  if (names.length > 1) {
    return refused([
      {
        place: '--star',
        given: 'nothing',
        advice: `The order has ${names.length} stars: say which one to draw, ${names.map((each) => showGiven(each)).join(', ')}.`,
      },
    ])
  }
  const plan = planOrder(order)
  if (!plan.ok) return plan
  const [star] = plan.value.stars
  if (!star) throw new Error('an order has a star')
  return done(star)
}

/** Jigs on cards as `make` writes them: none runs over the edge of a sheet. */
const cardPages = async (star: StarPlan, order: Order): Promise<DrawnFile> => {
  const { pdfChunks } = await import('../write/pdf.js')
  const book = cardBook(jigCards(drawJigs(star, order, [star]), star, order), order, 'jig cards')
  const sheets = book.pages.length
  return {
    content: () => pdfChunks(book),
    told: `${star.order.name}: jigs, ${sheets} ${sheets === 1 ? 'sheet' : 'sheets'}`,
  }
}

const drawnFile = async (
  name: DrawnName,
  file: string,
  star: StarPlan,
  order: Order,
  furniture: Furniture,
): Promise<Outcome<DrawnFile>> => {
  const drawing = oneDrawing(name, star, order, furniture)
  if (!drawing.ok) return drawing
  const { title, trueSize } = drawing.value
  const content = await contentFor(file, drawing.value, order, furniture)
  return content.ok
    ? done({ content: content.value, told: `${title}, ${sizeText(trueSize, order.lengths)}` })
    : content
}

const oneDrawing = (
  name: DrawnName,
  star: StarPlan,
  order: Order,
  furniture: Furniture,
): Outcome<Drawing> => {
  const jig = JIG_NAMES.find((each) => each === name)
  if (jig) {
    const drawn = drawJig(jig, star, order)
    return drawn.ok ? done(drawn.value.drawing) : drawn
  }
  if (name === JIG_CARD) return done(jigCard(star, order))
  const other = DRAWING_NAMES.find((each) => each === name)
  const drawing = other && DRAWINGS[other](star, order, furniture)
  return drawing ? done(drawing) : noBacking(star.order.name)
}
