import type { Outline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import type { Mm, Radians } from '../units/brand.js'
import type { LayerName, PenName } from './layers.js'

/** The neutral drawing: everything a writer needs, in mm, y up. Dimensions are lines and labels before they get here. */
export interface Drawing {
  /** What it is, as in a file's name: `arm-pattern`. */
  readonly kind: string
  readonly title: string
  /** Overall size of the thing drawn (not of the sheet): the number to check in another program. */
  readonly trueSize: { readonly across: Mm; readonly height: Mm }
  /** Everything but the notes. */
  readonly figure: readonly Shape[]
  /** The figure in parts that need not hang together on paper: each may lie on a sheet of its own. */
  readonly apart?: readonly (readonly Shape[])[]
  /** Those of the figure's shapes that paper may do without where they would cost a page: the notes say it too. */
  readonly asides: readonly Shape[]
  /** What is said in words; on paper it may stand wherever there is room. */
  readonly notes?: Notes
  /** The figure, with the notes below it. */
  readonly shapes: readonly Shape[]
  /** What a file for a cutter holds instead, where its lines are not those on paper: compensated, without the notes. */
  readonly toCut?: readonly Shape[]
  /** Closed outlines of wood or panel, inside the figure, that no seam between two pages should cut. */
  readonly pieces: readonly Outline[]
}

export interface Notes {
  readonly title: string
  readonly lines: readonly string[]
}

export type Shape = Path | Label

/** A chain of straight and circular edges on a layer. */
export interface Path extends Outline {
  readonly kind: 'path'
  readonly layer: LayerName
  /** Only where it differs from the layer's own. */
  readonly pen?: PenName
}

/** One line of text. */
export interface Label {
  readonly kind: 'label'
  readonly layer: LayerName
  readonly text: string
  /** On the baseline: its left end, middle or right end, as `anchor` says. */
  readonly at: Point
  readonly anchor: 'start' | 'middle' | 'end'
  /** Height of a capital letter. */
  readonly height: Mm
  /** Direction of reading, counter-clockwise from +x. */
  readonly turn: Radians
}
