import type { Mm } from '../units/brand.js'
import type { Panel } from './panel.js'

/** How many plates go on a panel in rows of boxes, all upright or all on their side, whichever gives more. */
export const inBoxes = (
  { across, height: up }: { readonly across: Mm; readonly height: Mm },
  { width, height, edge, gap }: Panel,
): number => {
  const along = (room: number, side: number): number =>
    Math.max(0, Math.floor((room - 2 * edge + gap) / (side + gap)))
  return Math.max(along(width, across) * along(height, up), along(width, up) * along(height, across))
}
