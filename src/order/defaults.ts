import { LONGEST_PAGE } from '../tables/paper.js'
import { degrees, inches, mm } from '../units/convert.js'

/** What an order leaves open, and why we fill it in so. Common practice, no published source, unless one is named. */
export const DEFAULTS = {
  /** Many miter saws stop at 45°; a plan that needs more must be asked for knowingly. */
  sawLimit: degrees(45),
  /** A thin-kerf blade of 10 or 12 inches. */
  kerf: inches(3 / 32),
  /** Half-degree lines are the finest that most printed saw scales carry. */
  readsTo: degrees(0.5),
  /** A bias without it is taken at its word. */
  biasUncertainty: degrees(0),
  /** A sound saw that is not moved between cuts: a hair's play at the pivot, a board that is not quite straight. */
  repeatsTo: degrees(0.05),
  /** A scale that was never checked against a dry fit: a pointer's width, either way. */
  trueTo: degrees(0.2),
  /** A fixed wooden stop that is brushed clean: a little dust, a little push. */
  stopRepeatsTo: mm(0.1),
  /** What filler and clamps still hide. */
  acceptedGap: mm(0.5),
  /** A home printer leaves 4 to 6 mm of each side white. */
  margin: mm(10),
  /** Wide enough for tape and for a register mark that shows on both pages. */
  overlap: mm(10),
  /** As long as a page can be. */
  longest: LONGEST_PAGE,
  /** A fresh-sawn end; boards with splits or paint need more. */
  endAllowance: mm(0),
  /** The corners of a blank fall off as waste. */
  sound: 'arm',
  /** Keeps the plate's edge out of sight from the side, and clear of a chamfer. */
  inset: mm(12),
  /** Sheet goods from the shop carry a bruised edge. */
  panelEdge: mm(10),
  /** A router's bit of 1/8 inch and a little wood that does not break out while the next plate is cut. */
  panelGap: mm(4),
  /** What is left beside a wider cut. */
  panelGapBesideCut: mm(1),
  /** Wood that stays between two cuts for holding tabs to hold to; common practice, no published source. */
  tabWeb: mm(3),
  /** One seed is as good as another. */
  panelSeed: 1,
  /** Holds a plate of 200 mm against the bit and is cut with a knife. */
  tab: mm(6),
  /** A cord of 3 mm goes through with its knot. */
  cordHole: mm(5),
  /** Two holes near enough for one finger, far enough that the star does not swing. */
  cordApart: mm(40),
  /** Passes the head of a wood screw of 4 mm; the slot passes its shank. */
  keyholeHead: mm(9),
  keyholeSlot: mm(4.5),
  keyholeRise: mm(9),
  /** Clears the thread of a wood screw of 3 mm; the plates of small hangers have their holes so far apart. */
  hangerHole: mm(3.5),
  hangerApart: mm(30),
  /** Plywood of 3 to 4 mm does not break out there. */
  wall: mm(6),
  /** Wood beside a nail does not split there, in soft woods and without drilling. */
  fixingClear: mm(8),
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
  /** The stop and the cradle make the cuts, the gauge checks them; the others are for some stars and some makers. */
  jigs: ['blank-stop', 'arm-cradle', 'angle-gauge'],
  /** Birch plywood of 12 mm is flat, holds a screw, and lasers and small routers cut it. */
  jigThickness: mm(12),
  /** As the shop card draws it. */
  jigSide: 'right',
  /** Clears the thread of a wood screw of 4 mm; thinner panels get thinner ones (`wood-screw.ts`). */
  screwHole: mm(4),
  /** Of the screw's hole: what a wood screw's core fills, so that its thread bites in plywood. */
  pilotPart: 5 / 8,
  /** M6, or 1/4 inch. */
  boltHole: mm(6.5),
  /** Feet of middling toggle clamps differ: measure yours. */
  clampAcross: mm(25),
  clampAlong: mm(30),
  /** Takes up what feet differ, and the thickness of one arm and the next. */
  clampSlot: mm(6),
  /** Half as much again as AS/NZS 62841.3.9:2020 asks for. */
  hands: mm(150),
  /** 0.1 mm of dust then turns the wood by 0.07°, less than a scale is true to. */
  register: mm(80),
  /** Less than filler hides: arms that differ more leave steps at the valleys. */
  tolerance: mm(0.3),
  /** A wedge that thick is pushed by a thumb and does not break. */
  clearance: mm(10),
  /** A press fit by hand. */
  fit: mm(0.1),
  nearest: '1/32',
  /** Most boards in a shop are flat-sawn, and they move most: the safe side. */
  rings: 'flat',
  /** The Wood Handbook's tables of weight are for 12 %; wood in a house is drier and lighter: the safe side. */
  weighingMoisture: 12,
  /** One coat seals, the second makes a film. */
  coats: 2,
  /** In % and °C: a closed shop, a heated room in a cold winter, a damp summer. */
  air: {
    workshop: { humidity: 45, temperature: 18 },
    winter: { humidity: 30, temperature: 21 },
    summer: { humidity: 60, temperature: 24 },
  },
  /**
   * How far the true value may lie from what is read, either way. Tape: class II may be 0.5 mm off up to a metre
   * (Directive 2014/32/EU, annex X, from memory), and half a division is read. Rule: a steel one, or a step gauge in the
   * gap. Bevel gauge: set to the corner and laid on a scale of whole degrees. Protractor: a digital one shows tenths and
   * is as much off, and the corner is not clean. The rest is common practice, no published source.
   */
  tape: mm(1),
  rule: mm(0.3),
  caliper: mm(0.1),
  bevelGauge: degrees(0.5),
  protractor: degrees(0.2),
  /** A blade that takes off less at one end runs out of the wood. */
  cleanUp: mm(0.5),
} as const
