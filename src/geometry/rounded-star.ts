import type { Mm } from '../units/brand.js'
import { degrees, mm, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { closedOutline, type Outline, type Vertex } from './outline.js'
import { add, direction, scale } from './point.js'
import { type Star, starCorners } from './star.js'

/**
 * The star's sharp inset with its corners rounded: tips by `radius`, valleys by the same radius or by the inset, where
 * that is less. The arc in a valley lies outside the sharp inset, but no nearer than the inset to the star's valley: its
 * middle is (inset - radius) / sin(side angle) away from that, and both add up to the inset or more.
 *
 * @param inset 0 or more, less than the star's edge distance
 * @param radius more than 0 and less than {@link roundingLimit}; anything else throws
 */
export const roundedInset = (star: Star, inset: Mm, radius: Mm): Outline => {
  if (!(radius > 0 && radius < roundingLimit(star, inset)))
    throw new RangeError(`a radius of ${radius} mm leaves no edges`)
  const left = 1 - inset / star.edgeDistance
  const corners = starCorners(star.points, star.radius * left, star.valleyRadius * left)
  const atTip = { cut: radius * tipCut(star), bulge: maths.tan(toRadians(degrees(180 - star.tipAngle)) / 4) }
  const valley = Math.min(radius, inset)
  const turned = toRadians(degrees(2 * star.sideAngle - 180))
  const atValley = { cut: valley * valleyCut(star), bulge: -maths.tan(turned / 4) }
  return closedOutline(
    corners.flatMap((corner, index): Vertex[] => {
      const { cut, bulge } = index % 2 === 0 ? atTip : atValley
      if (cut === 0) return [corner]
      const before = corners.at(index - 1) ?? corner
      const after = corners[(index + 1) % corners.length] ?? corner
      return [
        { ...add(corner, scale(direction(corner, before), cut)), bulge },
        add(corner, scale(direction(corner, after), cut)),
      ]
    }),
  )
}

/** The radius at which nothing would be left of the straight edges. */
export const roundingLimit = (star: Star, inset: Mm): Mm => {
  const edge = star.tipEdge * (1 - inset / star.edgeDistance)
  const whole = edge / (tipCut(star) + valleyCut(star))
  return mm(whole <= inset ? whole : (edge - inset * valleyCut(star)) / tipCut(star))
}

/** How much of each joint the rounded inset covers, from the centre outwards. */
export const roundedCover = (star: Star, inset: Mm, radius: Mm): Mm => {
  const toArc = 1 / maths.sin(toRadians(star.sideAngle)) - 1
  return mm(star.jointEdge * (1 - inset / star.edgeDistance) + Math.min(radius, inset) * toArc)
}

/** What rounding takes off an edge at its tip, and at its valley, for a radius of 1. */
const tipCut = (star: Star): number => 1 / maths.tan(toRadians(degrees(star.tipAngle / 2)))
const valleyCut = (star: Star): number => maths.tan(toRadians(degrees(star.sideAngle - 90)))
