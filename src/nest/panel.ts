import { type Point, point, turn } from '../geometry/point.js'
import type { Mm } from '../units/brand.js'
import { radians } from '../units/convert.js'
import type { Polygon } from './polygon.js'

/** A sheet to cut plates from: its lower left corner is the origin. */
export interface Panel {
  readonly width: Mm
  readonly height: Mm
  /** Kept free along all four sides. */
  readonly edge: Mm
  /** Between plates, at least. */
  readonly gap: Mm
}

/** A plate on a panel: its outline turned counter-clockwise about its origin, then its origin moved to `at`. */
export interface Placed {
  /** Which of the plates, counted from 0. */
  readonly plate: number
  readonly turn: number
  readonly at: Point
}

/** Upright room, corners in it included. */
export interface Room {
  readonly left: number
  readonly bottom: number
  readonly right: number
  readonly top: number
}

export const turned = (polygon: Polygon, by: number): Polygon =>
  polygon.map((corner) => turn(corner, radians(by)))

/** Where the polygon's origin may be; empty rooms have their right before their left. */
export const roomFor = (polygon: Polygon, { width, height, edge }: Panel): Room => {
  const xs = polygon.map(({ x }) => x)
  const ys = polygon.map(({ y }) => y)
  return {
    left: edge - Math.min(...xs),
    bottom: edge - Math.min(...ys),
    right: width - edge - Math.max(...xs),
    top: height - edge - Math.max(...ys),
  }
}

export const isEmpty = ({ left, right, bottom, top }: Room): boolean => left > right || bottom > top

export const corners = ({ left, right, bottom, top }: Room): Polygon => [
  point(left, bottom),
  point(right, bottom),
  point(right, top),
  point(left, top),
]
