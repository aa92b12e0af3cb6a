import { type Point, point, scale, subtract } from '../geometry/point.js'
import { areaPerPlate, cross, isClear, type Lattice, type Surroundings } from './lattice.js'
import { isWithin, type Polygon } from './no-fit.js'

/** Directions of a row that are tried over half a turn. */
const DIRECTIONS = 120

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

/** Clear lattices of the plate, and of the plate and its half-turn, the densest first. */
export const findLattices = (around: Surroundings): Lattice[] => {
  const rows: Row[] = Array.from(
    { length: DIRECTIONS },
    (_, index) => (index * Math.PI) / DIRECTIONS,
  ).flatMap((direction) => STRETCHES.map((stretch) => ({ direction, stretch })))
  const tried = rows
    .map((row) => ({ row, lattices: latticesOf(row, around) }))
    .filter(({ lattices }) => lattices.length > 0)
    .sort((a, b) => leastArea(a.lattices) - leastArea(b.lattices))
  const refined = tried.slice(0, REFINED).flatMap(({ row }) => refine(row, around))
  const all = [...refined, ...tried.flatMap(({ lattices }) => lattices)].sort(
    (a, b) => areaPerPlate(a) - areaPerPlate(b),
  )
  const most = leastArea(all) * WORTH
  return all.filter((lattice) => areaPerPlate(lattice) <= most)
}

const leastArea = (lattices: readonly Lattice[]): number =>
  lattices.reduce((least, lattice) => Math.min(least, areaPerPlate(lattice)), Infinity)

const refine = (start: Row, around: Surroundings): Lattice[] => {
  let [row, best] = [start, leastArea(latticesOf(start, around))]
  let [turning, stretching] = [Math.PI / DIRECTIONS, 0.03]
  for (let halving = 0; halving < HALVINGS; halving++) {
    for (const [t, s] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
      [1, 1],
      [1, -1],
      [-1, 1],
      [-1, -1],
    ] as const) {
      const next = {
        direction: row.direction + t * turning,
        stretch: Math.max(1, row.stretch + s * stretching),
      }
      const area = leastArea(latticesOf(next, around))
      if (area < best) [row, best] = [next, area]
    }
    ;[turning, stretching] = [turning / 2, stretching / 2]
  }
  return latticesOf(row, around)
}

/** Clear lattices with this row whose neighbours touch two plates of the row. */
const latticesOf = ({ direction, stretch }: Row, around: Surroundings): Lattice[] => {
  const towards = point(Math.cos(direction), Math.sin(direction))
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
  return [...plain, ...turned].filter((lattice) => isClear(lattice, around))
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
    let p = polygon[polygon.length - 1] as Point
    for (const q of polygon) {
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
