import { type Edge, edges, type Outline, type Vertex } from '../geometry/outline.js'
import { between, distance } from '../geometry/point.js'
import type { HoldingTabs } from '../order/order.js'
import type { Mm } from '../units/brand.js'

/** Straight edge left on either side of a tab, in mm: the bit must have left the corner. */
const BESIDE = 3

/**
 * The line a bit follows, interrupted where tabs stay: in the middle of straight edges, as evenly around the part as
 * these allow, none on curves. Where too few edges are straight and long enough, there are fewer tabs; on a disc none.
 *
 * @param line closed
 * @param bit a tab is as long as the gap less the bit
 */
export const withTabs = (line: Outline, { count, length }: HoldingTabs, bit: Mm): Outline[] => {
  const all = edges(line)
  const gap = length + bit
  const tabbed = new Set(spreadOver(all, gap + 2 * BESIDE, count))
  const [first] = tabbed
  if (first === undefined) return [line]
  // Begun behind the first tab, the pieces end one at each tab.
  const pieces: Vertex[][] = [[]]
  for (let step = 0; step <= all.length; step++) {
    const index = (first + step) % all.length
    const { from, to } = all[index] as Edge
    const bulge = line.vertices[index]?.bulge
    const half = gap / 2 / distance(from, to)
    const last = step === all.length
    if (step > 0) pieces.at(-1)?.push({ ...from, ...(bulge === undefined ? {} : { bulge }) })
    if (!tabbed.has(index)) continue
    if (step > 0) pieces.at(-1)?.push(between(from, to, 0.5 - half))
    if (last) break
    if (step > 0) pieces.push([])
    pieces.at(-1)?.push(between(from, to, 0.5 + half))
  }
  return pieces.map((vertices) => ({ vertices, closed: false }))
}

/** The straight edges nearest to evenly spaced places around the part, each once. */
const spreadOver = (all: readonly Edge[], least: number, count: number): number[] => {
  const lengths = all.map(({ from, to, arc }) =>
    arc ? arc.radius * Math.abs(arc.sweep) : distance(from, to),
  )
  const around = lengths.reduce((sum, length) => sum + length, 0)
  let along = 0
  const middles = lengths.map((length) => {
    const middle = along + length / 2
    along += length
    return middle
  })
  const free = all.flatMap((edge, index) => (!edge.arc && (lengths[index] ?? 0) >= least ? [index] : []))
  const chosen: number[] = []
  for (let tab = 0; tab < count && free.length > 0; tab++) {
    const aim = ((tab + 0.5) * around) / count
    const off = (index: number): number => {
      const apart = Math.abs((middles[index] ?? 0) - aim)
      return Math.min(apart, around - apart)
    }
    const nearest = free.reduce((best, index) => (off(index) < off(best) ? index : best))
    chosen.push(nearest)
    free.splice(free.indexOf(nearest), 1)
  }
  return chosen
}
