import { boxOf, type Outline } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import { SAME_POINT } from '../units/tolerance.js'
import { lieBetter } from './in-boxes.js'
import type { Panel, Placed } from './panel.js'

/** Plates in rows of boxes, panel by panel, and how many of each find room on none. */
export interface Boxed {
  readonly panels: readonly (readonly Placed[])[]
  readonly unplaced: readonly number[]
}

/** A box with its plate, as it lies. */
interface Box {
  readonly plate: number
  readonly across: number
  readonly height: number
  readonly turn: number
  /** From the box's lower left corner to the plate's origin. */
  readonly from: { readonly x: number; readonly y: number }
}

/** A row's height, and where on which panel its next box begins. */
interface Row {
  readonly panel: number
  readonly y: number
  readonly height: number
  x: number
}

/** The boxes of all plates in rows, the highest first, each in the first row that still has room for it. */
export const rowsOfBoxes = (
  plates: readonly { readonly outline: Outline; readonly count: number }[],
  panel: Panel,
): Boxed => {
  const { edge, gap } = panel
  // What follows a box begins a gap behind it, so the last box may reach to the edge.
  const [right, top] = [panel.width - edge + SAME_POINT, panel.height - edge + SAME_POINT]
  const panels: Placed[][] = []
  const unplaced = plates.map(() => 0)
  /** Rows that the narrowest box may still go into. */
  let rows: Row[] = []
  const begun: number[] = []
  const newRow = ({ across, height }: Box): Row | undefined => {
    if (edge + across > right || edge + height > top) return undefined
    const found = begun.findIndex((y) => y + height <= top)
    const on = found < 0 ? begun.push(edge) - 1 : found
    const y = begun[on] ?? edge
    begun[on] = y + height + gap
    const row = { panel: on, y, height, x: edge }
    rows.push(row)
    if (found < 0) panels.push([])
    return row
  }
  const boxes = plates
    .flatMap(({ outline, count }, plate) => {
      const box = lying(outline, plate, panel)
      return Array.from({ length: count }, () => box)
    })
    .sort((a, b) => b.height - a.height)
  const narrowest = Math.min(...new Set(boxes.map(({ across }) => across)))
  for (const box of boxes) {
    const row = rows.find(({ x, height }) => x + box.across <= right && height >= box.height) ?? newRow(box)
    if (!row) {
      unplaced[box.plate] = (unplaced[box.plate] ?? 0) + 1
      continue
    }
    const at = point(row.x + box.from.x, row.y + box.from.y)
    panels[row.panel]?.push({ plate: box.plate, turn: box.turn, at })
    row.x += box.across + gap
    if (row.x + narrowest > right) rows = rows.filter((each) => each !== row)
  }
  return { panels, unplaced }
}

/** Upright, or turned by a quarter where the panel holds more boxes so. */
const lying = (outline: Outline, plate: number, panel: Panel): Box => {
  const { min, max } = boxOf([outline])
  const [across, height] = [max.x - min.x, max.y - min.y]
  return lieBetter({ across, height }, panel)
    ? { plate, across: height, height: across, turn: Math.PI / 2, from: { x: max.y, y: -min.x } }
    : { plate, across, height, turn: 0, from: { x: -min.x, y: -min.y } }
}
