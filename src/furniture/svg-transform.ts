import { type Point, point } from '../geometry/point.js'
import { degrees, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { WHOLE } from '../units/tolerance.js'
import { readNumbers } from './svg-numbers.js'

/** x' = a x + c y + e, y' = b x + d y + f (SVG 2 and CSS Transforms: `matrix(a b c d e f)`). */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number]

export const TRANSFORM_ALLOWED =
  'Allowed: translate, scale, rotate, matrix, skewX and skewY, one after the other, which leave nothing flat.'

/** Beyond it, digits of a place would be lost. */
const LARGEST_FACTOR = 100_000
/** What a square of 1 may become: with a side of a ten-thousandth nothing is left to see. */
const SMALLEST_AREA = 1e-8

/** The outer transform after the inner one. */
export const combined = (outer: Matrix, inner: Matrix): Matrix => {
  const [a, b, c, d, e, f] = outer
  const [g, h, i, j, k, l] = inner
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f]
}

export const placed = ([a, b, c, d, e, f]: Matrix, { x, y }: Point): Point =>
  point(a * x + c * y + e, b * x + d * y + f)

/** How much every length grows; undefined when lengths grow differently in different directions. */
export const evenScale = ([a, b, c, d]: Matrix): number | undefined => {
  const size = maths.hypot(a, b)
  const even =
    Math.abs(size - maths.hypot(c, d)) <= WHOLE * size && Math.abs(a * c + b * d) <= WHOLE * size * size
  return even ? size : undefined
}

/** Is left and right exchanged? */
export const isMirrored = ([a, b, c, d]: Matrix): boolean => a * d - b * c < 0

/** Small enough to keep a place's digits, and not so flat that nothing is left. */
export const keepsPlaces = (matrix: Matrix): boolean =>
  matrix.every((factor) => Math.abs(factor) <= LARGEST_FACTOR) &&
  Math.abs(matrix[0] * matrix[3] - matrix[1] * matrix[2]) >= SMALLEST_AREA

/** A list of transforms as one; undefined when there is anything else in it. */
export const readTransform = (written: string): Matrix | undefined => {
  let whole: Matrix = [1, 0, 0, 1, 0, 0]
  let rest = written.trim()
  while (rest !== '') {
    const call = /^(translate|scale|rotate|matrix|skewX|skewY)\s*\(([^()]*)\)\s*,?\s*/.exec(rest)
    const numbers = readNumbers(call?.[2] ?? '')
    const one = call && numbers ? TRANSFORMS[call[1] ?? '']?.(numbers) : undefined
    if (!call || !one) return undefined
    whole = combined(whole, one)
    if (!keepsPlaces(whole)) return undefined
    rest = rest.slice(call[0].length)
  }
  return whole
}

const rotation = (angle: number): Matrix => {
  const [sin, cos] = [maths.sin(toRadians(degrees(angle))), maths.cos(toRadians(degrees(angle)))]
  return [cos, sin, -sin, cos, 0, 0]
}

const slope = (angle: number): number => maths.tan(toRadians(degrees(angle)))

/** Each takes as many numbers as SVG allows it, and no others. */
const TRANSFORMS: Readonly<Record<string, (numbers: readonly number[]) => Matrix | undefined>> = {
  translate: ([x, y = 0, ...more]) => (x === undefined || more.length > 0 ? undefined : [1, 0, 0, 1, x, y]),
  scale: ([x, y = x, ...more]) =>
    x === undefined || y === undefined || more.length > 0 ? undefined : [x, 0, 0, y, 0, 0],
  rotate: ([angle, x, y, ...more]) => {
    if (angle === undefined || more.length > 0) return undefined
    if (x === undefined) return rotation(angle)
    if (y === undefined) return undefined
    return combined(combined([1, 0, 0, 1, x, y], rotation(angle)), [1, 0, 0, 1, -x, -y])
  },
  matrix: ([a, b, c, d, e, f, ...more]) =>
    a === undefined ||
    b === undefined ||
    c === undefined ||
    d === undefined ||
    e === undefined ||
    f === undefined ||
    more.length > 0
      ? undefined
      : [a, b, c, d, e, f],
  skewX: ([angle, ...more]) =>
    angle === undefined || more.length > 0 ? undefined : [1, 0, slope(angle), 1, 0, 0],
  skewY: ([angle, ...more]) =>
    angle === undefined || more.length > 0 ? undefined : [1, slope(angle), 0, 1, 0, 0],
}
