import type { Panel } from './panel.js'

interface Box {
  readonly across: number
  readonly height: number
}

/** How many plates go on a panel in rows of boxes, all upright or all on their side, whichever gives more. */
export const inBoxes = (box: Box, panel: Panel): number =>
  Math.max(upright(box, panel), upright(onItsSide(box), panel))

/** Does the panel hold more of the boxes on their side? */
export const lieBetter = (box: Box, panel: Panel): boolean =>
  upright(onItsSide(box), panel) > upright(box, panel)

const onItsSide = ({ across, height }: Box): Box => ({ across: height, height: across })

const upright = (box: Box, { width, height, edge, gap }: Panel): number => {
  const along = (room: number, side: number): number =>
    Math.max(0, Math.floor((room - 2 * edge + gap) / (side + gap)))
  return along(width, box.across) * along(height, box.height)
}
