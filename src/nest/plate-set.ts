import type { Mm } from '../units/brand.js'
import { noFit } from './no-fit.js'
import { type Placed, turned } from './panel.js'
import type { Polygon } from './polygon.js'
import type { Steps } from './run-steps.js'
import { symmetryOf } from './symmetry.js'

/** The plates of a nesting, and where two of them are too close. */
export interface PlateSet {
  readonly polygons: readonly Polygon[]
  /** How often each looks the same while it is turned once. */
  readonly symmetries: readonly number[]
  /** Where the second plate must not be while the first, turned as it is, stands at the origin. */
  readonly between: (standing: Turned, coming: Turned) => Steps<void, Polygon>
}

type Turned = Pick<Placed, 'plate' | 'turn'>

/** Two turns nearer than this, in parts of a turn after which a plate looks alike, are one. */
const SAME_TURN = 1e-9

/** Finds each no-fit polygon once for how the two plates are turned to each other: it is what takes longest. */
export const plateSet = (polygons: readonly Polygon[], gap: Mm): PlateSet => {
  const symmetries = polygons.map(symmetryOf)
  const known = new Map<string, Polygon>()
  const at = (plate: number): Polygon => {
    const polygon = polygons[plate]
    if (!polygon) throw new RangeError(`there is no plate ${plate}`)
    return polygon
  }
  const between = function* (standing: Turned, coming: Turned): Steps<void, Polygon> {
    const span = (2 * Math.PI) / (symmetries[coming.plate] ?? 1)
    const parts = (coming.turn - standing.turn) / span
    const part = Math.round((parts - Math.floor(parts)) / SAME_TURN) % Math.round(1 / SAME_TURN)
    const key = `${standing.plate} ${coming.plate} ${part}`
    const found =
      known.get(key) ??
      (yield* noFit(at(standing.plate), turned(at(coming.plate), part * SAME_TURN * span), gap))
    known.set(key, found)
    return turned(found, standing.turn)
  }
  return { polygons, symmetries, between }
}
