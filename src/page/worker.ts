import { zipSync } from 'fflate'
import { dryFitDrawing } from '../compose/dry-fit-drawing.js'
import { type FileContent, type MadeOrder, makeOrder } from '../make.js'
import { problemsOf, refused, showProblem } from '../order/problem.js'
import { cardBook } from '../paper/card-book.js'
import { writePdf } from '../write/pdf.js'
import { dryFitFile, fitOf } from './fit-of.js'
import { jobOf } from './job.js'
import { laidOrder } from './lay-out.js'
import type { Measured } from './measured.js'
import type { Answer, Ask } from './work.js'

/** What an archive's entries are dated, so that the same order gives the same archive. */
const FIXED_DATE = new Date(2000, 0, 1)

/** The folder and file names an archive begins with. */
const ARCHIVE = 'starwright.zip'
const ORDER_FILE = 'order.yaml'

let made: { readonly text: string; readonly order: MadeOrder } | undefined

const answer = (message: Answer): void => self.postMessage(message)

const lay = (text: string): void => {
  const outcome = makeOrder(
    { text },
    { onProgress: (what) => answer({ answer: 'doing', what: `Laying out: ${what}` }) },
  )
  if (!outcome.ok) {
    made = undefined
    answer({ answer: 'refused', problems: outcome.problems.map(showProblem) })
    return
  }
  made = { text, order: outcome.value }
  answer({ answer: 'laid', text, laid: laidOrder(outcome.value) })
}

const bytesOf = async (content: FileContent): Promise<Uint8Array<ArrayBuffer>> => {
  const parts: BlobPart[] = typeof content === 'string' ? [content] : []
  if (typeof content !== 'string') for await (const part of content()) parts.push(new Uint8Array(part))
  return new Uint8Array(await new Blob(parts).arrayBuffer())
}

const sendFile = async (path: string): Promise<void> => {
  const file = made?.order.files.find((each) => each.path === path)
  if (file) answer({ answer: 'file', path, bytes: await bytesOf(file.content) })
}

const sendArchive = async (): Promise<void> => {
  if (!made) return
  const entries: Record<string, Uint8Array> = { [ORDER_FILE]: new TextEncoder().encode(made.text) }
  const { files } = made.order
  for (const [index, { path, content }] of files.entries()) {
    answer({ answer: 'doing', what: `Writing ${index + 1} of ${files.length}: ${path}` })
    entries[path] = await bytesOf(content)
  }
  const bytes = new Uint8Array(zipSync(entries, { mtime: FIXED_DATE, level: 6 }))
  answer({ answer: 'file', path: ARCHIVE, bytes })
}

const sendDryFit = async (text: string, name: string, measured: Measured): Promise<void> => {
  const { plan, problems } = jobOf(text)
  const star = plan?.stars.find(({ order }) => order.name === name)
  const fit = plan && star ? fitOf(star, measured, plan.order) : refused(problems)
  if (!plan || !star || !fit.ok) {
    answer({ answer: 'refused', problems: problemsOf(fit).map(showProblem) })
    return
  }
  const drawing = dryFitDrawing(fit.value, plan.order)
  const bytes = await writePdf({ ...cardBook([drawing], plan.order), title: drawing.title })
  answer({ answer: 'file', path: dryFitFile(star, 'pdf'), bytes: new Uint8Array(bytes) })
}

const serve = async (asked: Ask): Promise<void> => {
  switch (asked.ask) {
    case 'lay':
      return lay(asked.text)
    case 'file':
      return sendFile(asked.path)
    case 'archive':
      return sendArchive()
    case 'dry-fit':
      return sendDryFit(asked.text, asked.star, asked.measured)
  }
}

self.onmessage = ({ data }: MessageEvent<Ask>): void => {
  serve(data).catch((error: unknown) => answer({ answer: 'refused', problems: [String(error)] }))
}
