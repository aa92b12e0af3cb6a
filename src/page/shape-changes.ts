import type { Star } from '../geometry/star.js'
import type { Degrees } from '../units/brand.js'
import { trimmed } from '../units/show.js'
import type { Change } from './bench.js'
import { steppedTipAngle } from './pull.js'

/** What a star's shape is given by. */
export const SHAPES = [
  { value: 'tip-angle', words: 'by its tip angle' },
  { value: 'slenderest', words: 'slenderest it can cut' },
  { value: 'regular', words: 'regular, as 5/2' },
] as const

export type ShapeName = (typeof SHAPES)[number]['value']

/** The keys of a star that give its shape: all of them are taken out before another is set. */
export const SHAPE_KEYS = ['points', 'tip-angle', 'slenderest', 'regular']

const shapeOf = (starIndex: number, given: Readonly<Record<string, string | number | boolean>>): Change[] =>
  SHAPE_KEYS.map((key) => [['stars', starIndex, key], given[key]])

/** A star by its tip angle. */
export const tipAngleChanges = (starIndex: number, points: number, tipAngle: Degrees): Change[] =>
  shapeOf(starIndex, { points, 'tip-angle': Number(trimmed(tipAngle, 4)) })

/** The star as it is, its shape given in another way: a tip angle in whole steps of the saw's scale; the regular one has 5 points or more. */
export const shapeChanges = (starIndex: number, star: Star, shape: ShapeName, step: Degrees): Change[] => {
  switch (shape) {
    case 'tip-angle':
      return tipAngleChanges(starIndex, star.points, steppedTipAngle(star.points, star.tipAngle, step))
    case 'slenderest':
      return shapeOf(starIndex, { points: star.points, slenderest: true })
    case 'regular':
      return shapeOf(starIndex, { regular: `${Math.max(5, star.points)}/2` })
  }
}
