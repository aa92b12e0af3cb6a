import { type InsetShape, insetOutline } from '../../src/geometry/inset.js'
import type { Outline } from '../../src/geometry/outline.js'
import type { Point } from '../../src/geometry/point.js'
import { solveStar } from '../../src/geometry/star.js'
import type { Panel, Placed } from '../../src/nest/panel.js'
import { degrees, mm } from '../../src/units/convert.js'

export const panel = (width: number, height: number, edge: number, gap: number): Panel => ({
  width: mm(width),
  height: mm(height),
  edge: mm(edge),
  gap: mm(gap),
})

/** The plate behind a star of so many points, tip angle and board width. */
export const plate = (
  points: number,
  tipAngle: number,
  board: number,
  inset: number,
  shape: InsetShape = 'star',
): Outline => insetOutline(solveStar(points, degrees(tipAngle), 'board-width', mm(board)), shape, mm(inset))

/** Where the corners are on the panel: turned, then moved, worked out by complex multiplication. */
export const standing = (corners: readonly Point[], { turn, at }: Placed): Point[] => {
  const [c, s] = [Math.cos(turn), Math.sin(turn)]
  return corners.map(({ x, y }) => ({ x: c * x - s * y + at.x, y: s * x + c * y + at.y }))
}

/** Points all along the true outline of a plate; on a disc 3° apart. */
export const cornersOf = ({ vertices }: Outline): Point[] =>
  vertices.some(({ bulge }) => bulge)
    ? Array.from({ length: 120 }, (_, index) => {
        const radius = Math.hypot(vertices[0]?.x ?? 0, vertices[0]?.y ?? 0)
        return { x: radius * Math.cos((index * Math.PI) / 60), y: radius * Math.sin((index * Math.PI) / 60) }
      })
    : [...vertices]
