import type { OrderInput } from '../order/parse.js'
import { done, type Outcome, refused } from '../order/problem.js'
import { flagValues, type Typed } from './order-flags.js'
import { readOrder } from './read-order.js'

/** The order a command line speaks of: a file, flags, or both. */
export const orderInput = async (typed: Typed): Promise<Outcome<OrderInput>> => {
  const flags = flagValues(typed)
  if (!flags.ok) return flags
  const star = typeof typed.star === 'string' ? { star: typed.star } : {}
  const { ORDER: file } = typed
  if (typeof file === 'string') {
    const text = await readOrder(file)
    return text.ok ? done({ text: text.value, flags: flags.value, ...star }) : text
  }
  if (Object.keys(flags.value).length === 0) {
    return refused([
      {
        place: 'order',
        given: 'nothing',
        advice:
          'Name an order file, or give one star by flags, such as --points 5 --tip-angle 45 --board-width 70mm.',
      },
    ])
  }
  return done({ flags: flags.value, ...star })
}
