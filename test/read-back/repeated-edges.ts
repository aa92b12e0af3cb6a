import type { ReadOutline } from './read-outline.js'

/**
 * Edges that a cutter would run along twice: on one layer, between the same two points to a thousandth of a mm, with
 * the same bulge, either way round.
 */
export const repeatedEdges = (outlines: readonly ReadOutline[]): string[] => {
  const seen = new Set<string>()
  return outlines.flatMap(edgeKeys).filter((key) => seen.size === seen.add(key).size)
}

const edgeKeys = ({ layer, closed, vertices }: ReadOutline): string[] =>
  vertices.flatMap((from, index) => {
    const to = vertices[index + 1] ?? (closed ? vertices[0] : undefined)
    if (!to) return []
    const [a, b] = [from, to].map(({ x, y }) => `${x.toFixed(3)},${y.toFixed(3)}`)
    const [there, back] = [from.bulge.toFixed(6), (-from.bulge || 0).toFixed(6)]
    const ways = [`${layer} ${a} ${there} ${b}`, `${layer} ${b} ${back} ${a}`].sort()
    return [ways[0] ?? '']
  })

/** Edges shorter than the last written digit. */
export const edgesOfNoLength = (outlines: readonly ReadOutline[]): number =>
  outlines.flatMap(({ vertices, closed }) =>
    vertices.filter((from, index) => {
      const to = vertices[index + 1] ?? (closed ? vertices[0] : undefined)
      return to !== undefined && Math.hypot(to.x - from.x, to.y - from.y) < 1e-4
    }),
  ).length
