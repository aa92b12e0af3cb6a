import type { Point } from '../geometry/point.js'
import type { Mm, Radians } from '../units/brand.js'

/**
 * A piece of sheet furniture as its SVG draws it: in mm, y up, origin at its lower left corner. Unlike a drawing's
 * shapes it has its own colours, widths and fills, and only the PDF writer knows it.
 */
export interface Artwork {
  readonly across: Mm
  readonly height: Mm
  readonly marks: readonly ArtMark[]
}

export type ArtMark = ArtPath | ArtText

export interface ArtPath {
  readonly kind: 'path'
  readonly steps: readonly ArtStep[]
  readonly stroke?: ArtStroke
  readonly fill?: ArtFill
}

/** As PDF draws it: to a point, along a straight line or a cubic Bezier, or back to where the part began. */
export type ArtStep =
  | { readonly to: 'move' | 'line'; readonly at: Point }
  | { readonly to: 'curve'; readonly from: Point; readonly toward: Point; readonly at: Point }
  | { readonly to: 'start' }

export interface ArtStroke {
  /** `#rrggbb`. */
  readonly colour: string
  readonly width: Mm
  /** Dash and gap lengths by turns, in mm; empty when continuous. */
  readonly dashes: readonly number[]
  /** At corners; a miter longer than {@link MITER_LIMIT} is cut off as a bevel. */
  readonly join: 'miter' | 'round' | 'bevel'
  readonly cap: 'butt' | 'round'
}

/** The longest miter, over the line's width: SVG's own (SVG 2, 13.5.5); PDF's is 10 unless it is told. */
export const MITER_LIMIT = 4

export interface ArtFill {
  /** `#rrggbb`. */
  readonly colour: string
  readonly rule: 'nonzero' | 'evenodd'
}

/** One line of text; `{words}` in braces are slots. */
export interface ArtText {
  readonly kind: 'text'
  readonly text: string
  /** On the baseline, as `anchor` says. */
  readonly at: Point
  readonly anchor: 'start' | 'middle' | 'end'
  /** Height of a capital letter. */
  readonly height: Mm
  /** Direction of reading, counter-clockwise from +x. */
  readonly turn: Radians
  /** `#rrggbb`. */
  readonly colour: string
  /** The text is set smaller, and at last cut short, to stay within it. */
  readonly room?: Mm
  /** As many lines as a value may be broken into, one below the other; 1 where nothing is said. */
  readonly lines?: number
}
