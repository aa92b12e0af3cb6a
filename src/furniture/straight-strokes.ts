import type { ArtMark, ArtPath } from '../drawing/artwork.js'
import { between, distance, type Point } from '../geometry/point.js'
import { PAPER } from './painted.js'

/** A straight edge of a line or of a filled shape. */
export interface Stroke {
  readonly mark: ArtPath
  readonly from: Point
  readonly to: Point
}

/** From spot to spot along a stroke, in mm. */
const STEP = 0.25

/** The colour along a mark's edges: the line's, or that of a shape without one. */
export const edgeColour = ({ stroke, fill }: ArtPath): string => (stroke ?? fill)?.colour ?? PAPER

/** The straight edges of a mark, the closing one too. */
export const strokesOf = (mark: ArtMark): Stroke[] => {
  if (mark.kind === 'text') return []
  let [began, last]: (Point | undefined)[] = []
  return mark.steps.flatMap((step) => {
    const to = step.to === 'start' ? began : step.at
    const from = step.to === 'move' || step.to === 'curve' ? undefined : last
    if (step.to === 'move') began = to
    last = to
    return from && to ? [{ mark, from, to }] : []
  })
}

/** Spots along a stroke. */
export const spotsAlong = ({ from, to }: Stroke): Point[] => {
  const count = Math.max(1, Math.ceil(distance(from, to) / STEP))
  return Array.from({ length: count }, (_, index) => between(from, to, (index + 0.5) / count))
}
