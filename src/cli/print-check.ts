import type { FlagValues } from '../order/flags.js'
import { printCheck as checkPage } from '../paper/print-check.js'
import { pdfChunks } from '../write/pdf.js'
import { writeDrawing } from './files.js'
import { furnishedOrder } from './furnished-order.js'
import type { Typed } from './order-flags.js'
import { EXIT, say, tellProblems } from './terminal.js'

/** The check needs no star, but an order does. */
const ANY_STAR: FlagValues = { points: '5', 'tip-angle': '45', 'board-width': '70 mm' }

/** `starwright print-check`: the page that tells what a printer makes of true lengths. */
export const printCheck = async (typed: Typed): Promise<number> => {
  const file = String(typed.to ?? 'print-check.pdf')
  const furnished = await furnishedOrder(typeof typed.ORDER === 'string' ? typed : { ...ANY_STAR, ...typed })
  if (!furnished.ok) return tellProblems(furnished.problems)
  const { order, furniture } = furnished.value
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
