import type { Radians } from '../units/brand.js'
import { crossingsAt } from './crossings.js'
import { type Point, turn } from './point.js'

/** A straight stroke. */
export type Stroke = readonly [Point, Point]

/**
 * Parallel strokes that fill a polygon (even-odd rule), `spacing` apart, at `angle` counter-clockwise from +x. The
 * strokes lie on lines through multiples of the spacing, so neighbouring polygons are hatched in step.
 */
export const hatch = (polygon: readonly Point[], angle: Radians, spacing: number): Stroke[] => {
  const level = polygon.map((corner) => turn(corner, -angle as Radians))
  const heights = level.map(({ y }) => y)
  const first = Math.ceil(Math.min(...heights) / spacing)
  const last = Math.floor(Math.max(...heights) / spacing)
  const strokes: Stroke[] = []
  for (let row = first; row <= last; row++) {
    const y = row * spacing
    const crossings = crossingsAt(level, y)
    for (let index = 0; index + 1 < crossings.length; index += 2) {
      const [from, to] = [crossings[index] ?? 0, crossings[index + 1] ?? 0]
      if (to - from > spacing / 4) strokes.push([turn({ x: from, y }, angle), turn({ x: to, y }, angle)])
    }
  }
  return strokes
}
