import { area, EndType, inflatePaths, JoinType } from 'clipper2-ts'
import { placesOn } from '../geometry/leaves-room.js'
import { edges, type Outline } from '../geometry/outline.js'
import type { Mm } from '../units/brand.js'
import * as maths from '../units/maths.js'
import { WHOLE } from '../units/tolerance.js'
import { PER_MM, toPath } from './no-fit.js'
import type { Panel } from './panel.js'

/** So many plates of an outline. */
export interface Counted {
  readonly outline: Outline
  readonly count: number
}

/** No nesting puts more plates on a panel; 1 or more, so that it divides. */
export const areaBound = (outline: Outline, panel: Panel): number =>
  Math.max(1, Math.floor(1 / shareOf(outline, panel)))

/** No nesting puts all these plates on fewer panels. */
export const fewestPanels = (plates: readonly Counted[], panel: Panel): number => {
  const own = plates.map(({ outline, count }) => ({ count, share: shareOf(outline, panel) }))
  const together = own.reduce((sum, { count, share }) => sum + count * share, 0)
  const each = own.map(({ count, share }) => Math.ceil(count / Math.max(1, Math.floor(1 / share))))
  return Math.max(Math.ceil(together - WHOLE), ...each)
}

/**
 * The part of a panel that a plate takes at least: grown by half the gap plates do not overlap, and lie on what the edge
 * leaves, grown by as much.
 */
const shareOf = (outline: Outline, { width, height, edge, gap }: Panel): number => {
  const free = (side: number): number => Math.max(0, side - 2 * edge + gap)
  return grownArea(outline, gap) / (free(width) * free(height))
}

/** A rounded plate takes some hundredths of a second, and is asked for again by every kind of panel. */
const known = new WeakMap<Outline, Map<Mm, number>>()

const grownArea = (outline: Outline, gap: Mm): number => {
  const byGap = known.get(outline) ?? new Map<Mm, number>()
  known.set(outline, byGap)
  const found = byGap.get(gap)
  if (found !== undefined) return found
  const inside = toPath(placesOn(edges(outline)))
  const grown = inflatePaths([inside], (gap / 2) * PER_MM, JoinType.Round, EndType.Polygon)
  const made = Math.abs(grown.reduce((sum, path) => sum + area(path), 0)) / maths.square(PER_MM)
  byGap.set(gap, made)
  return made
}
