import { readLength } from '../units/read-length.js'
import type { LengthStyle } from '../units/show.js'

/** What is behind the star, in mm. */
export interface Wall {
  readonly width: number
  readonly height: number
}

const LEAST = 50
const MOST = 20_000

/** Two lengths with ×, x or * between them; undefined when they cannot be read or no wall is like that. */
export const readWall = (text: string, { units }: LengthStyle): Wall | undefined => {
  const sides = text.split(/[×x*]/i).map((part) => readLength(part.trim(), units))
  const [width, height] = sides.flatMap((side) => ('length' in side ? [side.length] : []))
  const fits = (side: number): boolean => side >= LEAST && side <= MOST
  return sides.length === 2 && width !== undefined && height !== undefined && fits(width) && fits(height)
    ? { width, height }
    : undefined
}
