import type { Point } from '../geometry/point.js'
import * as maths from '../units/maths.js'
import { fill } from './fill.js'
import { findLattices } from './find-lattices.js'
import { type Lattice, surroundings } from './lattice.js'
import { countLaid, type Laid, placesLaid, turnLattice } from './lay-lattice.js'
import type { Panel, Placed } from './panel.js'
import type { PlateSet } from './plate-set.js'
import type { Polygon } from './polygon.js'
import { randomFrom } from './random.js'
import { toldAs } from './run-steps.js'

/** The best so far, after a step of the search or on the way to the next. */
export interface Found {
  readonly step: number
  readonly placed: readonly Placed[]
}

/** Lattices that are laid along the panel's sides, spread over all that are worth it. */
const LATTICES = 300
/** Places in a cell that are tried along each of its sides. */
const SHIFTS = 12
/** Ways of laying that are turned and moved at random afterwards, and how often. */
const CLIMBED = 40
const TRIES = 700
/** Layouts whose leftover is filled. */
const FILLED = 8

export const STEPS = LATTICES + CLIMBED + FILLED

interface Counted {
  readonly laid: Laid
  readonly count: number
}

/**
 * Equal plates on one panel, as many as the search finds: lattices along the panel's sides, the best of them turned
 * and moved freely, then single plates in what they leave. It tells often, at least every some hundredths of a second.
 * The same input and seed give the same steps everywhere; break off after any and keep what it found.
 *
 * @param plate which of the plates
 */
export function* searchPanel(
  plates: PlateSet,
  plate: number,
  panel: Panel,
  seed: number,
): Generator<Found, void, undefined> {
  const polygon = plates.polygons[plate]
  if (!polygon) throw new RangeError(`there is no plate ${plate}`)
  const random = randomFrom(seed)
  let step = 0
  let placed: readonly Placed[] = []
  const soFar = (): Found => ({ step, placed })
  const found = (better: readonly Placed[]): Found => {
    if (better.length > placed.length) placed = better
    step++
    return soFar()
  }
  const layOut = ({ laid }: Counted): Placed[] => {
    const set = placesLaid(turnLattice(polygon, laid.lattice, laid.turn, panel), laid.shift)
    return set.map(({ at, half }) => ({ plate, turn: half ? laid.turn + Math.PI : laid.turn, at }))
  }
  let ways: Counted[] = []
  const around = yield* toldAs(surroundings(polygon, panel.gap), soFar)
  const lattices = yield* toldAs(findLattices(around), soFar)
  for (const lattice of spread(lattices)) {
    const way = alongSides(polygon, lattice, panel)
    ways.push(way)
    yield found(way.count > placed.length ? layOut(way) : [])
  }
  ways = mostFirst(ways)
  for (const [index, way] of ways.slice(0, CLIMBED).entries()) {
    const better = climb(polygon, way, panel, random)
    ways[index] = better
    yield found(better.count > placed.length ? layOut(better) : [])
  }
  for (const way of mostFirst(ways).slice(0, FILLED)) {
    const layout = layOut(way)
    let added: readonly Placed[] = []
    for (added of fill(plates, plate, Infinity, panel, layout)) yield soFar()
    yield found([...layout, ...added])
  }
}

const mostFirst = (ways: readonly Counted[]): Counted[] => [...ways].sort((a, b) => b.count - a.count)

/** The densest third as they are, the others evenly. */
const spread = (lattices: readonly Lattice[]): Lattice[] => {
  const densest = lattices.slice(0, LATTICES / 3)
  const others = lattices.slice(densest.length)
  const step = Math.max(1, others.length / (LATTICES - densest.length))
  return [
    ...densest,
    ...Array.from(
      { length: Math.floor(others.length / step) },
      (_, index) => others[Math.floor(index * step)] as Lattice,
    ),
  ].slice(0, LATTICES)
}

/** The lattice with its rows, rises or diagonals along the panel's sides, at the best place of its cell. */
const alongSides = (polygon: Polygon, lattice: Lattice, panel: Panel): Counted => {
  const { row, rise } = lattice
  const lines: Point[] = [
    row,
    rise,
    { x: row.x + rise.x, y: row.y + rise.y },
    { x: row.x - rise.x, y: row.y - rise.y },
  ]
  const turns = lines.flatMap(({ x, y }) => [-maths.atan2(y, x), Math.PI / 2 - maths.atan2(y, x)])
  let best: Counted = { laid: { lattice, turn: 0, shift: [0, 0] }, count: -1 }
  for (const turn of turns) {
    const laid = turnLattice(polygon, lattice, turn, panel)
    for (let along = 0; along < SHIFTS; along++)
      for (let up = 0; up < SHIFTS; up++) {
        const shift = [along / SHIFTS, up / SHIFTS] as const
        const count = countLaid(laid, shift)
        if (count > best.count) best = { laid: { lattice, turn, shift }, count }
      }
  }
  return best
}

/** Turns and moves the laid lattice at random, now far, now near, and keeps what holds as many plates or more. */
const climb = (polygon: Polygon, start: Counted, panel: Panel, random: () => number): Counted => {
  let best = start
  const around = (width: number): number => (random() - 0.5) * width
  for (let trial = 0; trial < TRIES; trial++) {
    const { lattice, turn, shift } = best.laid
    const near = maths.pow(10, -2.5 * random())
    const turnedBy = random() < 0.5 ? turn : turn + around(Math.PI * near)
    const laid = turnLattice(polygon, lattice, turnedBy, panel)
    for (let place = 0; place < 12; place++) {
      const moved = [shift[0] + around(near), shift[1] + around(near)] as const
      const count = countLaid(laid, moved)
      if (count >= best.count) best = { laid: { lattice, turn: turnedBy, shift: moved }, count }
    }
  }
  return best
}
