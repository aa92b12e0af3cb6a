import type { FlagValues } from '../order/flags.js'
import { printCheck as checkPage } from '../paper/print-check.js'
import { pdfChunks } from '../write/pdf.js'
import { writeDrawing } from './files.js'
import { furnishedOrder } from './furnished-order.js'
import type { Typed } from './order-flags.js'
import { EXIT, say, tellProblems } from './terminal.js'

/** The check needs no star, but an order does; its name is nobody's. */
const ANY_STAR: FlagValues = { points: '5', 'tip-angle': '45', 'board-width': '70 mm' }
const NAMES = ['ORDER', 'title', 'name'] as const

/** `starwright print-check`: the page that tells what a printer makes of true lengths. */
export const printCheck = async (typed: Typed): Promise<number> => {
  const file = String(typed.to ?? 'print-check.pdf')
  const furnished = await furnishedOrder(typeof typed.ORDER === 'string' ? typed : { ...ANY_STAR, ...typed })
  if (!furnished.ok) return tellProblems(furnished.problems)
  const { furniture } = furnished.value
  const isNamed = NAMES.some((key) => typed[key] !== undefined)
  const order = isNamed ? furnished.value.order : { ...furnished.value.order, title: '' }
  const written = await writeDrawing(
    file,
    () => pdfChunks(checkPage(order, furniture)),
    typed.replace === true,
  )
  if (!written.ok) return tellProblems(written.problems)
  if (typed.quiet !== true) {
    say(
      `${file}: print it at 100 %, measure its two rulers, and write what you read into the order as shop: paper: printed.\n`,
    )
  }
  return EXIT.done
}
