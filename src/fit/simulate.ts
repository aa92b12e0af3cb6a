import type { Degrees, Mm } from '../units/brand.js'
import { degrees } from '../units/convert.js'
import * as maths from '../units/maths.js'
import type { ClosureLaw } from './closure-law.js'
import type { Bars } from './histogram.js'
import { normalDraws } from './normal-draws.js'
import { turnedAfter } from './wasted-arms.js'

/** What is simulated: stars cut one by one, arm by arm, in batches that share what the saw is off by. */
export interface Simulated {
  readonly law: ClosureLaw
  readonly accepted: Degrees
  /** Cuts of one star whose errors add up to its closure. */
  readonly cuts: number
  /** One standard deviation of each. */
  readonly repeatsTo: Degrees
  /** Stars of a batch. */
  readonly quantity: number
  /** About how many stars; whole batches are cut, one at least. */
  readonly stars: number
  readonly seed: number
  /** What lies beyond counts to the outer ones. */
  readonly reach: Bars
  /** Edges that are cut to the stop and differ at each valley, and their one standard deviation. */
  readonly valleys: { readonly count: number; readonly edges: 1 | 2; readonly repeatsTo: Mm }
  /** What a closure read off the gap of a star may be off: one standard deviation. */
  readonly reading: Degrees
  /** Above this the largest step of a star is counted, in mm. */
  readonly step: Mm
}

export interface SimulatedChances {
  readonly stars: number
  readonly star: Estimate
  readonly batch: Estimate
  /** Stars whose largest step at a valley stays within the asked one. */
  readonly stepWithin: Estimate
  /** Arms of one batch. */
  readonly wasted: { readonly cutAll: Estimate; readonly cutOneFitOne: Estimate }
  /** Mean and standard deviation of the closure of all stars. */
  readonly mean: Degrees
  readonly deviation: Degrees
  /** Stars of each bar of the histogram. */
  readonly counts: Uint32Array
}

/** A simulated chance or count, and its standard error. */
export interface Estimate {
  readonly value: number
  readonly error: number
}

/** The same stars for the same seed. Every cut and every edge is drawn by itself; nothing is allocated on the way. */
export const simulate = (asked: Simulated): SimulatedChances => {
  const { law, accepted, cuts, repeatsTo, quantity, reach, valleys, reading, step } = asked
  const batches = Math.max(1, Math.round(asked.stars / quantity))
  const fill = normalDraws(asked.seed)
  const sharedDraw = new Float64Array(1)
  const edges = cuts + valleys.count * valleys.edges
  /** Of one star: its cuts, then the edges at its valleys, then how its gap is read. */
  const draws = new Float64Array(edges + 1)
  const counts = new Uint32Array(reach.bars)
  const perDegree = reach.bars / (reach.to - reach.from)
  const slop = valleys.repeatsTo
  const scatterRead = maths.hypot(law.own, reading)
  const prior = maths.square(law.mean) + maths.square(law.shared)
  let [closed, closedSquares, fitted, fittedSquares] = [0, 0, 0, 0]
  let [whole, smooth, sum, squares] = [0, 0, 0, 0]
  for (let batch = 0; batch < batches; batch++) {
    fill(sharedDraw)
    const off = law.mean + law.shared * (sharedDraw[0] as number)
    let [passed, spoilt, turned, read] = [0, 0, 0, 0]
    for (let star = 0; star < quantity; star++) {
      fill(draws)
      let scatter = 0
      for (let cut = 0; cut < cuts; cut++) scatter += draws[cut] as number
      const closure = off + repeatsTo * scatter
      if (Math.abs(closure) <= accepted) passed++
      if (Math.abs(closure - turned) > accepted) spoilt++
      read += closure + reading * (draws[edges] as number)
      turned = turnedAfter(prior, scatterRead, star + 1) * read
      sum += closure
      squares += closure * closure
      const bar = Math.floor((closure - reach.from) * perDegree)
      const inside = Math.min(reach.bars - 1, Math.max(0, bar))
      counts[inside] = (counts[inside] ?? 0) + 1
      let largest = 0
      for (let edge = cuts; edge < edges; edge += valleys.edges) {
        const other = valleys.edges === 1 ? 0 : (draws[edge + 1] as number)
        largest = Math.max(largest, Math.abs((draws[edge] as number) - other))
      }
      if (largest * slop <= step) smooth++
    }
    closed += passed
    closedSquares += passed * passed
    fitted += spoilt
    fittedSquares += spoilt * spoilt
    if (passed === quantity) whole++
  }
  const stars = batches * quantity
  const mean = sum / stars
  const closing = meanOfBatches(closed, closedSquares, batches)
  const spoiling = meanOfBatches(fitted, fittedSquares, batches)
  const points = valleys.count
  return {
    stars,
    star: { value: closing.value / quantity, error: closing.error / quantity },
    batch: shareOf(whole, batches),
    stepWithin: shareOf(smooth, stars),
    wasted: {
      cutAll: { value: points * (quantity - closing.value), error: points * closing.error },
      cutOneFitOne: { value: points * spoiling.value, error: points * spoiling.error },
    },
    mean: degrees(mean),
    deviation: degrees(Math.sqrt(Math.max(0, squares / stars - mean * mean))),
    counts,
  }
}

/** Stars of a batch are alike, so the error of a mean comes from how the batches differ. */
const meanOfBatches = (sum: number, squares: number, batches: number): Estimate => {
  const value = sum / batches
  return { value, error: Math.sqrt(Math.max(0, squares / batches - maths.square(value)) / batches) }
}

const shareOf = (count: number, of: number): Estimate => {
  const value = count / of
  return { value, error: Math.sqrt((value * (1 - value)) / of) }
}
