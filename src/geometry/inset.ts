import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { circle, closedOutline, type Outline } from './outline.js'
import { point, polar, scale } from './point.js'
import { cornerDirection, type Star, starOutline } from './star.js'

/** The shapes a plate behind a star can have. */
export type InsetShape = 'star' | 'polygon' | 'disc'

/** The inset at which the shape vanishes, measured from the star's outline. */
export const insetLimit = (star: Star, shape: InsetShape): Mm => {
  switch (shape) {
    case 'star':
      return star.edgeDistance
    case 'polygon':
      return mm(star.valleyRadius * maths.cos(Math.PI / star.points))
    case 'disc':
      return star.valleyRadius
  }
}

/**
 * The plate's outline: centre at the origin, counter-clockwise, at least `inset` inside the star's outline
 * everywhere.
 *
 * `star`: all edge lines of a star lie at one distance h from the centre, so the sharp inset is the star scaled by
 * (h - inset) / h. `polygon`: the polygon through the valleys, its edges moved inwards. `disc`: the valleys are the
 * outline's nearest points to the centre, because the side angle is more than 90°.
 *
 * @param inset 0 or more, and less than {@link insetLimit}; anything else throws
 */
export const insetOutline = (star: Star, shape: InsetShape, inset: Mm): Outline => {
  const left = 1 - inset / insetLimit(star, shape)
  if (!(left > 0 && inset >= 0)) throw new RangeError(`the ${shape} vanishes at an inset of ${inset} mm`)
  switch (shape) {
    case 'star':
      return closedOutline(starOutline(star).vertices.map((corner) => scale(corner, left)))
    case 'polygon':
      return polygonOnJoints(star.points, star.valleyRadius * left)
    case 'disc':
      return circle(point(0, 0), star.valleyRadius * left)
  }
}

/** Its corners on the joints, so far from the centre; counter-clockwise. */
export const polygonOnJoints = (points: number, radius: number): Outline =>
  closedOutline(
    Array.from({ length: points }, (_, index) => polar(radius, cornerDirection(points, index + 0.5))),
  )

/** How much of each joint, from the centre outwards, the plate covers. */
export const jointCovered = (star: Star, shape: InsetShape, inset: Mm): Mm =>
  mm(star.jointEdge * (1 - inset / insetLimit(star, shape)))
