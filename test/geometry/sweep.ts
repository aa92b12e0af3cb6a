import { centreAngle, type SizeName, type Star, solveStar, tipAngleLimit } from '../../src/geometry/star.js'
import type { Degrees } from '../../src/units/brand.js'
import { degrees, mm } from '../../src/units/convert.js'

/** One kind of star, before it has a size. */
export interface Shape {
  readonly points: number
  readonly tipAngle: Degrees
}

export const SIZE_NAMES: readonly SizeName[] = ['board-width', 'across', 'height', 'radius', 'tip-edge']

/** Tip angles below, at and above the centre angle, at and beyond 90°, and just under the limit. */
const tipAnglesFor = (points: number): Degrees[] => {
  const centre = centreAngle(points)
  const limit = tipAngleLimit(points)
  const around = [0.25, 0.6, 0.9, 1, 1.1, 1.5, 2.5].map((share) => share * centre)
  const wanted = [3, 18, 36, 45, ...around, 89.9, 90, 90.1, 120, limit - 1, limit - 0.01]
  return [...new Set(wanted)].filter((tip) => tip > 0 && tip < limit).map(degrees)
}

/** Every regime of the geometry, 3 to 24 points. */
export const SHAPES: readonly Shape[] = Array.from({ length: 22 }, (_, index) => index + 3).flatMap(
  (points) => tipAnglesFor(points).map((tipAngle) => ({ points, tipAngle })),
)

export const showShape = ({ points, tipAngle }: Shape): string => `${points} points, tip angle ${tipAngle}`

/** The shape in every way of giving its size; the five sizes differ, so that the stars do. */
export const starsOf = ({ points, tipAngle }: Shape): Star[] =>
  SIZE_NAMES.map((name, index) => solveStar(points, tipAngle, name, mm(70 + 55 * index)))

/** Two of those stars, others for each shape, for checks that take long. */
export const twoStarsOf = (shape: Shape): Star[] => {
  const turn = SHAPES.indexOf(shape)
  return starsOf(shape).filter((_, index) => (index + turn) % SIZE_NAMES.length < 2)
}
