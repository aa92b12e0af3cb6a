import { closedOutline, type Outline, rectangle } from '../geometry/outline.js'
import { type Point, point } from '../geometry/point.js'
import type { JigStock } from '../order/order.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { holesAlong } from './holes.js'
import type { JigPart } from './jig.js'

/** In mm: plate behind a face's far end, and how deep it is along the fence at least. */
export const BEHIND = 40
export const DEPTH = 60
/** Rails stand so high above the table, and two clamps have room on the far end of each. */
export const RAIL = 60
export const CLAMPS = 90
/** From a rail's ends to its outer screws. */
const SCREW_IN = 20

/** A plate to be held at the fence, and what it is called. */
export interface Railed {
  readonly jig: string
  readonly plateWord: string
  readonly railWord: string
  readonly plate: readonly Point[]
  readonly seats: readonly Point[]
  /** Where the rail begins and ends along the fence. */
  readonly rail: readonly [number, number]
  /** The rail is clamped beyond this place. */
  readonly clampsFrom: number
}

/** A plate with a rail standing along the fence on it, screwed from below. */
export const onRail = (
  { jig, plateWord, railWord, plate, seats, rail: [start, end], clampsFrom }: Railed,
  { thickness, screw }: JigStock,
): JigPart[] => {
  const upright = (height: number): Outline => rectangle(start, 0, end, height)
  return [
    {
      name: `${jig}, ${plateWord}`,
      word: plateWord,
      outer: closedOutline(plate),
      inner: holesAlong(
        point(start + SCREW_IN, thickness / 2),
        point(end - SCREW_IN, thickness / 2),
        3,
        screw,
      ),
      seats,
      marks: [{ closed: false, vertices: [point(start, thickness), point(end, thickness)] }],
    },
    {
      name: `${jig}, ${railWord}`,
      word: railWord,
      outer: upright(RAIL),
      inner: [],
      seats: [],
      marks: [{ closed: false, vertices: [point(clampsFrom, 0), point(clampsFrom, RAIL)] }],
      footprint: upright(thickness),
    },
  ]
}

/** Between a rail's screws and either face of it: they stand in its middle. */
export const wallInRail = ({ thickness, screw }: JigStock): Mm => mm((thickness - screw) / 2)
