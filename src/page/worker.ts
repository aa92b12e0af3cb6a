import { zipSync } from 'fflate'
import { dryFitDrawing } from '../compose/dry-fit-drawing.js'
import { stepText } from '../compose/panel-words.js'
import { furnitureWith } from '../furniture/furniture-set.js'
import { type FileContent, fileSteps, furnishedPlan, type MadeOrder } from '../make-files.js'
import { lastOf, type Steps, toldAs } from '../nest/run-steps.js'
import { done, type Outcome, problemsOf, refused, showProblem } from '../order/problem.js'
import { noPanels, type PanelPlan, takesPanels } from '../panels/panel-plan.js'
import { cardBook } from '../paper/card-book.js'
import type { Plan } from '../plan/plan.js'
import { writePdf } from '../write/pdf.js'
import { dryFitFile, fitOf } from './fit-of.js'
import { gapsFile } from './gaps-file.js'
import { jobOf } from './job.js'
import { laidOrder } from './lay-out.js'
import type { Measured } from './measured.js'
import { type Answer, type Ask, ENOUGH, type Given, isSameGiven } from './work.js'

/** What an archive's entries are dated, so that the same order gives the same archive. */
const FIXED_DATE = new Date(2000, 0, 1)

/** The folder and file names an archive begins with. */
const ARCHIVE = 'starwright.zip'
const ORDER_FILE = 'order.yaml'

/** The order that was made last. */
let made: { readonly given: Given; readonly order: MadeOrder } | undefined

const answer = (message: Answer): void => self.postMessage(message)
const tell = (what: string, keeps = false): void =>
  answer({ answer: 'doing', what: `Laying out: ${what}`, keeps })

/** What is asked of the order that was made last is at hand; any other is made anew. */
const madeOf = async (given: Given, { whole = false } = {}): Promise<Outcome<MadeOrder>> => {
  if (made && isSameGiven(made.given, given) && !(whole && made.order.panels.stopped)) return done(made.order)
  const ready = furnishedPlan({ text: given.text }, given.furniture)
  if (!ready.ok) return ready
  const { plan, furniture } = ready.value
  const order = lastOf(fileSteps(plan, await panelsOf(plan), furniture), tell)
  if (order.ok) made = { given, order: order.value }
  return order
}

/** The code that searches for room on panels is unpacked when an order needs it. */
const panelsOf = async (plan: Plan): Promise<PanelPlan> => {
  if (!takesPanels(plan)) return noPanels(plan)
  const { panelSteps } = await import('../panels/plan-panels.js')
  return heard(toldAs(panelSteps(plan), stepText))
}

/** The maker has waited long enough. */
let enough = false

/** A search that hears {@link ENOUGH} between its steps, some twenty times a second. */
const heard = async <Result>(steps: Steps<string, Result>): Promise<Result> => {
  enough = false
  let listened = performance.now()
  let next = steps.next()
  while (!next.done) {
    if (performance.now() - listened > BETWEEN) {
      tell(next.value, true)
      await new Promise((resolve) => setTimeout(resolve))
      listened = performance.now()
    }
    next = steps.next(enough)
  }
  return next.value
}

/** Milliseconds from one listening to the next. */
const BETWEEN = 50

const bytesOf = async (content: FileContent): Promise<Uint8Array<ArrayBuffer>> => {
  const parts: BlobPart[] = typeof content === 'string' ? [content] : []
  if (typeof content !== 'string') for await (const part of content()) parts.push(new Uint8Array(part))
  return new Uint8Array(await new Blob(parts).arrayBuffer())
}

const fileIn = async ({ files }: MadeOrder, wanted: string): Promise<Answer> => {
  const file = files.find(({ path }) => path === wanted)
  return file
    ? { answer: 'file', path: wanted, bytes: await bytesOf(file.content) }
    : { answer: 'refused', problems: [`The order has no file ${wanted}.`] }
}

const archiveOf = async ({ files }: MadeOrder, text: string): Promise<Answer> => {
  const entries: Record<string, Uint8Array> = { [ORDER_FILE]: new TextEncoder().encode(text) }
  for (const [index, { path, content }] of files.entries()) {
    answer({ answer: 'doing', what: `Writing ${index + 1} of ${files.length}: ${path}`, keeps: false })
    entries[path] = await bytesOf(content)
  }
  const bytes = new Uint8Array(zipSync(entries, { mtime: FIXED_DATE, level: 6 }))
  return { answer: 'file', path: ARCHIVE, bytes }
}

const dryFitOf = async (text: string, name: string, measured: Measured): Promise<Answer> => {
  const { plan, problems } = jobOf(text)
  const star = plan?.stars.find(({ order }) => order.name === name)
  const fit = plan && star ? fitOf(star, measured, plan.order) : refused(problems)
  if (!plan || !star || !fit.ok) return refusedBy(fit)
  const drawing = dryFitDrawing(fit.value, plan.order)
  const bytes = await writePdf({ ...cardBook([drawing], plan.order), title: drawing.title })
  return { answer: 'file', path: dryFitFile(star, 'pdf'), bytes: new Uint8Array(bytes) }
}

const refusedBy = (outcome: Outcome<unknown>): Answer => ({
  answer: 'refused',
  problems: problemsOf(outcome).map(showProblem),
})

const choiceAnswer = async (asked: Extract<Ask, { ask: 'choose' | 'choice-file' }>): Promise<Answer> => {
  const { chosenStars, choiceFile } = await import('./choose-stars.js')
  if (asked.ask === 'choose') {
    const chosen = chosenStars(asked.given, asked.wish)
    return chosen.ok ? { answer: 'chosen', chosen: chosen.value } : refusedBy(chosen)
  }
  return fileAnswer(await choiceFile(asked.given, asked.wish, asked.kind))
}

const fileAnswer = async (
  file: Outcome<{ readonly path: string; readonly content: FileContent }>,
): Promise<Answer> =>
  file.ok
    ? { answer: 'file', path: file.value.path, bytes: await bytesOf(file.value.content) }
    : refusedBy(file)

const answerTo = async (asked: Ask): Promise<Answer> => {
  const { given } = asked
  if (asked.ask === 'dry-fit') return dryFitOf(given.text, asked.star, asked.measured)
  if (asked.ask === 'gaps-file') return fileAnswer(await gapsFile(given, asked.star, asked.set, asked.kind))
  if (asked.ask === 'furnish') {
    const furniture = furnitureWith(given.furniture, 'mm')
    return furniture.ok ? { answer: 'furnished' } : refusedBy(furniture)
  }
  if (asked.ask === 'choose' || asked.ask === 'choice-file') return choiceAnswer(asked)
  // Whoever asks for the pages again wants the search to go to its end.
  const order = await madeOf(given, { whole: asked.ask === 'lay' })
  if (!order.ok) return refusedBy(order)
  switch (asked.ask) {
    case 'lay':
      return { answer: 'laid', given, laid: laidOrder(order.value) }
    case 'file':
      return fileIn(order.value, asked.path)
    case 'archive':
      return archiveOf(order.value, given.text)
  }
}

/** One after the other, as they were asked. */
let before = Promise.resolve()

self.onmessage = ({ data }: MessageEvent<Ask | typeof ENOUGH>): void => {
  if (data === ENOUGH) {
    enough = true
    return
  }
  before = before
    .then(() => answerTo(data))
    .catch((error: unknown): Answer => ({ answer: 'refused', problems: [String(error)] }))
    .then(answer)
}
