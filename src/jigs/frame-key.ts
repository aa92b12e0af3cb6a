import { add, leftOf, type Point, polar, scale } from '../geometry/point.js'
import type { JigStock } from '../order/order.js'
import type { Radians } from '../units/brand.js'
import { degrees, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'

/** The flanks lean so far outwards that the parts cannot be pulled apart. */
const FLARE = toRadians(degrees(15))
/** In mm: a key's root is at most so wide, however deep the rim. */
const WIDEST_ROOT = 30

/** A dovetail across a joint of two parts of a frame that runs straight out from the centre. */
export interface Key {
  /** From the centre to the key's middle. */
  readonly middle: number
  /** Half of its width at the joint and at its end, and how far it reaches across. */
  readonly root: number
  readonly flare: number
  readonly depth: number
}

/** The depth of rim that leaves the panel's thickness of wood on both sides of the narrowest key. */
export const leastRim = ({ thickness }: JigStock): number =>
  3 * thickness + 2 * thickness * maths.tan(FLARE) + 2

export const keyBetween = (nose: number, radius: number, { thickness }: JigStock): Key => {
  const root = Math.min(WIDEST_ROOT, Math.max(thickness, (radius - nose) / 4)) / 2
  const depth = thickness
  return { middle: (nose + radius) / 2, root, flare: root + depth * maths.tan(FLARE), depth }
}

/** The opening that a key goes into: corners outwards along the joint, its two far ones in the middle. */
export const socket = ({ middle, root, flare, depth }: Key, joint: Radians): Point[] =>
  placed(joint, [
    [middle - root, 0],
    [middle - flare, depth],
    [middle + flare, depth],
    [middle + root, 0],
  ])

/** The key, loose by `fit` on every edge: corners inwards along the joint. */
export const tab = ({ middle, root, flare, depth }: Key, joint: Radians, fit: number): Point[] => {
  const [narrower, short] = [fit / maths.cos(FLARE), depth - fit]
  const end = flare - narrower - fit * maths.tan(FLARE)
  return placed(joint, [
    [middle + root - narrower, 0],
    [middle + end, short],
    [middle - end, short],
    [middle - root + narrower, 0],
  ])
}

/** From places along the joint, outwards, and across it, counter-clockwise. */
const placed = (joint: Radians, places: readonly (readonly [number, number])[]): Point[] => {
  const outwards = polar(1, joint)
  return places.map(([along, across]) => add(scale(outwards, along), scale(leftOf(outwards), across)))
}
