import { type Point, point, turn } from '../geometry/point.js'
import { degrees, radians, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { SAME_POINT } from '../units/tolerance.js'

/** As SVG writes an arc: radii, turn of the ellipse in degrees, which of the four arcs, and where it ends. */
export interface SvgArc {
  readonly radii: Point
  readonly turned: number
  readonly large: boolean
  readonly sweep: boolean
  readonly to: Point
}

export interface Curve {
  readonly from: Point
  readonly toward: Point
  readonly at: Point
}

/** A curve spans at most this much; the radial error of one Bezier is then below 1e-7 of the radius. */
const CURVE_SPAN = Math.PI / 8

/**
 * The arc as cubic Beziers (SVG 2, B.2.4 and B.2.5: centre from end points, radii too small are scaled up). Empty
 * when it is a straight line or nothing: a radius of 0, or an end where it starts.
 */
export const arcCurves = (start: Point, { radii, turned, large, sweep, to }: SvgArc): Curve[] => {
  const [givenX, givenY] = [Math.abs(radii.x), Math.abs(radii.y)]
  if (givenX < SAME_POINT || givenY < SAME_POINT) return []
  const tilt = toRadians(degrees(turned))
  // In the ellipse's own directions, from the middle of the chord.
  const half = turn(point((start.x - to.x) / 2, (start.y - to.y) / 2), radians(-tilt))
  if (half.x === 0 && half.y === 0) return []
  const reach = maths.hypot(half.x / givenX, half.y / givenY)
  const grown = Math.max(1, reach)
  const [rx, ry] = [givenX * grown, givenY * grown]
  // On the unit circle: the ends, and the centre beside the chord.
  const [x, y] = [half.x / rx, half.y / ry]
  const chord = maths.hypot(x, y)
  const off = (Math.sqrt(Math.max(0, 1 - chord * chord)) / chord) * (large === sweep ? -1 : 1)
  const centre = point(off * y, -off * x)
  const begin = maths.atan2(y - centre.y, x - centre.x)
  const end = maths.atan2(-y - centre.y, -x - centre.x)
  const whole = 2 * Math.PI
  const span = (((end - begin) % whole) + whole) % whole
  return onEllipse(
    begin,
    sweep ? span : span - whole,
    (on) => {
      const local = turn(point((on.x + centre.x) * rx, (on.y + centre.y) * ry), tilt)
      return point(local.x + (start.x + to.x) / 2, local.y + (start.y + to.y) / 2)
    },
    to,
  )
}

/** Beziers with handles of 4/3 tan(span / 4) of the radius; the last one ends exactly where the arc does. */
const onEllipse = (begin: number, sweep: number, placed: (on: Point) => Point, to: Point): Curve[] => {
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / CURVE_SPAN - SAME_POINT))
  const span = sweep / count
  const handle = (4 / 3) * maths.tan(span / 4)
  return Array.from({ length: count }, (_, step) => {
    const [first, last] = [begin + step * span, begin + (step + 1) * span]
    const [a, b] = [point(maths.cos(first), maths.sin(first)), point(maths.cos(last), maths.sin(last))]
    return {
      from: placed(point(a.x - handle * a.y, a.y + handle * a.x)),
      toward: placed(point(b.x + handle * b.y, b.y - handle * b.x)),
      at: step === count - 1 ? to : placed(b),
    }
  })
}
