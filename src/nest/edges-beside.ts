import type { Point } from '../geometry/point.js'
import type { Polygon } from './polygon.js'

/** From one corner to the next. */
type Side = readonly [Point, Point]

/** Bands across the polygon, from its lowest corner up, each with the edges that reach into it. */
interface Bands {
  readonly bottom: number
  readonly height: number
  readonly sides: readonly (readonly Side[])[]
}

const COUNT = 64

/** A polygon is asked for many thousand times over. */
const known = new WeakMap<Polygon, Bands>()

/** All edges that reach the height of the point, and a few more. */
export const edgesBeside = ({ y }: Point, polygon: Polygon): readonly Side[] => {
  let bands = known.get(polygon)
  if (!bands) {
    bands = bandsOf(polygon)
    known.set(polygon, bands)
  }
  return bands.sides[bandAt(y, bands)] ?? []
}

const bandAt = (y: number, { bottom, height }: Pick<Bands, 'bottom' | 'height'>): number =>
  Math.floor((y - bottom) / height)

const bandsOf = (polygon: Polygon): Bands => {
  const heights = polygon.map(({ y }) => y)
  const bottom = Math.min(...heights)
  const height = (Math.max(...heights) - bottom) / COUNT
  const sides = Array.from({ length: COUNT + 1 }, (): Side[] => [])
  polygon.forEach((to, index) => {
    const from = polygon[(index || polygon.length) - 1] as Point
    const lowest = bandAt(Math.min(from.y, to.y), { bottom, height })
    const highest = bandAt(Math.max(from.y, to.y), { bottom, height })
    for (let band = lowest; band <= highest; band++) sides[band]?.push([from, to])
  })
  return { bottom, height, sides }
}
