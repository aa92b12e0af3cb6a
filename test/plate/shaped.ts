import { type Point, point, scale } from '../../src/geometry/point.js'
import { cornerDirection, type Star } from '../../src/geometry/star.js'
import type { BackingOrder } from '../../src/order/order.js'
import { mm } from '../../src/units/convert.js'

/** Straight edges are exact; chords leave arcs by less than this. */
export const EXACT = 1e-6
export const ARCS = 0.005

/** So that most stars have a plate. */
export const insetOf = (star: Star): number => Math.min(12, star.valleyRadius / 5, star.edgeDistance / 4)

/** What an order says of every shape a plate can have. */
export const SHAPED: readonly (readonly [string, (star: Star) => Partial<BackingOrder>])[] = [
  ['star', () => ({ shape: 'star' })],
  ['rounded', (star) => ({ shape: 'star', cornerRadius: mm(star.edgeDistance / 8) })],
  ['polygon', () => ({ shape: 'polygon' })],
  ['disc', () => ({ shape: 'disc' })],
  ['auto', () => ({ shape: 'auto' })],
]

/** So far from the centre along the joint after an arm. */
export const toValley = (star: Star, arm: number, length: number): Point => {
  const by = cornerDirection(star.points, arm + 0.5)
  return scale(point(Math.cos(by), Math.sin(by)), length)
}
