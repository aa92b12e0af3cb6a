import { type Point, point, subtract } from '../geometry/point.js'

/** The near side of the blade's slot: the side of the piece that is kept, which lies to its left as it runs up. */
export interface BladeLine {
  readonly foot: Point
  /** Away from the fence; of length 1. */
  readonly along: Point
}

/** How far a place lies from the blade; negative when the blade would meet it. */
export const fromBlade = ({ foot, along }: BladeLine, at: Point): number => {
  const { x, y } = subtract(at, foot)
  return along.x * y - along.y * x
}

/** Where the line passes the given height above the fence's face. */
export const onBlade = ({ foot, along }: BladeLine, y: number): Point =>
  point(foot.x + ((y - foot.y) * along.x) / along.y, y)
