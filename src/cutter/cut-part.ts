import type { Outline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'

/** A part to be cut from a panel, at its true size. */
export interface CutPart {
  /** What it is, as a problem names it: `arm cradle, base`. */
  readonly name: string
  /** Counter-clockwise. */
  readonly outer: Outline
  /** Holes and openings, counter-clockwise too; a cutter makes them before the outline that frees the part. */
  readonly inner: readonly Outline[]
  /** Inside corners that something sharp must reach into: vertices of the outlines. */
  readonly seats: readonly Point[]
  /**
   * Other parts lie a gap away that is hardly wider than the cutter. Its line then goes round outside corners on arcs:
   * mitred at a sharp tip it would run far past the tip, into the neighbour.
   */
  readonly besideOthers?: boolean
}

/** The lines a cutter's middle follows, inner ones first. */
export interface CutLines {
  readonly inner: readonly Outline[]
  readonly outer: Outline
}
