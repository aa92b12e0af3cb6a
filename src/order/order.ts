import type { InsetShape } from '../geometry/inset.js'
import type { SizeName } from '../geometry/star.js'
import type { PaperName } from '../tables/paper.js'
import type { Degrees, Mm } from '../units/brand.js'
import type { LengthStyle } from '../units/show.js'
import type { Problem } from './problem.js'
import type { Climate, Finish, Glue, Stain, Wall, Wood } from './season-order.js'

/** Everything a person asked for, in mm and degrees, with every default filled in. */
export interface Order {
  readonly title: string
  readonly lengths: LengthStyle
  /** Day of issue, `2026-11-28`, and who made the drawings; for the title block. */
  readonly date?: string
  readonly creator?: string
  readonly shop: Shop
  readonly climate: Climate
  /** Room for a star on the wall it is meant for; a side that is absent is no limit. */
  readonly space: { readonly across?: Mm; readonly height?: Mm }
  readonly stars: readonly StarOrder[]
  readonly jigs: JigOrder
  /** What the order left open and the plan rests on, in words. */
  readonly assumed: readonly string[]
  /** Flags that changed what the order file says, in words. */
  readonly overridden: readonly string[]
}

export interface Shop {
  readonly saw: Saw
  readonly stop: Stop
  /** The widest gap at the last joint that still passes. */
  readonly acceptedGap: Mm
  readonly boards: readonly Board[]
  readonly panels: readonly Panel[]
  /** Begins the search of how plates lie on panels: the same number, the same search. */
  readonly panelSeed: number
  readonly cutter: Cutter
  readonly jigStock: JigStock
  readonly paper: Paper
  /** Cut off each board's end before the first arm. */
  readonly endAllowance: Mm
  readonly wood: Wood
  readonly glue?: Glue
  readonly stain?: Stain
  readonly finish?: Finish
  /** What must be free of defects: the arm alone, or the whole blank it is cut from. */
  readonly sound: SoundPart
  /** What the blade that rips boards removes; absent where a board gives one strip only. */
  readonly ripKerf?: Mm
}

export type SoundPart = 'arm' | 'blank'

export interface Saw {
  /** The steepest miter the saw reaches, either way from square. */
  readonly limit: Degrees
  readonly kerf: Mm
  /** The step of the scale that can be set with confidence. */
  readonly readsTo: Degrees
  readonly detents: readonly Degrees[]
  /** The longest cut across a board; unknown when absent. */
  readonly crosscut?: Mm
  /** Learned from dry fits; none when absent. */
  readonly bias?: SawBias
  /** How far one cut comes out from the next at the same setting: one standard deviation. */
  readonly repeatsTo: Degrees
  /** How far all cuts may be from what the scale reads while no bias was learned; two standard deviations. */
  readonly trueTo: Degrees
}

/**
 * What the cuts that close the ring come out at, less what the scale reads: below zero they come out shallower. An
 * error of the first cut is in it by half, for only the sum closes the ring.
 */
export interface SawBias {
  readonly miter: Degrees
  /** Expanded, coverage factor 2 (GUM, JCGM 100:2008, 6.2.1). */
  readonly uncertainty: Degrees
}

/** The stop block that the arms are pushed against. */
export interface Stop {
  /** How far one piece comes to lie from the next: one standard deviation. */
  readonly repeatsTo: Mm
}

export interface Board {
  /** What the maker calls it. */
  readonly name?: string
  readonly width: Mm
  readonly length: Mm
  readonly thickness?: Mm
  readonly price?: number
  /** How many are on the rack; as many as needed when absent. */
  readonly count?: number
  /** Stretches that no arm may touch, measured from the board's first end. */
  readonly defects: readonly Stretch[]
  readonly wood: Wood
}

export interface Stretch {
  readonly from: Mm
  readonly to: Mm
}

export interface Panel {
  readonly length: Mm
  readonly width: Mm
  readonly thickness?: Mm
  readonly price?: number
  /** Kept free all round. */
  readonly edge: Mm
  /** Between two plates, at least. */
  readonly gap: Mm
  /** In kg/m³. */
  readonly density?: number
}

export interface Cutter {
  readonly kind: 'laser' | 'router' | 'hand'
  /** Removed by a laser's beam. */
  readonly kerf: Mm
  /** Diameter of a router's bit. */
  readonly bit: Mm
  /** What it takes at once; no limit when absent. */
  readonly bed?: { readonly width: Mm; readonly length: Mm }
  readonly dxf: DxfVersion
  /** What a router leaves standing so that a part does not come loose; absent when nothing is left. */
  readonly tabs?: HoldingTabs
}

export interface HoldingTabs {
  /** On each part. */
  readonly count: number
  readonly length: Mm
}

/** Jigs and gauges there are patterns for, in the order they come to use. */
export const JIG_NAMES = [
  'blank-stop',
  'first-cut-wedge',
  'arm-cradle',
  'joint-cut-wedge',
  'angle-gauge',
  'trial-window',
  'glue-up-frame',
] as const

export type JigName = (typeof JIG_NAMES)[number]

export interface JigOrder {
  readonly names: readonly JigName[]
  /** Did the order ask for these, so that one that cannot be made is a mistake? */
  readonly asked: boolean
}

/** What jigs are made of and how they are put together. */
export interface JigStock {
  readonly thickness: Mm
  /** Where the piece lies that is kept, as the saw's operator sees it. */
  readonly side: 'right' | 'left'
  /** Diameter of a hole for a wood screw. */
  readonly screw: Mm
  /** Diameter of the hole that a wood screw bites in. */
  readonly pilot: Mm
  /** Diameter of a hole for a bolt or a cord. */
  readonly bolt: Mm
  /** Between the holes in the foot of a toggle clamp, across and along its arm. */
  readonly clampAcross: Mm
  readonly clampAlong: Mm
  /** Its holes are slots, longer than round by this. */
  readonly clampSlot: Mm
  /** Hands are told to be no nearer to the blade. */
  readonly hands: Mm
  /** What lies on a fence wedge bears on so much of it at least. */
  readonly register: Mm
  /** So much too large or too small an arm may be on every edge. */
  readonly tolerance: Mm
  /** Between star and glue-up frame. */
  readonly clearance: Mm
  /** Parts that are keyed together are loose by so much on every edge. */
  readonly fit: Mm
}

export type DxfVersion = 'r12' | 'r2000'

export interface Paper {
  readonly sheet: PaperSheet
  readonly margin: Mm
  readonly overlap: Mm
  /** What the printer makes of the print check, where it was measured. */
  readonly printed?: PrintedCheck
}

/** Sheets of a size, pieces of a roll up to a longest one, or a single page of the drawing's own size. */
export type PaperSheet =
  | { readonly size: PaperName }
  | { readonly roll: Mm; readonly longest: Mm }
  | { readonly single: true }

/** Across and along the sheet, its shorter side being across, or the roll. */
export interface PrintedCheck {
  readonly across: PrintedLength
  readonly along: PrintedLength
}

/** A length of the print check, as measured and as it should be. */
export interface PrintedLength {
  readonly measured: Mm
  readonly of: Mm
}

export interface StarOrder {
  /** Where its keys stand in the order, for what is found out about them later. */
  readonly at: StarPlaces
  readonly name: string
  /** The name as it can stand in a file's name. */
  readonly fileName: string
  /** A line of the maker's own. */
  readonly note?: string
  readonly quantity: number
  readonly points: number
  readonly shape: StarShape
  readonly size: { readonly by: SizeName; readonly length: Mm }
  readonly chamfer?: Mm
  readonly thickness?: Mm
  readonly backing?: BackingOrder
  /** Where it hangs. */
  readonly wall: Wall
  /** Price of what else goes into one star: hanger, screws, glue, finish. */
  readonly hardware?: number
}

export interface StarPlaces {
  readonly shape: Where
  readonly size: Where
  readonly chamfer: Where
  readonly backing: BackingPlaces
}

/** A key, `stars[0].across`, with its line when it stands in a file; or a flag, `--across`. */
export type Where = Pick<Problem, 'place' | 'line'>

export type StarShape =
  | { readonly by: 'tip-angle'; readonly tipAngle: Degrees }
  | { readonly by: 'regular'; readonly step: number }
  | { readonly by: 'slenderest' }

/** The shapes a backing can be asked for. */
export const BACKING_SHAPES = ['star', 'polygon', 'disc', 'auto'] as const
/** Openings that a star hangs by. */
export const HANGING_NAMES = ['cord', 'keyhole', 'screws'] as const
/** What holds the plate beside the glue. */
export const FASTENER_NAMES = ['nails', 'screws'] as const

export interface BackingOrder {
  readonly shape: InsetShape | 'auto'
  /** From the star's outline, its chamfer taken off, to the plate. */
  readonly inset: Mm
  readonly thickness?: Mm
  /** Sharp when absent. */
  readonly cornerRadius?: Mm
  /** Of each joint, from the centre, at least. */
  readonly covers?: Mm
  readonly hanging?: HangingOrder
  readonly fixing?: FixingOrder
}

export interface BackingPlaces {
  readonly inset: Where
  readonly cornerRadius: Where
  readonly covers: Where
  readonly hanging: Where
  readonly apart: Where
  readonly fixing: Where
  readonly fixingLength: Where
}

export interface HangingOrder {
  readonly kind: (typeof HANGING_NAMES)[number]
  /** Diameter. */
  readonly hole: Mm
  /** Middle to middle; as far as is usual and fits when absent. */
  readonly apart?: Mm
  readonly slot: Mm
  readonly rise: Mm
  /** Plate left around an opening, and wood between it and a joint. */
  readonly wall: Mm
}

export interface FixingOrder {
  readonly kind: (typeof FASTENER_NAMES)[number]
  /** Unknown when absent. */
  readonly length?: Mm
  /** From the middle of one to edges, joints and holes. */
  readonly clear: Mm
}
