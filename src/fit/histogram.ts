import type { Degrees, Mm } from '../units/brand.js'
import { degrees } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { WHOLE } from '../units/tolerance.js'
import { type ClosureLaw, signedGap } from './closure-law.js'
import { chanceBelow } from './normal-law.js'

/** Gaps at the last joint, in mm: above zero at the valley, below zero at the centre. The outer bars take all beyond. */
export interface Histogram {
  /** One more than bars, rising. */
  readonly edges: readonly number[]
  /** Share of the simulated stars, 0 to 1. */
  readonly shares: readonly number[]
  /** What the closed form says of the same bars. */
  readonly expected: readonly number[]
}

/** Bars of one width in degrees of closure; both ends of what is accepted are edges of bars. */
export interface Bars {
  readonly from: Degrees
  readonly to: Degrees
  readonly bars: number
}

/** Bars on the whole, at most, and within what is accepted on each side of zero, at most. */
const MOST_BARS = 24
const MOST_WITHIN = 5
/** Nearly every star of a normal law. */
const DEVIATIONS = 3.5

/** Bars over nearly all stars, and over what is accepted. */
export const barsFor = ({ mean, shared, own }: ClosureLaw, accepted: Degrees): Bars => {
  const around = DEVIATIONS * maths.hypot(shared, own)
  const [low, high] = [Math.max(accepted, around - mean), Math.max(accepted, around + mean)]
  const widths = Array.from({ length: MOST_WITHIN }, (_, index) => accepted / (MOST_WITHIN - index))
  const fine = widths.find((width) => count(low, width) + count(high, width) <= MOST_BARS)
  const width = fine ?? accepted * Math.ceil((low + high) / accepted / (MOST_BARS - 2))
  const [below, above] = [count(low, width), count(high, width)]
  return { from: degrees(-below * width), to: degrees(above * width), bars: below + above }
}

const count = (length: number, width: number): number => Math.ceil(length / width - WHOLE)

export const histogramOf = (
  { mean, shared, own }: ClosureLaw,
  { from, to, bars }: Bars,
  jointEdge: Mm,
  counts: Uint32Array,
): Histogram => {
  const stars = counts.reduce((sum, each) => sum + each, 0)
  const width = (to - from) / bars
  const first = Math.round(from / width)
  const closures = Array.from({ length: bars + 1 }, (_, edge) => (first + edge) * width)
  const deviation = maths.hypot(shared, own)
  const below = closures.map((closure, edge) => {
    if (edge === 0 || edge === bars) return edge === 0 ? 0 : 1
    if (deviation === 0) return mean < closure ? 1 : 0
    return chanceBelow((closure - mean) / deviation)
  })
  return {
    edges: closures.map((closure) => signedGap(jointEdge, closure)),
    shares: Array.from(counts, (each) => each / stars),
    expected: below.slice(1).map((upper, bar) => upper - (below[bar] ?? 0)),
  }
}
