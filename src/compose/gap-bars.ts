import type { BatchRisk } from '../fit/batch-risk.js'
import type { Order } from '../order/order.js'
import { mm, toInches } from '../units/convert.js'
import type { LengthStyle } from '../units/show.js'
import { fixed } from '../units/show.js'
import { SAME_POINT, WHOLE } from '../units/tolerance.js'
import { percent } from './chance-words.js'

/** Columns of the longest bar. */
const LONGEST = 40

/** The histogram of gaps, one line a bar, from wide open at the centre to wide open at the valley. */
export const gapBars = ({ histogram, acceptedGap }: BatchRisk, { lengths }: Order): string[] => {
  const { edges, shares } = histogram
  const most = Math.max(...shares)
  const within = (gap: number) => Math.abs(gap) <= acceptedGap * (1 + WHOLE)
  return shares.flatMap((share, bar) => {
    const [from, to] = [edges[bar] ?? 0, edges[bar + 1] ?? 0]
    const accepted = within(from) && within(to)
    const text = `    ${barName(from, to, lengths).padEnd(26)}${accepted ? '|' : ':'}${'#'.repeat(Math.round((LONGEST * share) / most))}`
    return [`${text} ${share === 0 ? '' : percent(share)}`.trimEnd()]
  })
}

/** `0.20 to 0.30 at the valley`; the numbers rise away from zero. */
const barName = (from: number, to: number, lengths: LengthStyle): string => {
  const number = (gap: number) =>
    lengths.units === 'mm' ? fixed(Math.abs(gap), 2) : fixed(toInches(mm(Math.abs(gap))), 3)
  return to <= SAME_POINT
    ? `${number(to)} to ${number(from)} at the centre`
    : `${number(from)} to ${number(to)} at the valley`
}
