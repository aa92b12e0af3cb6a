import { cornerDirection, type Star } from '../geometry/star.js'
import * as maths from '../units/maths.js'

/** A sign of Braille holds two columns of four dots; its bits, column by column (Unicode, U+2800). */
const BITS = [
  [0x01, 0x02, 0x04, 0x40],
  [0x08, 0x10, 0x20, 0x80],
] as const
const EMPTY = 0x2800

/** The star as it hangs, filled, in lines of Braille dots: `rows` lines of twice as many signs. */
export const starDots = (star: Star, rows: number): string[] => {
  const across = 2 * rows
  const half = Math.max(star.across, star.height) / 2
  const middle = star.radius - star.height / 2
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: across }, (_, column) => {
      let bits = EMPTY
      for (const [x, dots] of BITS.entries()) {
        for (const [y, bit] of dots.entries()) {
          const right = (2 * column + x + 0.5) / across - 1
          const up = 1 - (4 * row + y + 0.5) / (2 * rows)
          if (inStar(star, right * half, middle + up * half)) bits |= bit
        }
      }
      return String.fromCodePoint(bits)
    }).join(''),
  )
}

/** Is the point inside the outline? Every arm is one and the same, so only the nearest one's tip edges are asked. */
const inStar = ({ points, edgeDistance, tipAngle }: Star, x: number, y: number): boolean => {
  const sector = (2 * Math.PI) / points
  const turned = maths.atan2(y, x) - cornerDirection(points, 0)
  const fromAxis = Math.abs(turned - sector * Math.round(turned / sector))
  // The outward normal of a tip edge stands a quarter turn less half the tip angle from the arm's axis.
  const normal = Math.PI / 2 - (tipAngle * Math.PI) / 360
  return maths.hypot(x, y) * maths.cos(normal - fromAxis) <= edgeDistance
}
