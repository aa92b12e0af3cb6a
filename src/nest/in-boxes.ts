import type { Mm } from '../units/brand.js'
import type { Panel } from './panel.js'

interface Box {
  readonly across: Mm
  readonly height: Mm
}

/** How many plates go on a panel in rows of boxes, all upright or all on their side, whichever gives more. */
export const inBoxes = (box: Box, panel: Panel): number =>
  Math.max(upright(box, panel), upright(onItsSide(box), panel))

const onItsSide = ({ across, height }: Box): Box => ({ across: height, height: across })

const upright = (box: Box, { width, height, edge, gap }: Panel): number => {
  const along = (room: number, side: number): number =>
    Math.max(0, Math.floor((room - 2 * edge + gap) / (side + gap)))
  return along(width, box.across) * along(height, box.height)
}

/**
 * How many panels the boxes of all plates take together in rows, the highest first, each in the first row that still
 * has room for it. A box that no panel holds counts as one panel.
 */
export const panelsInBoxes = (
  plates: readonly (Box & { readonly count: number })[],
  panel: Panel,
): number => {
  const { width, height, edge, gap } = panel
  const free = { across: width - 2 * edge + gap, height: height - 2 * edge + gap }
  const boxes = plates
    .flatMap(({ count, ...plate }) => {
      const laid = upright(plate, panel) >= upright(onItsSide(plate), panel) ? plate : onItsSide(plate)
      return Array.from({ length: count }, () => ({ across: laid.across + gap, height: laid.height + gap }))
    })
    .sort((a, b) => b.height - a.height)
  const rows: { readonly height: number; left: number }[] = []
  const above: number[] = []
  for (const box of boxes) {
    const row = rows.find(({ left, height: high }) => left >= box.across && high >= box.height)
    if (row) {
      row.left -= box.across
      continue
    }
    const begun = above.findIndex((left) => left >= box.height)
    const place = begun < 0 ? above.push(free.height) - 1 : begun
    above[place] = (above[place] ?? 0) - box.height
    rows.push({ height: box.height, left: free.across - box.across })
  }
  return above.length
}
