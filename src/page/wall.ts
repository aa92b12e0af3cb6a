import { type Point, point } from '../geometry/point.js'
import { type Star, starOutline } from '../geometry/star.js'
import { done, type Outcome, refused, showGiven } from '../order/problem.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { readLength } from '../units/read-length.js'
import { type LengthStyle, showLength } from '../units/show.js'

/** What is behind the star, in mm. */
export interface Wall {
  readonly width: Mm
  /** At the sides; of a door or a wall without a gable everywhere. */
  readonly height: Mm
  /** Of a gable's ridge above the ground. */
  readonly ridge?: Mm
}

const LEAST = mm(50)
const MOST = mm(20_000)

/** Two lengths with ×, x or * between them, or three for a gable; undefined where nothing is written. */
export const readWall = (text: string, lengths: LengthStyle): Outcome<Wall | undefined> => {
  if (text === '') return done(undefined)
  const sides = text.split(/[×x*]/i).map((part) => readLength(part.trim(), lengths.units))
  const [width, height, ridge] = sides.flatMap((side) =>
    'length' in side && side.length >= LEAST && side.length <= MOST ? [side.length] : [],
  )
  const read = width !== undefined && height !== undefined
  if (read && sides.length === 2) return done({ width, height })
  if (read && sides.length === 3 && ridge !== undefined && ridge > height)
    return done({ width, height, ridge })
  return refused([
    {
      place: 'wall',
      given: showGiven(text),
      advice: `Write width × height, or width × eaves × ridge of a gable, each from ${showLength(LEAST, lengths)} to ${showLength(MOST, lengths)}, such as 900 mm × 2000 mm.`,
    },
  ])
}

/** Its outline with the middle of its foot at the origin, y up. */
export const wallOutline = ({ width, height, ridge }: Wall): Point[] => [
  point(-width / 2, 0),
  point(width / 2, 0),
  point(width / 2, height),
  ...(ridge === undefined ? [] : [point(0, ridge)]),
  point(-width / 2, height),
]

/** The star's corners where it hangs to be judged: its middle, tip to lowest tip, half way up, the gable included. */
export const hungCorners = (star: Star, { height, ridge = height }: Wall): Point[] => {
  const corners = starOutline(star).vertices
  const ys = corners.map(({ y }) => y)
  const up = ridge / 2 - (Math.min(...ys) + Math.max(...ys)) / 2
  return corners.map(({ x, y }) => point(x, y + up))
}

/** How far the nearest corner is inside the gable's slopes, square to them; below zero where it stands over. */
export const roomBelowSlopes = (corners: readonly Point[], { width, height }: Wall, ridge: Mm): Mm => {
  const [run, rise] = [width / 2, ridge - height]
  const below = corners.map(({ x, y }) => (ridge - y) * run - rise * Math.abs(x))
  return mm(Math.min(...below) / maths.hypot(run, rise))
}
