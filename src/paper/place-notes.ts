import { shapeExtents } from '../drawing/bounds.js'
import type { Label, Notes } from '../drawing/model.js'
import { movedShape } from '../drawing/moved.js'
import { noteBlock } from '../drawing/note-block.js'
import type { Extents } from '../geometry/outline.js'
import { point, scale } from '../geometry/point.js'
import { mm } from '../units/convert.js'
import { CELL, type InkRaster, isBare } from './ink.js'

/** Widths to set notes in, in mm, the preferred first: long lines are hard to follow, short ones make a tower. */
const WIDTHS = [165, 150, 135, 180, 200, 240, 120, 105, 90, 75]

/** White around the notes. */
const CLEAR = 3

/** A block of notes, its lower left corner at the origin, and how large it is. */
export interface SetNotes {
  readonly labels: readonly Label[]
  readonly across: number
  readonly along: number
}

/** The notes set in each width. */
export const setNotes = (notes: Notes): SetNotes[] =>
  WIDTHS.map((width) => {
    const labels = noteBlock(notes, point(0, 0), mm(width))
    const { min, max } = shapeExtents(labels)
    return {
      labels: labels.map((label) => movedShape(label, scale(min, -1))),
      across: max.x - min.x,
      along: max.y - min.y,
    }
  })

/**
 * The notes, set in one of several widths, at the first bare place of an area, high places first: so they stand close to
 * a figure in its upper corner, and small drawings can share a sheet; undefined when there is none.
 */
export const placeNotes = (
  blocks: readonly SetNotes[],
  area: Extents,
  raster: InkRaster,
): readonly Label[] | undefined => {
  const room = point(area.max.x - area.min.x - 2 * CLEAR, area.max.y - area.min.y - 2 * CLEAR)
  for (const block of blocks) {
    if (block.across > room.x || block.along > room.y) continue
    for (let up = room.y - block.along; up >= 0; up -= CELL) {
      for (let right = 0; right <= room.x - block.across; right += CELL) {
        const low = point(area.min.x + CLEAR + right, area.min.y + CLEAR + up)
        const box = {
          min: point(low.x - CLEAR, low.y - CLEAR),
          max: point(low.x + block.across + CLEAR, low.y + block.along + CLEAR),
        }
        if (isBare(raster, box)) return block.labels.map((label) => movedShape(label, low))
      }
    }
  }
  return undefined
}
