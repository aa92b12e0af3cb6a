import { useEffect, useRef, useState } from 'preact/hooks'
import { tipAngleLimit } from '../geometry/star.js'
import { SIZES } from '../order/schema.js'
import type { StarPlan } from '../plan/plan.js'
import type { Degrees } from '../units/brand.js'
import { degrees, mm } from '../units/convert.js'
import { toStep } from '../units/step.js'
import { useBench } from './bench.js'
import { steppedRange, type TipRange } from './pull.js'
import { type Limits, type Pullable, pullableSize, pullableTipAngle } from './pull-limits.js'
import { tipAngleChanges } from './shape-changes.js'
import { largestRadius, type StarSize, sizeStep, typedLength } from './star-sizes.js'

/** What the grips of a star do. Whatever they are pulled to, the order they leave is one that is taken. */
export interface Pulls {
  /** Centre to tip, in mm: what the order allows, and the largest of this shape that the saw takes, where known. */
  readonly radii: Limits & { readonly largest?: number }
  /** What the order allows, in degrees, and what the saw cuts in whole steps of its scale, where it cuts any. */
  readonly tipAngles: Limits & { readonly cut?: TipRange }
  /** `on` while the same pull goes on. */
  readonly toRadius: (radius: number, on: boolean) => void
  readonly bySizeSteps: (steps: number) => void
  readonly toTipAngle: (tipAngle: Degrees, on: boolean) => void
  readonly byTipAngleSteps: (steps: number) => void
}

/** Until the page has rested so long after a change, in ms, the grips tell limits that may be too wide. */
const REST = 400

export const usePulls = (plan: StarPlan, size: StarSize): Pulls => {
  const { pull, starIndex, plan: whole } = useBench()
  const { shop, lengths } = whole.order
  const { star } = plan
  // As the order says it: a pull of the valley must not move it by a rounding.
  const sized = plan.order.size.by === size.value ? plan.order.size.length : size.of(star)
  const step = sizeStep(lengths)
  const { readsTo } = shop.saw
  const { at: _, ...order } = { ...plan.order, size: { by: size.value, length: sized } }
  // A pull moves one of the two: what it can be pulled to stays the same meanwhile.
  const sizes = useKept([{ ...order, size: size.value }, shop, step], () =>
    pullableSize({ ...plan.order, ...order }, { shop, lengths, step }),
  )
  const tips = useKept([{ ...order, shape: '' }, shop], () =>
    pullableTipAngle({ ...plan.order, ...order }, star.tipAngle, { shop, lengths, step: readsTo }),
  )
  const [told, setTold] = useState<{
    readonly sizes?: Limits | undefined
    readonly tips?: Limits | undefined
  }>({})
  useEffect(() => {
    const rest = setTimeout(() => setTold({ sizes: sizes().limits, tips: tips().limits }), REST)
    return () => clearTimeout(rest)
  }, [plan, size.value])

  const toSize = (length: number, on: boolean): void => {
    const taken = nearestTaken(sizes(), toStep(length, step, Math.round))
    if (taken !== undefined)
      pull(on, [['stars', starIndex, size.value], typedLength(mm(taken), { ...lengths, nearest: 16 })])
  }
  const toTipAngle = (tipAngle: Degrees, on: boolean): void => {
    const taken = nearestTaken(tips(), toStep(tipAngle, readsTo, Math.round))
    if (taken !== undefined) pull(on, ...tipAngleChanges(starIndex, star.points, degrees(taken)))
  }
  const radius = star.radius / sized
  const reached = largestRadius(plan, shop.saw)
  const largest = reached === undefined ? undefined : toStep(reached / radius, step, Math.floor)
  const { least, most } = told.sizes ?? SIZES
  const cut = plan.tipAngles && steppedRange(plan.tipAngles, readsTo)
  return {
    radii: {
      least: least * radius,
      most: most * radius,
      ...(largest === undefined ? {} : { largest: largest * radius }),
    },
    tipAngles: { ...(told.tips ?? { least: 0, most: tipAngleLimit(star.points) }), ...(cut ? { cut } : {}) },
    toRadius: (length, on) => toSize(length / radius, on),
    bySizeSteps: (steps) => toSize(toStep(sized, step, Math.round) + steps * step, false),
    toTipAngle,
    byTipAngleSteps: (steps) => toTipAngle(degrees(star.tipAngle + steps * readsTo), false),
  }
}

/** Within the limits; undefined where the order would have a mistake there all the same. */
const nearestTaken = ({ limits, isTaken }: Pullable, value: number): number | undefined => {
  if (!limits) return undefined
  const within = Math.min(limits.most, Math.max(limits.least, value))
  return isTaken(within) ? within : undefined
}

/** What was made last of the same values; made when it is asked for. */
const useKept = <Value>(of: readonly unknown[], make: () => Value): (() => Value) => {
  const kept = useRef<{ readonly key: string; readonly value: Value } | undefined>(undefined)
  return () => {
    const key = JSON.stringify(of)
    if (kept.current?.key !== key) kept.current = { key, value: make() }
    return kept.current.value
  }
}
