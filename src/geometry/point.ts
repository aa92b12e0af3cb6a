import type { Radians } from '../units/brand.js'
import * as maths from '../units/maths.js'

/** A place on the drawing plane: mm, x to the right, y up. */
export interface Point {
  readonly x: number
  readonly y: number
}

export const point = (x: number, y: number): Point => ({ x, y })

/** The point at `radius` from the origin, `direction` counter-clockwise from +x. */
export const polar = (radius: number, direction: Radians): Point => ({
  x: radius * maths.cos(direction),
  y: radius * maths.sin(direction),
})

export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y })
export const subtract = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y })
export const scale = (a: Point, factor: number): Point => ({ x: a.x * factor, y: a.y * factor })
export const distance = (a: Point, b: Point): number => maths.hypot(b.x - a.x, b.y - a.y)

/** The point a fraction `t` of the way from a (t = 0) to b (t = 1). */
export const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
})

/** The unit vector from a to b. The points must differ. */
export const direction = (a: Point, b: Point): Point => scale(subtract(b, a), 1 / distance(a, b))

/** The vector turned a quarter turn counter-clockwise, so that it points to the left of its old direction. */
export const leftOf = (vector: Point): Point => ({ x: -vector.y, y: vector.x })

/** Turns a point counter-clockwise about the origin. */
export const turn = (a: Point, angle: Radians): Point => ({
  x: a.x * maths.cos(angle) - a.y * maths.sin(angle),
  y: a.x * maths.sin(angle) + a.y * maths.cos(angle),
})

export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y

/** Positive when b points to the left of a. */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x

/** Steps to the eight neighbours on a grid, along its lines first. */
export const NEIGHBOURS = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
  [1, 1],
  [1, -1],
  [-1, 1],
  [-1, -1],
] as const
