import { LONGEST_PAGE } from '../tables/paper.js'
import { degrees, inches, mm } from '../units/convert.js'
import { JIG_NAMES } from './order.js'

/** What an order leaves open, and why we fill it in so. Common practice, no published source, unless one is named. */
export const DEFAULTS = {
  /** Many miter saws stop at 45°; a plan that needs more must be asked for knowingly. */
  sawLimit: degrees(45),
  /** A thin-kerf blade of 10 or 12 inches. */
  kerf: inches(3 / 32),
  /** Half-degree lines are the finest that most printed saw scales carry. */
  readsTo: degrees(0.5),
  /** A home printer leaves 4 to 6 mm of each side white. */
  margin: mm(10),
  /** Wide enough for tape and for a register mark that shows on both pages. */
  overlap: mm(10),
  /** As long as a page can be. */
  longest: LONGEST_PAGE,
  /** A fresh-sawn end; boards with splits or paint need more. */
  endAllowance: mm(0),
  /** Keeps the plate's edge out of sight from the side, and clear of a chamfer. */
  inset: mm(12),
  /** Sheet goods from the shop carry a bruised edge. */
  panelEdge: mm(10),
  /** Every arm pattern is a wish to cut at least one star. */
  quantity: 1,
  /** Old importers read R12; newer files can be asked for. */
  dxf: 'r12',
  /** No cutter named: the outline is followed by hand. */
  cutter: 'hand',
  /** A beam through plywood of 3 to 6 mm. */
  laserKerf: mm(0.2),
  /** The smallest bit that many shops keep; a smaller one breaks in plywood of 12 mm. */
  bit: inches(1 / 8),
  /** The stop and the cradle make the cuts, the gauge checks them; the others are for some stars only. */
  jigs: JIG_NAMES,
  /** Birch plywood of 12 mm is flat, holds a screw, and lasers and small routers cut it. */
  jigThickness: mm(12),
  /** As the shop card draws it. */
  jigSide: 'right',
  /** Clears the thread of a wood screw of 4 mm. */
  screwHole: mm(4),
  /** M6, or 1/4 inch. */
  boltHole: mm(6.5),
  /** Feet of middling toggle clamps differ: measure yours. */
  clampAcross: mm(25),
  clampAlong: mm(30),
  /** Half as much again as AS/NZS 62841.3.9:2020 asks for. */
  hands: mm(150),
  nearest: '1/32',
} as const
