import type { Shop } from '../order/order.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { SHOP } from '../units/tolerance.js'

/** What can be cut at once: of a panel inside its margin, and of that no more than the cutter's bed takes. */
export interface CuttingRoom {
  readonly width: Mm
  readonly length: Mm
}

/**
 * The largest room there is for jigs: on the panels of the order that are as thick as jigs are, or that state no
 * thickness, and on the cutter's bed. Undefined when neither sets a limit.
 */
export const cuttingRoom = ({ panels, jigStock, cutter }: Shop): CuttingRoom | undefined => {
  const [largest] = panels
    .filter(({ thickness }) => thickness === undefined || Math.abs(thickness - jigStock.thickness) < SHOP)
    .map(({ width, length, edge }) => sorted(width - 2 * edge, length - 2 * edge))
    .sort((a, b) => b.width * b.length - a.width * a.length)
  const bed = cutter.bed && sorted(cutter.bed.width, cutter.bed.length)
  if (!largest || !bed) return largest ?? bed
  return { width: mm(Math.min(largest.width, bed.width)), length: mm(Math.min(largest.length, bed.length)) }
}

const sorted = (a: number, b: number): CuttingRoom => ({
  width: mm(Math.min(a, b)),
  length: mm(Math.max(a, b)),
})
