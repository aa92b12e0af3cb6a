import { NEIGHBOURS, type Point, point, scale, subtract } from '../geometry/point.js'
import * as maths from '../units/maths.js'
import { areaPerPlate, cross, isClear, type Lattice, type Surroundings } from './lattice.js'
import { isWithin } from './no-fit.js'
import type { Polygon } from './polygon.js'
import type { Steps } from './run-steps.js'

/** Directions of a row that are tried over half a turn. */
const DIRECTIONS = 120

/** Directions tried at least where the plate looks alike again after little. */
const FEWEST = 6

/** How much longer than touching a row's step may be. */
const STRETCHES = [1, 1.04, 1.08, 1.13, 1.18, 1.24, 1.3, 1.4, 1.5]

/** Lattices that are refined, and how often the steps of the refinement are halved. */
const REFINED = 12
const HALVINGS = 22

/** Lattices kept take at most this much more than the best: what the edge of a panel may pay for. */
const WORTH = 1.18

/** A row's step as direction in radians and length in touching lengths. */
interface Row {
  readonly direction: number
  readonly stretch: number
}

/** Clear lattices of the plate, and of the plate and its half-turn, the densest first. A step is one row that is tried. */
export function* findLattices(around: Surroundings): Steps<void, Lattice[]> {
  // Turned by so much, plate and row and what they forbid are as they were.
  const span = around.symmetry % 2 === 0 ? (2 * Math.PI) / around.symmetry : Math.PI / around.symmetry
  const directions = Math.max(FEWEST, Math.ceil((span / Math.PI) * DIRECTIONS))
  const rows: Row[] = Array.from({ length: directions }, (_, index) => (index * span) / directions).flatMap(
    (direction) => STRETCHES.map((stretch) => ({ direction, stretch })),
  )
  let least = Infinity
  const tried: { row: Row; lattices: Lattice[] }[] = []
  for (const row of rows) {
    const lattices = latticesOf(row, around, least * WORTH)
    least = Math.min(least, leastArea(lattices))
    if (lattices.length > 0) tried.push({ row, lattices })
    yield
  }
  tried.sort((a, b) => leastArea(a.lattices) - leastArea(b.lattices))
  const refined: Lattice[] = []
  for (const { row } of tried.slice(0, REFINED)) refined.push(...(yield* refine(row, around)))
  const all = [...refined, ...tried.flatMap(({ lattices }) => lattices)].sort(
    (a, b) => areaPerPlate(a) - areaPerPlate(b),
  )
  const most = leastArea(all) * WORTH
  return all.filter((lattice) => areaPerPlate(lattice) <= most)
}

const leastArea = (lattices: readonly Lattice[]): number =>
  lattices.reduce((least, lattice) => Math.min(least, areaPerPlate(lattice)), Infinity)

function* refine(start: Row, around: Surroundings): Steps<void, Lattice[]> {
  let [row, best] = [start, leastArea(latticesOf(start, around, Infinity))]
  let [turning, stretching] = [Math.PI / DIRECTIONS, 0.03]
  for (let halving = 0; halving < HALVINGS; halving++) {
    for (const [t, s] of NEIGHBOURS) {
      const next = {
        direction: row.direction + t * turning,
        stretch: Math.max(1, row.stretch + s * stretching),
      }
      const area = leastClear(next, around, best)
      if (area < best) [row, best] = [next, area]
      yield
    }
    ;[turning, stretching] = [turning / 2, stretching / 2]
  }
  return latticesOf(row, around, best * WORTH)
}

/** Clear lattices with this row that take at most so much a plate. */
const latticesOf = (row: Row, around: Surroundings, most: number): Lattice[] =>
  touching(row, around).filter((lattice) => areaPerPlate(lattice) <= most && isClear(lattice, around))

/** The least that a clear lattice with this row takes a plate, if it is less than `most`. */
const leastClear = (row: Row, around: Surroundings, most: number): number => {
  const denser = touching(row, around)
    .filter((lattice) => areaPerPlate(lattice) < most)
    .sort((a, b) => areaPerPlate(a) - areaPerPlate(b))
    .find((lattice) => isClear(lattice, around))
  return denser ? areaPerPlate(denser) : most
}

/** Lattices with this row whose neighbours touch two plates of the row; whether they are clear is not looked at. */
const touching = ({ direction, stretch }: Row, around: Surroundings): Lattice[] => {
  const towards = point(maths.cos(direction), maths.sin(direction))
  const row = scale(towards, stretch * leaves(around.equal, towards))
  const nearRow = (places: readonly Point[], forbidden: Polygon) =>
    places.filter((place) =>
      [-2, -1, 0, 1, 2].every((k) => !isWithin(subtract(place, scale(row, k)), forbidden)),
    )
  const plain = nearRow(meetings(around.equal, row), around.equal)
    .filter((rise) => cross(row, rise) > 0)
    .map((rise): Lattice => ({ row, rise }))
  const beside = nearRow(meetings(around.half, row), around.half)
  const above = beside.filter((place) => cross(row, place) > 0)
  const below = beside.filter((place) => cross(row, place) < 0)
  const turned = above.flatMap((place) =>
    below.map((other): Lattice => ({ row, rise: subtract(place, other), turned: place })),
  )
  return [...plain, ...turned]
}

/** Where a ray from the origin leaves the polygon for good. */
const leaves = (polygon: Polygon, towards: Point): number => {
  let farthest = 0
  polygon.forEach((a, index) => {
    const b = polygon[(index + 1) % polygon.length] as Point
    const edge = subtract(b, a)
    const slant = cross(towards, edge)
    if (slant === 0) return
    const along = cross(a, edge) / slant
    const share = cross(a, towards) / slant
    if (share >= 0 && share <= 1) farthest = Math.max(farthest, along)
  })
  return farthest
}

/** Where the polygon's border crosses its own, moved by a vector. */
const meetings = (polygon: Polygon, by: Point): Point[] => {
  const found: Point[] = []
  let a = polygon[polygon.length - 1] as Point
  for (const b of polygon) {
    const [ex, ey] = [b.x - a.x, b.y - a.y]
    // Most edges lie elsewhere: above, below or beside.
    const [left, right] = [Math.min(a.x, b.x) - by.x, Math.max(a.x, b.x) - by.x]
    const [low, high] = [Math.min(a.y, b.y) - by.y, Math.max(a.y, b.y) - by.y]
    let p = polygon[polygon.length - 1] as Point
    for (const q of polygon) {
      if (
        (p.y < low && q.y < low) ||
        (p.y > high && q.y > high) ||
        (p.x < left && q.x < left) ||
        (p.x > right && q.x > right)
      ) {
        p = q
        continue
      }
      const [ox, oy] = [q.x - p.x, q.y - p.y]
      const slant = ex * oy - ey * ox
      const [dx, dy] = [p.x + by.x - a.x, p.y + by.y - a.y]
      const [share, along] = [(dx * oy - dy * ox) / slant, (dx * ey - dy * ex) / slant]
      // Parallel edges give no number, which is on neither.
      if (share >= 0 && share <= 1 && along >= 0 && along <= 1)
        found.push(point(a.x + share * ex, a.y + share * ey))
      p = q
    }
    a = b
  }
  return found
}
