import { area, EndType, inflatePaths, JoinType } from 'clipper2-ts'
import { placesOn } from '../geometry/leaves-room.js'
import { edges, type Outline } from '../geometry/outline.js'
import { PER_MM, toPath } from './no-fit.js'
import type { Panel } from './panel.js'

/**
 * No nesting puts more plates on a panel: grown by half the gap they do not overlap, and lie on what the edge leaves,
 * grown by as much. 1 or more, so that it divides.
 */
export const areaBound = (outline: Outline, { width, height, edge, gap }: Panel): number => {
  const inside = toPath(placesOn(edges(outline)))
  const grown = inflatePaths([inside], (gap / 2) * PER_MM, JoinType.Round, EndType.Polygon)
  const plate = Math.abs(grown.reduce((sum, path) => sum + area(path), 0)) / PER_MM ** 2
  const free = (side: number): number => Math.max(0, side - 2 * edge + gap)
  return Math.max(1, Math.floor((free(width) * free(height)) / plate))
}
