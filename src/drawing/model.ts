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
  readonly shapes: readonly Shape[]
  /** Those of the shapes that only say things in words, and may go on a sheet of their own. */
  readonly words: readonly Shape[]
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
