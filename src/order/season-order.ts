import type { Celsius, Hours, Percent } from '../units/brand.js'

/** What the arms are made of. */
export interface Wood {
  /** The species, `softwood` where none is named, or `your wood` where the order gives its movement itself. */
  readonly name: string
  /** Where its movement comes from. */
  readonly from: 'species' | 'order' | 'softwood'
  /** How the rings lie in the board's end: along its width, or upright. */
  readonly rings: Rings
  /** Along the rings, and across them: share of a dimension for 1 % of moisture. */
  readonly tangential: number
  readonly radial: number
  /** In kg/m³; as weighed, or else from the species at 12 % moisture. */
  readonly density?: number
}

export type Rings = 'flat' | 'quarter'

/** The air somewhere, or the moisture that a meter shows in wood that has been there. */
export type Air =
  | { readonly humidity: Percent; readonly temperature: Celsius }
  | { readonly moisture: Percent }

/** Where a star hangs. */
export interface Wall {
  readonly winter: Air
  readonly summer: Air
}

export interface Climate {
  readonly workshop: Air
  readonly wall: Wall
  /** What of wood and air the order left open, in words. */
  readonly assumed: readonly string[]
}

/** Times as the labels state them. */
export interface Glue {
  readonly clamp?: Hours
  readonly cures?: Hours
}

export interface Stain {
  /** m² that one litre covers. */
  readonly coverage?: number
  readonly dries?: Hours
}

export interface Finish {
  /** m² that one litre covers, once. */
  readonly coverage?: number
  readonly coats: number
  /** From coat to coat. */
  readonly dries?: Hours
  readonly cures?: Hours
}
