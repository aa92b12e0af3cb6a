import type { ArtPath, ArtStep, Artwork } from '../drawing/artwork.js'
import type { LayerName } from '../drawing/layers.js'
import type { Shape } from '../drawing/model.js'
import { label, path } from '../drawing/shapes.js'
import type { Outline } from '../geometry/outline.js'
import { add, distance, type Point, point, scale, subtract, turn } from '../geometry/point.js'
import type { Mm, Radians } from '../units/brand.js'
import { mm, radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { SAME_POINT } from '../units/tolerance.js'

/** Curves of artwork become straight edges that stay this close: a twentieth of what a person sees. */
const FLATNESS = mm(0.005)

/**
 * Artwork of lines and lettering as shapes of a drawing: lines take the layer's own pen, slots must be filled.
 *
 * @param middle where the artwork's middle comes to lie
 * @param across how wide it becomes, before it is turned; its height and lettering follow
 * @param angle turned that much counter-clockwise about its middle
 */
export const artworkShapes = (
  artwork: Artwork,
  middle: Point,
  across: Mm,
  angle: Radians,
  layer: LayerName,
): Shape[] => {
  const size = across / artwork.across
  const centre = point(artwork.across / 2, artwork.height / 2)
  const at = (spot: Point): Point => add(middle, turn(scale(subtract(spot, centre), size), angle))
  return artwork.marks.flatMap((mark): Shape[] => {
    if (mark.kind === 'path') return chains(mark, at).map((chain) => path(layer, chain))
    const { text, anchor, height } = mark
    const lettering = { layer, anchor, height: height * size, turn: radians(mark.turn + angle) }
    return [label(text, at(mark.at), lettering)]
  })
}

/** The path's parts, curves as straight edges; a part that ends where it began is closed. */
const chains = ({ steps }: ArtPath, at: (spot: Point) => Point): Outline[] => {
  const made: { vertices: Point[]; closed: boolean }[] = []
  for (const step of steps) {
    const chain = made.at(-1)
    const last = chain?.vertices.at(-1)
    if (step.to === 'move') made.push({ vertices: [at(step.at)], closed: false })
    else if (!chain || !last) throw new RangeError('artwork begins with a move')
    else if (step.to === 'start') chain.closed = true
    else chain.vertices.push(...flattened(last, step, at))
  }
  return made
    .filter(({ vertices }) => vertices.length > 1)
    .map(({ vertices, closed }) => {
      const [first, last] = [vertices[0], vertices.at(-1)]
      const meets = vertices.length > 2 && first && last && distance(first, last) < SAME_POINT
      return meets ? { vertices: vertices.slice(0, -1), closed: true } : { vertices, closed }
    })
}

/** The vertices after `from`. */
const flattened = (
  from: Point,
  step: Exclude<ArtStep, { to: 'start' }>,
  at: (spot: Point) => Point,
): Point[] => {
  if (step.to !== 'curve') return [at(step.at)]
  const [a, b, c, d] = [from, at(step.from), at(step.toward), at(step.at)]
  const bend = (p: Point, q: Point, r: Point): number => maths.hypot(p.x - 2 * q.x + r.x, p.y - 2 * q.y + r.y)
  // |B''| is at most 6 times the bend, and a chord over 1/n of the curve leaves it by at most |B''| / (8 n²).
  const count = Math.max(
    1,
    Math.ceil(Math.sqrt((6 * Math.max(bend(a, b, c), bend(b, c, d))) / (8 * FLATNESS))),
  )
  return Array.from({ length: count }, (_, index) => {
    const t = (index + 1) / count
    const u = 1 - t
    const spots = [scale(a, u * u * u), scale(b, 3 * u * u * t), scale(c, 3 * u * t * t), scale(d, t * t * t)]
    return spots.reduce(add)
  })
}
