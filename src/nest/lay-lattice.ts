import { add, type Point, point, scale, turn } from '../geometry/point.js'
import { radians } from '../units/convert.js'
import { cross, type Lattice } from './lattice.js'
import { halfTurned } from './no-fit.js'
import { isEmpty, type Panel, type Room, roomFor, turned } from './panel.js'
import type { Polygon } from './polygon.js'

/** A lattice turned about the origin and moved by a part of its cell. */
export interface Laid {
  readonly lattice: Lattice
  readonly turn: number
  /** Parts of the cell, along its row and its rise. */
  readonly shift: readonly [number, number]
}

/** A turned lattice with the rooms its plates' origins have; many shifts are counted on one. */
export interface TurnedLattice {
  readonly row: Point
  readonly rise: Point
  readonly sets: readonly { readonly from: Point; readonly room: Room; readonly half: boolean }[]
}

export const turnLattice = (polygon: Polygon, lattice: Lattice, by: number, panel: Panel): TurnedLattice => {
  const plate = turned(polygon, by)
  const spun = (p: Point): Point => turn(p, radians(by))
  const sets = [
    { from: point(0, 0), room: roomFor(plate, panel), half: false },
    ...(lattice.turned
      ? [{ from: spun(lattice.turned), room: roomFor(halfTurned(plate), panel), half: true }]
      : []),
  ]
  return { row: spun(lattice.row), rise: spun(lattice.rise), sets: sets.filter(({ room }) => !isEmpty(room)) }
}

/** How many plates of the lattice are on the panel. */
export const countLaid = (laid: TurnedLattice, shift: readonly [number, number]): number => {
  let count = 0
  for (const set of laid.sets)
    eachRun(laid, set, shift, (_, first, last) => {
      count += last - first + 1
    })
  return count
}

/** Where they are. */
export const placesLaid = (
  laid: TurnedLattice,
  shift: readonly [number, number],
): { readonly at: Point; readonly half: boolean }[] =>
  laid.sets.flatMap((set) => {
    const places: { at: Point; half: boolean }[] = []
    eachRun(laid, set, shift, (start, first, last) => {
      for (let i = first; i <= last; i++) places.push({ at: add(start, scale(laid.row, i)), half: set.half })
    })
    return places
  })

/** The rows of the lattice that cross the room, each with its first and last plate in it. */
const eachRun = (
  { row, rise }: TurnedLattice,
  { from, room }: TurnedLattice['sets'][number],
  [along, up]: readonly [number, number],
  run: (start: Point, first: number, last: number) => void,
): void => {
  const x0 = from.x + along * row.x + up * rise.x
  const y0 = from.y + along * row.y + up * rise.y
  const cell = cross(row, rise)
  // The number of a row is linear over the room, so its corners bound it.
  const number = (x: number, y: number): number => (row.x * (y - y0) - row.y * (x - x0)) / cell
  const numbers = [
    number(room.left, room.bottom),
    number(room.right, room.bottom),
    number(room.right, room.top),
    number(room.left, room.top),
  ]
  for (let j = Math.ceil(Math.min(...numbers)); j <= Math.max(...numbers); j++) {
    const start = point(x0 + j * rise.x, y0 + j * rise.y)
    const [x1, x2] = within(start.x, row.x, room.left, room.right)
    const [y1, y2] = within(start.y, row.y, room.bottom, room.top)
    const [first, last] = [Math.ceil(Math.max(x1, y1)), Math.floor(Math.min(x2, y2))]
    if (first <= last) run(start, first, last)
  }
}

/** From which to which multiple of the step a value stays between two bounds. */
const within = (start: number, step: number, least: number, most: number): readonly [number, number] => {
  if (Math.abs(step) < 1e-12) return start >= least && start <= most ? [-Infinity, Infinity] : [1, 0]
  const [a, b] = [(least - start) / step, (most - start) / step]
  return a < b ? [a, b] : [b, a]
}
