import { NO_MITRE, offsetOutline } from '../geometry/offset.js'
import type { Cutter } from '../order/order.js'
import { done, type Outcome, refused } from '../order/problem.js'
import { removedWidth } from '../order/removed-width.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { type LengthStyle, showAtMost, showSize } from '../units/show.js'
import type { CutLines, CutPart } from './cut-part.js'
import { relieved } from './relief.js'

/**
 * The lines that the middle of beam or bit follows so that the part comes out at its true size: half the removed width
 * outside its outline and inside its openings. Outside corners stay sharp. Inside corners keep the cutter's radius,
 * but in those that are seats it makes room, a beam too: in a notch of 18° its roundness would hold a tip off by 0.5 mm.
 *
 * Refused when something is too narrow for the cutter, with the largest width that does it.
 */
export const compensated = (part: CutPart, cutter: Cutter, lengths: LengthStyle): Outcome<CutLines> => {
  const width = removedWidth(cutter)
  const lines = linesFor(part, width)
  if (lines) return done(lines)
  const most = largestWidth(part, width)
  const tool = cutter.kind === 'router' ? 'a bit' : 'a kerf'
  return refused([
    {
      place: cutter.kind === 'router' ? 'shop.cutter.bit' : 'shop.cutter.kerf',
      given: showSize(width, lengths),
      advice: `It does not get into the narrowest place of the ${part.name}. Allowed there: ${tool} of up to ${showAtMost(most, lengths)}. Use a smaller one, or saw it by hand from its PDF: cutter: { kind: hand }.`,
    },
  ])
}

/**
 * The part as it comes out of the machine, seats relieved by the removed width; by hand, the part itself. Undefined
 * when a relief finds no room.
 */
export const relievedPart = (part: CutPart, width: Mm): CutPart | undefined => {
  if (width === 0) return part
  const outer = relieved(part.outer, part.seats, width, 'right')
  const inner = part.inner.map((opening) => relieved(opening, part.seats, width, 'left'))
  return outer && inner.every((opening) => opening !== undefined) ? { ...part, outer, inner } : undefined
}

const linesFor = (part: CutPart, width: Mm): CutLines | undefined => {
  const shape = relievedPart(part, width)
  if (!shape) return undefined
  const outer = offsetOutline(shape.outer, width / 2, part.besideOthers ? NO_MITRE : undefined)
  const inner = shape.inner.map((opening) => offsetOutline(opening, -width / 2))
  return outer && inner.every((opening) => opening !== undefined) ? { outer, inner } : undefined
}

/** By halving: what fits a width fits every smaller one. */
const largestWidth = (part: CutPart, tooWide: Mm): Mm => {
  let [fits, fails] = [0, Number(tooWide)]
  for (let step = 0; step < 16; step++) {
    const middle = (fits + fails) / 2
    if (linesFor(part, mm(middle))) fits = middle
    else fails = middle
  }
  return mm(fits)
}
