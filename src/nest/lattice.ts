import { type Point, point } from '../geometry/point.js'
import type { Mm } from '../units/brand.js'
import * as maths from '../units/maths.js'
import { halfTurned, isWithin, noFit } from './no-fit.js'
import type { Polygon } from './polygon.js'
import type { Steps } from './run-steps.js'
import { symmetryOf } from './symmetry.js'

/**
 * Plates at i·row + j·rise for all whole i and j; with `turned`, a second one turned by half a turn at that place of
 * every cell.
 */
export interface Lattice {
  readonly row: Point
  readonly rise: Point
  readonly turned?: Point
}

/** What a plate and its half-turn forbid each other. */
export interface Surroundings {
  /** Places of an equal plate that are too close to one at the origin. */
  readonly equal: Polygon
  /** The same for one turned by half a turn. */
  readonly half: Polygon
  /** How far the farther of the two goes. */
  readonly reach: number
  /** How often the plate looks the same while it is turned once. */
  readonly symmetry: number
}

export function* surroundings(polygon: Polygon, gap: Mm): Steps<void, Surroundings> {
  const equal = yield* noFit(polygon, polygon, gap)
  const half = yield* noFit(polygon, halfTurned(polygon), gap)
  return { equal, half, reach: Math.max(reachOf(equal), reachOf(half)), symmetry: symmetryOf(polygon) }
}

export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x

/** mm² of panel a plate takes. */
export const areaPerPlate = ({ row, rise, turned }: Lattice): number =>
  Math.abs(cross(row, rise)) / (turned ? 2 : 1)

const reachOf = (polygon: Polygon): number => Math.max(...polygon.map(({ x, y }) => maths.hypot(x, y)))

/** Are all plates of the lattice clear of each other? */
export const isClear = (lattice: Lattice, around: Surroundings): boolean => {
  const { row, rise, turned } = lattice
  const cell = Math.abs(cross(row, rise))
  if (!(cell > 0)) return false
  const shift = turned ?? point(0, 0)
  const far = around.reach + maths.hypot(shift.x, shift.y)
  const rows = Math.ceil((far * maths.hypot(rise.x, rise.y)) / cell)
  const rises = Math.ceil((far * maths.hypot(row.x, row.y)) / cell)
  if (rows * rises > 400) return false
  for (let i = -rows; i <= rows; i++)
    for (let j = -rises; j <= rises; j++) {
      const [x, y] = [i * row.x + j * rise.x, i * row.y + j * rise.y]
      if (maths.hypot(x, y) > far) continue
      if ((i !== 0 || j !== 0) && isWithin(point(x, y), around.equal)) return false
      if (turned && isWithin(point(x + shift.x, y + shift.y), around.half)) return false
    }
  return true
}
