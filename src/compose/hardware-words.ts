import type { JigStock } from '../order/order.js'
import { CLEARANCE_HOLES } from '../tables/bolts.js'
import type { Mm } from '../units/brand.js'
import { inches, mm } from '../units/convert.js'
import { type LengthStyle, showAtMost, showSize, trimmed } from '../units/show.js'
import { SAME_POINT } from '../units/tolerance.js'

/** How long screws and bolts are sold, in mm and in eighths of an inch. Common practice, no published source. */
const LENGTHS = [12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100]
const EIGHTHS = [4, 5, 6, 8, 10, 12, 14, 16, 20, 24, 28, 32]
const EIGHTH = inches(1 / 8)
/** Wood over the end of a screw that ends in a part's face. */
const OVER_END = mm(2)
/** A foot or an arm of sheet metal, washer and nut beyond the panel. Common practice, no published source. */
const NUT = mm(10)
/** How far a screw goes into the edge of a rail. */
const INTO_RAIL = mm(30)

/** Screws that end below the face of a second panel of the same thickness: `4.0 × 20 mm`. */
export const screwsIntoFace = ({ screw, thickness }: JigStock, lengths: LengthStyle): string =>
  sized(screw, longestWithin(mm(2 * thickness - OVER_END), lengths), lengths)

/** Screws through a panel into the edge of another. */
export const screwsIntoEdge = ({ screw, thickness }: JigStock, lengths: LengthStyle): string =>
  sized(screw, longestWithin(mm(thickness + INTO_RAIL), lengths), lengths)

/** Bolts through a panel, the thickest that go through holes of that diameter: `M6 × 25 mm`. */
export const boltsThrough = (hole: Mm, { thickness }: JigStock, lengths: LengthStyle): string => {
  const length = shortestOver(mm(thickness + NUT), lengths)
  const metric = CLEARANCE_HOLES.findLast((each) => each.hole <= hole + SAME_POINT)
  return lengths.units === 'mm' && metric ? `${metric.bolt} × ${length}` : sized(hole, length, lengths)
}

const sized = (diameter: Mm, length: string, lengths: LengthStyle): string =>
  `${showSize(diameter, lengths).replace(/ (mm|in)$/, '')} × ${length}`

const sold = ({ units }: LengthStyle): number[] =>
  units === 'mm' ? LENGTHS : EIGHTHS.map((eighths) => eighths * EIGHTH)

const longestWithin = (most: Mm, style: LengthStyle): string => {
  const length = sold(style).findLast((each) => each <= most + SAME_POINT)
  return length === undefined ? showAtMost(most, style) : soldText(length, style)
}

const shortestOver = (least: Mm, style: LengthStyle): string =>
  soldText(sold(style).find((each) => each >= least - SAME_POINT) ?? least, style)

const soldText = (length: number, style: LengthStyle): string =>
  style.units === 'mm' ? `${trimmed(length, 0)} mm` : showSize(mm(length), { ...style, nearest: 8 })
