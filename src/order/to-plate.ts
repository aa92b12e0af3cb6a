import { mm } from '../units/convert.js'
import { cutRoom } from './cut-room.js'
import { DEFAULTS } from './defaults.js'
import { optional } from './optional.js'
import type { BackingOrder, BackingPlaces, Cutter, FixingOrder, HangingOrder, Panel, Where } from './order.js'
import { removedWidth } from './removed-width.js'
import type { WrittenOrder } from './schema.js'

type WrittenShop = NonNullable<WrittenOrder['shop']>
type WrittenCutter = WrittenShop['cutter']
type WrittenBacking = NonNullable<WrittenOrder['stars'][number]['backing']>

export const toCutter = (cutter: WrittenCutter): Cutter => ({
  kind: cutter?.kind ?? DEFAULTS.cutter,
  dxf: cutter?.dxf ?? DEFAULTS.dxf,
  kerf: cutter?.kerf ?? DEFAULTS.laserKerf,
  bit: cutter?.bit ?? DEFAULTS.bit,
  ...optional('bed', cutter?.bed),
  ...(cutter?.tabs === undefined ? {} : { tabs: { count: cutter.tabs, length: cutter.tab ?? DEFAULTS.tab } }),
})

export const toPanel = (panel: NonNullable<WrittenShop['panels']>[number], cutter: WrittenCutter): Panel => ({
  length: panel.length,
  width: panel.width,
  edge: panel.edge ?? usualEdge(toCutter(cutter)),
  gap: panel.gap ?? usualGap(toCutter(cutter)),
  ...optional('density', panel.density),
  ...optional('thickness', panel.thickness),
  ...optional('price', panel.price),
})

const roomFor = (cutter: Cutter) => cutRoom(removedWidth(cutter), cutter.tabs !== undefined)

/** Between two plates, where the order leaves it open: what the cutter needs, a little wood with it. */
export const usualGap = (cutter: Cutter): Panel['gap'] =>
  mm(Math.max(DEFAULTS.panelGap, removedWidth(cutter) + DEFAULTS.panelGapBesideCut, roomFor(cutter).gap))

/** Around all plates, where the order leaves it open. */
export const usualEdge = (cutter: Cutter): Panel['edge'] =>
  mm(Math.max(DEFAULTS.panelEdge, roomFor(cutter).edge))

export const toBacking = (backing: WrittenBacking): BackingOrder => ({
  shape: backing.shape ?? 'star',
  inset: backing.inset ?? DEFAULTS.inset,
  ...optional('thickness', backing.thickness),
  ...optional('cornerRadius', backing['corner-radius']),
  ...optional('covers', backing.covers),
  ...optional('hanging', backing.hanging && toHanging(backing.hanging)),
  ...optional('fixing', backing.fixing && toFixing(backing.fixing)),
})

/** @param star tells the place of a key of the star */
export const backingPlaces = (star: (...path: string[]) => Where): BackingPlaces => {
  const at = (...path: string[]): Where => star('backing', ...path)
  return {
    inset: at('inset'),
    cornerRadius: at('corner-radius'),
    covers: at('covers'),
    hanging: at('hanging'),
    apart: at('hanging', 'apart'),
    fixing: at('fixing'),
    fixingLength: at('fixing', 'length'),
  }
}

/** Diameter of what a star hangs by, where the order leaves it open. */
export const USUAL_HOLES = {
  cord: DEFAULTS.cordHole,
  keyhole: DEFAULTS.keyholeHead,
  screws: DEFAULTS.hangerHole,
} as const

const toHanging = (hanging: NonNullable<WrittenBacking['hanging']>): HangingOrder => ({
  kind: hanging.kind,
  hole: hanging.hole ?? USUAL_HOLES[hanging.kind],
  slot: hanging.slot ?? DEFAULTS.keyholeSlot,
  rise: hanging.rise ?? DEFAULTS.keyholeRise,
  wall: hanging.wall ?? DEFAULTS.wall,
  ...optional('apart', hanging.apart),
})

const toFixing = (fixing: NonNullable<WrittenBacking['fixing']>): FixingOrder => ({
  kind: fixing.kind,
  clear: fixing.clear ?? DEFAULTS.fixingClear,
  ...optional('length', fixing.length),
})
