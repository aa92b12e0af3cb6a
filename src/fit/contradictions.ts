import type { Star } from '../geometry/star.js'
import { done, type Outcome, type Problem, refused } from '../order/problem.js'
import { closureGap } from '../plan/closure.js'
import { degrees, mm } from '../units/convert.js'
import { type LengthStyle, showAngle, showLength } from '../units/show.js'
import { varianceOf } from './least-squares.js'
import { type Measurement, wouldMeasure } from './measurement.js'
import type { MostProbable } from './most-probable.js'

/** Beyond three standard uncertainties chance is no explanation (1 in 370 for a normal distribution). */
const TOO_FAR = 3

/** Below this share of its variance a measurement stands alone: no other checks it. */
const CHECKED = 1e-6

/** Distances this close, as a share, differ by rounding only. */
const TIED = 1e-6

/** A measurement that others check. */
interface Checked {
  readonly measurement: Measurement
  /** How far it lies from what all of them make it, in standard uncertainties of that. */
  readonly far: number
  /** What it has more than the others make it, in mm or degrees; a gap as its closure. */
  readonly off: number
}

/** Measurements that no arms can explain together: told of the one that lies furthest from what the others make it. */
export const contradictions = (
  star: Star,
  found: MostProbable,
  measured: readonly Measurement[],
  lengths: LengthStyle,
): Outcome<void> => {
  const checked = found.equations.flatMap((equation, index): Checked[] => {
    const measurement = measured[index]
    const room = equation.variance - varianceOf(equation.row, found)
    return measurement && room > CHECKED * equation.variance
      ? [
          {
            measurement,
            far: Math.abs(equation.value) / Math.sqrt(room),
            off: (equation.value * equation.variance) / room,
          },
        ]
      : []
  })
  const furthest = Math.max(...checked.map(({ far }) => far))
  // Two that only check each other lie equally far: the one that was given first is told.
  const worst = checked.find(({ far }) => far > furthest * (1 - TIED))
  if (!worst || worst.far <= TOO_FAR) return done(undefined)
  const others = checked.map(({ measurement }) => measurement).filter((each) => each !== worst.measurement)
  return refused([problemOf(star, found, worst, others, lengths)])
}

const problemOf = (
  star: Star,
  found: MostProbable,
  { measurement, off }: Checked,
  others: readonly Measurement[],
  lengths: LengthStyle,
): Problem => {
  const { of, place, given } = measurement
  const angular = of === 'tip' || of === 'side' || of === 'centre'
  const gapOf = (closure: number): number => Math.sign(closure) * closureGap(star.jointEdge, degrees(closure))
  const show = (value: number): string =>
    angular ? showAngle(degrees(Math.abs(value))) : showLength(mm(Math.abs(value)), lengths)
  // What all make it, with the own residual taken off, is what the others make it.
  const residual = found.equations[found.measured.indexOf(measurement)]?.value ?? 0
  const by = wouldMeasure(of, star, found.arms) + residual - off
  const away = of === 'gap' ? gapOf(by + off) - gapOf(by) : off
  const end = of === 'gap' ? ` at the ${by > 0 ? 'valley' : 'centre'}` : ''
  const names = [...new Set(others.map((each) => each.place))]
  const against =
    names.length === 0 || (names.length === 1 && names[0] === place) ? 'the others' : names.join(', ')
  return {
    place,
    given,
    advice: `It contradicts ${against}, by which it is ${show(of === 'gap' ? gapOf(by) : by)}${end}: ${show(away)} away. One of them is misread: measure again.`,
  }
}
